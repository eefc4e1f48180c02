// Package question lists what is asked and which answers there are, in their order: of
// two that score alike the earlier, commoner or simpler, wins. [Heights] (metres) and
// [Thicknesses] (micrometres) are the sizes among them.
package question
