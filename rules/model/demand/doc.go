// Package demand turns reference evapotranspiration into the water that a crop
// on a film bed needs: by day, by month, by length of bed and by hours of tape.
//
// The crop coefficient curve is that of FAO Irrigation and Drainage Paper 56
// (1998, chapter 6): flat, rising, flat, falling. Film cuts it. The depth of
// water is that of the ground that the crop draws on, which grows from the bed
// top to the bed centres as the leaves close.
package demand
