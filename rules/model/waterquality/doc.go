// Package waterquality reads a water test for drip on a salt-sensitive crop:
// what clogs outlets, what filter the outlets need, what salt costs in yield,
// how much leaching keeps it down, and when water is so pure that soil seals.
//
// Limits are those of published tables, which sort water into slight, moderate
// and severe. They say what to test further, not what to dose: treatment is
// for the label and a licensed person.
package waterquality
