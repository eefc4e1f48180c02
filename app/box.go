package app

import (
	"math"
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/unit"
)

// hand minds the text of one control. The framework would write a changed value
// into the control a frame after the key that made it, without the spaces at its
// ends, and over what was typed meanwhile. So it is told the first value only,
// and whatever changes later without a key is written by put.
type hand struct {
	first, seen string
	of          string // the row that the control stands for
	moved       bool   // it stands for another row than before
}

// start gives the value that the framework may write: that of the first drawing.
func (h *hand) start(of, text string) string {
	if h.of != of {
		*h = hand{of: of, first: text, seen: text, moved: h.of != ""}
	}
	return h.first
}

// heard takes what somebody typed.
func (h *hand) heard(el app.Value) string {
	h.seen = el.Get("value").String()
	return h.seen
}

// put writes a text, unless a key is on its way that was not heard yet.
func (h *hand) put(id, text string) {
	el := app.Window().GetElementByID(id)
	if !el.Truthy() {
		return
	}
	if now := el.Get("value").String(); now == text || !h.moved && now != h.seen && now != strings.TrimSpace(h.first) {
		return
	}
	h.seen, h.moved = text, false
	el.Set("value", text)
}

// textBox is a control outside the case: the search for a place, own normals,
// the bucket test. What was typed into it is kept like all else.
type textBox struct {
	app.Compo
	S                         *store
	ID, Type, Label, Describe string
	Wrong                     bool
	List, Active              string // of a box with results: their list, and the one that is pointed at
	Open                      bool
	hand                      hand
	gone                      bool
}

func (b *textBox) OnMount(ctx app.Context) {
	b.S.follow(b, onForm|onUnits|onPlaces, func() {
		ctx.Defer(func(app.Context) {
			if !b.gone {
				b.hand.put(b.ID, b.S.boxText(b.ID))
			}
		})
	})
}

func (b *textBox) OnDismount() {
	b.gone = true
	b.S.leave(b)
}

func (b *textBox) Render() app.UI {
	if b.Type == "area" {
		return app.Textarea().ID(b.ID).Name(b.ID).Rows(2).Attr("value", b.hand.start(b.ID, b.S.boxText(b.ID))).
			Aria("describedby", b.Describe).Aria("invalid", strconv.FormatBool(b.Wrong)).OnInput(b.typed)
	}
	box := app.Input().ID(b.ID).Name(b.ID).Type(b.Type).AutoComplete(false).Value(b.hand.start(b.ID, b.S.boxText(b.ID))).
		Aria("describedby", b.Describe).Aria("invalid", strconv.FormatBool(b.Wrong)).OnInput(b.typed)
	if b.Type == "text" {
		box = box.Attr("inputmode", "decimal")
	}
	if b.List != "" {
		box = box.Role("combobox").Aria("controls", b.List).Aria("autocomplete", "list").Aria("expanded", strconv.FormatBool(b.Open)).Aria("activedescendant", b.Active)
	}
	if b.Label != "" {
		box = box.Aria("label", b.Label)
	}
	return box
}

func (b *textBox) typed(ctx app.Context, _ app.Event) {
	ctx.PreventUpdate()
	b.S.typed[b.ID] = b.hand.heard(ctx.JSSrc())
	b.S.save()
	if b.ID == placeBox || b.ID == probeBox {
		b.S.tell(onExample) // the places found, what the reading says
	}
}

// boxText is what stands in a text box: what was typed, or the normals in use.
func (s *store) boxText(id string) string {
	if text, ok := s.typed[id]; ok {
		return text
	}
	switch id {
	case logDay:
		today, _ := s.today()
		return today.String()
	case weekFirst:
		today, _ := s.today()
		return today.Plus(-7).String()
	}
	pl := &s.c.Place
	if id == normalsLatitude {
		return fine(unit.KindAngle, float64(pl.Latitude.Value), s.system)
	}
	for m := range 12 {
		switch id {
		case monthKey("min", m):
			return fine(unit.KindTemperature, float64(pl.TMin[m]), s.system)
		case monthKey("max", m):
			return fine(unit.KindTemperature, float64(pl.TMax[m]), s.system)
		}
	}
	return ""
}

// isBox tells the name of a text box from that of an input of the case.
func isBox(name string) bool { return strings.Contains(name, "-") && field.InputByName(name) == nil }

const normalsLatitude = "normals-latitude"

// convertBoxes carries the quantities in text boxes over to other units. What
// cannot be read stays as it was typed.
func (s *store) convertBoxes(from, to unit.System) {
	s.convertDays(from, to)
	for name, text := range s.typed {
		kind := unit.KindTemperature
		if name == "bucket-volume" {
			kind = unit.KindVolume
		} else if !strings.HasPrefix(name, "normals-m") {
			continue
		}
		if v, err := kind.Read(text, from); err == nil {
			s.typed[name] = fine(kind, v, to)
		}
	}
}

// figure is a quantity as somebody would type it.
func figure(kind unit.Kind, v float64, system unit.System) string {
	return strings.NewReplacer(",", "", "−", "-").Replace(kind.Figure(v, system))
}

// fine is a quantity to the hundredth, so that normals which go through boxes in
// either system of units stay what they were.
func fine(kind unit.Kind, v float64, system unit.System) string {
	return strconv.FormatFloat(math.Round(kind.Shown(v, system)*100)/100, 'f', -1, 64)
}
