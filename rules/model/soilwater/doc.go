// Package soilwater answers what a bed's soil can hold and how long tape may
// run before water passes the roots.
//
// Two published ways to the water a soil holds stand side by side: equations
// for any texture (Saxton and Rawls, 2006) and the ranges of field guides.
// They differ by 20 to 40 % for sand and sandy clay loam, so callers show a
// range.
package soilwater
