package plan

import (
	"filmfurrow/rules/field"
	"filmfurrow/rules/sheet"
	"filmfurrow/rules/unit"
)

// The ends of the names of what is told by a tap, yes or no, where no figure is given.
const (
	TapYes = "-yes"
	TapNo  = "-no"
)

// Told answers what was left without a figure by a plain yes or no: "wind-yes" says that
// the wind was looked at and is below the limit. A figure that is given counts for more.
func (s *Sheet) Told(ticked func(sheet.Key) bool) {
	for i := range s.Go {
		c := &s.Go[i]
		switch {
		case c.Reply != Unasked || c.Ask.Key == "":
		case ticked(c.ID + TapYes):
			c.SheetLine, c.Reply = line("told-yes"), Yes
		case ticked(c.ID + TapNo):
			c.SheetLine, c.Reply = SheetLine{c.ID + "-told", c.Ask.Quantities}, No
		}
	}
}

// Because is what decides the day: the first thing that says no, or the first that is
// open. It is false where all says yes.
func (s *Sheet) Because(ticked func(sheet.Key) bool) (because SheetLine, ok bool) {
	for _, wanted := range [...]Reply{No, Unasked} {
		for i := range s.Go {
			if s.Go[i].Reply == wanted {
				return s.Go[i].SheetLine, true
			}
		}
		for i := range s.Boxes {
			if s.Boxes[i].Reply(ticked) == wanted {
				return s.Boxes[i], true
			}
		}
	}
	return SheetLine{}, false
}

// Reply is what was told of a box.
func (l *SheetLine) Reply(ticked func(sheet.Key) bool) Reply {
	switch {
	case ticked(l.Key):
		return Yes
	case ticked(l.Key + TapNo):
		return No
	}
	return Unasked
}

// bring lists what must lie on the headland, from the shopping list.
func (s *Sheet) bring(list *Shopping, width unit.Metres) {
	if n := list.Lines[field.ItemFilm].Taken(); n > 0 {
		to(&s.Bring, "bring-film", int(n), unit.Roll(width))
	}
	if long := list.Lines[field.ItemTape].Taken(); long > 0 {
		to(&s.Bring, "bring-tape", unit.Quantity{Kind: unit.KindLong, SI: long}, int(list.Lines[field.ItemEnds].Taken()))
	}
	if n := list.Lines[field.ItemPins].Taken(); n > 0 {
		to(&s.Bring, "bring-pins", int(n))
	}
}
