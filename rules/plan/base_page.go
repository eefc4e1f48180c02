//go:build page

package plan

import "filmfurrow/rules/table"

// work is for the advice file alone: the page shows no sums of the fertilizer.
func (b *BaseFertiliser) work(*Advice, *table.Need) {}
