//go:build page

package plan

import (
	"filmfurrow/rules/model/feed"
	"filmfurrow/rules/table"
)

// work and say are for the advice file alone: the page shows no sums of the fertilizer.
func (b *BaseFertiliser) work(*Advice, *table.Need) {}

func (b *BaseFertiliser) say(*Advice) {}

var baseCautions []feed.Caution
