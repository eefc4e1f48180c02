// Package feed does the arithmetic of feeding and chlorinating through tape.
//
// It names no product and recommends no rate: rates are the grower's own, from
// a soil test or a guide. Every use of chemicals in irrigation water stands
// under a label, a backflow rule and often a licence; [Cautions] carries what
// must stand beside the numbers.
package feed
