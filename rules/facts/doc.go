// Package facts works out what follows from a case before any rule speaks: the year of
// the soil ([SoilYear]), the weather, the frost, the season of the crop, the layout and
// the need for water. Each model runs once, and each figure is rounded and named, so that
// rules decide alike in every build. It judges nothing.
package facts
