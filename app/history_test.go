//go:build !js

package app

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/internal/long"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// told is what a field should hold after all that was done to it, said without the
// store's own means: which input has which value, what stands in the boxes, whose
// the values are.
type told struct {
	values   map[string]field.Value
	typed    map[string]string // as it stands in a box, in the units of then
	wrong    map[string]bool   // what stands there cannot be taken
	borrowed map[string]bool
	ticks    map[string]bool
	system   unit.System
	example  bool
	own      bool
}

func (m *told) copied() told {
	c := *m
	c.values, c.typed, c.wrong = maps.Clone(m.values), maps.Clone(m.typed), maps.Clone(m.wrong)
	c.borrowed, c.ticks = maps.Clone(m.borrowed), maps.Clone(m.ticks)
	return c
}

func empty() told {
	return told{values: map[string]field.Value{}, typed: map[string]string{}, wrong: map[string]bool{}, borrowed: map[string]bool{}, ticks: map[string]bool{}}
}

// known is a link and the values that it was made of.
type known struct {
	link   string
	values map[string]field.Value
}

// history is one visit: the store, what it should hold, and how it came there. choose
// draws a number below n.
type history struct {
	t      require.TestingT
	choose func(n int) int
	places *normals.Table
	s      *store
	now    told
	before []told // that can be come back to
	step   string
	links  []known
	log    []string
}

func newHistory(t require.TestingT, places *normals.Table, choose func(int) int) *history {
	h := &history{t: t, choose: choose, places: places, now: empty()}
	h.s = h.opened()
	h.now.system, h.now.example = unit.US, true
	h.now.values = valuesOf(exampleCase())
	for i := range pack.Farms {
		c := pack.Farms[i].Case()
		h.links = append(h.links, known{casefile.Link(&c) + farmMark + farmName(&pack.Lands[i]), valuesOf(c)}) // as on its card
	}
	return h
}

// opened is a store of a page just opened. The soil's year is never worked out: no
// answer is looked at here, and ten thousand of them would take minutes.
func (h *history) opened() *store {
	s := storeOf(exampleCase())
	s.example, s.places = true, h.places
	s.keep = func(saved) bool { return true }
	s.dig = func(*facts.SoilYearWork, func()) {}
	return s
}

func valuesOf(c field.Case) map[string]field.Value {
	m := map[string]field.Value{}
	for i := range field.Inputs {
		if v, given := field.Inputs[i].Get(&c); given {
			m[field.Inputs[i].Name] = v
		}
	}
	return m
}

// touched is what goes before every change: a step to come back to, and the end of
// the example.
func (h *history) touched(what string, names ...string) {
	if h.step != what || len(names) == 0 {
		h.step = what
		h.before = append(h.before, h.now.copied())
		h.before = h.before[max(0, len(h.before)-10):]
	}
	if h.now.example {
		h.now.example = false
		h.now.borrowed = map[string]bool{"place": true}
		for name := range h.now.values {
			if strings.HasPrefix(name, "place.") || strings.HasPrefix(name, "climate.") {
				name = "place"
			}
			h.now.borrowed[name] = true
		}
	}
	for _, name := range names {
		if strings.HasPrefix(name, "place.") || strings.HasPrefix(name, "climate.") {
			name = "place"
		}
		delete(h.now.borrowed, name)
	}
}

// typable are the inputs with a control of their own; the place is chosen otherwise.
var typable = func() (list []*field.Input) {
	for i := range field.Inputs {
		if in := &field.Inputs[i]; in.Form != field.FormText && in.Form != field.FormFilms && !strings.HasPrefix(in.Name, "place.") {
			list = append(list, in)
		}
	}
	return list
}()

// words is a text for an input and the value that it means; ok where it can be taken.
func (h *history) words(in *field.Input) (text string, v field.Value, ok bool) {
	switch kind := h.choose(8); {
	case kind == 0:
		return "", v, true
	case kind == 1 && in.Form != field.FormYesNo: // its list holds nothing else
		return []string{"?", "1e999", "-", "\u202ex", "ten", "\"\\", "<b>", "\x1e\x1f"}[h.choose(8)], v, false
	}
	switch in.Form {
	case field.FormChoice:
		word := in.Options[h.choose(len(in.Options))].ID
		return word, field.Value{Word: word}, true
	case field.FormYesNo:
		yes := h.choose(2)
		return []string{"no", "yes"}[yes], field.Value{Number: float64(yes)}, true
	case field.FormDate:
		day := unit.On(2027, 1, 1).Plus(unit.Days(h.choose(700)))
		return day.String(), field.Value{Number: float64(day)}, true
	case field.FormDay:
		day := 1 + h.choose(28)
		month := 1 + h.choose(12)
		days, _ := unit.ParseMonthDay(fmt.Sprintf("%02d-%02d", month, day))
		return fmt.Sprintf("%02d-%02d", month, day), field.Value{Number: float64(days)}, true
	}
	// A figure well within the range, as somebody would write it.
	share := float64(1+h.choose(97)) / 100
	text = figure(in.Kind, in.Low+share*(in.High-in.Low), h.now.system)
	x, err := in.Kind.Read(text, h.now.system)
	v = field.Value{Number: x}
	return text, v, err == nil && in.CheckValue(v) == nil
}

// do takes one step of the visit.
func (h *history) do() {
	switch act := h.choose(20); {
	case act < 10:
		in := typable[h.choose(len(typable))]
		text, v, ok := h.words(in)
		h.log = append(h.log, "type "+in.Name+" "+text)
		h.s.set(in, text)
		h.touched(lower(in.Label), in.Name)
		h.now.typed[in.Name] = text
		delete(h.now.wrong, in.Name)
		switch {
		case strings.TrimSpace(text) == "":
			delete(h.now.values, in.Name)
		case ok:
			h.now.values[in.Name] = v
		default:
			h.now.wrong[in.Name] = true
		}
		if crop := table.CropByID(h.now.values["crop"].Word); in.Name == "crop" && crop != nil && h.now.values["method"].Word != string(crop.Start) {
			h.now.values["method"] = field.Value{Word: string(crop.Start)}
			delete(h.now.typed, "method")
			delete(h.now.wrong, "method")
			delete(h.now.borrowed, "method")
		}
	case act < 13:
		h.log = append(h.log, "take back")
		h.s.takeBack()
		if n := len(h.before); n > 0 {
			h.now, h.before, h.step = h.before[n-1], h.before[:n-1], ""
		}
	case act < 15:
		h.log = append(h.log, "reload")
		state := h.s.state()
		steps := h.s.undo
		again := h.opened()
		again.undo = readUndo(undoText(steps))
		require.True(h.t, again.take(readSaved(state.text())))
		h.s, h.step = again, ""
	case act < 16:
		h.log = append(h.log, "units")
		h.s.setUnits(unit.System(1 - h.now.system))
		h.now.system = unit.System(1 - h.now.system)
		for name := range h.now.typed {
			if !h.now.wrong[name] {
				delete(h.now.typed, name)
			}
		}
	case act < 17:
		key := fmt.Sprint("box-", h.choose(5))
		h.log = append(h.log, "tick "+key)
		h.s.tick(key, !h.now.ticks[key])
		if h.now.ticks[key] {
			delete(h.now.ticks, key)
		} else {
			h.now.ticks[key] = true
		}
	case act < 18:
		h.log = append(h.log, "all mine")
		h.s.mine()
		h.now.borrowed = map[string]bool{}
	case act < 19:
		if len(h.now.wrong) == 0 && len(field.Check(&h.s.c)) == 0 { // such a field can be shared
			h.links = append(h.links[:min(len(h.links), 20)], known{linkText(h.s), maps.Clone(h.now.values)})
		}
		of := h.links[h.choose(len(h.links))]
		h.log = append(h.log, "open link "+of.link)
		h.s.opened = ""
		h.s.openLink(linkMark + of.link)
		h.touched("a field came with a link")
		ticks := h.now.ticks
		system := h.now.system
		h.now = empty()
		h.now.values, h.now.ticks, h.now.system = maps.Clone(of.values), ticks, system
		if crop := table.CropByID(of.values["crop"].Word); crop != nil && of.values["method"].Word == "" {
			h.now.values["method"] = field.Value{Word: string(crop.Start)}
		}
		for i := range pack.Farms {
			if h.links[i].link == of.link {
				h.now.example = true
			}
		}
	default:
		h.log = append(h.log, "start own")
		h.s.startOwn()
		h.touched("a field of your own, begun empty")
		system := h.now.system
		h.now = empty()
		h.now.system, h.now.own = system, true
	}
}

// holds compares the store with what it should hold.
func (h *history) holds() {
	s, m := h.s, &h.now
	tail := h.log[max(0, len(h.log)-12):]
	require.Equal(h.t, m.values, valuesOf(s.c), "values after %q", tail)
	require.Equal(h.t, m.typed, s.typed, "texts after %q", tail)
	wrong := map[string]bool{}
	for name, e := range s.wrong {
		if e.Field == name { // others are of the whole case
			wrong[name] = true
		}
	}
	require.Equal(h.t, m.wrong, wrong, "what is marked after %q", tail)
	require.Equal(h.t, m.borrowed, s.borrowed, "what is borrowed after %q", tail)
	require.Equal(h.t, m.ticks, s.ticks, "boxes after %q", tail)
	require.Equal(h.t, [...]any{m.system, m.example, m.own}, [...]any{s.system, s.example, s.own}, "after %q", tail)
	require.Len(h.t, s.undo, len(h.before), "steps to come back to after %q", tail)
}

// Whatever is typed, right or wrong, taken back, reloaded, opened from a link, turned
// into other units or begun anew, the field is what a plain account of the same steps
// says: nothing typed is lost, and nothing that was not typed is there. Rapid finds the
// shortest way to a fault; then comes one visit of ten thousand steps.
func TestAnyWayThroughAFieldLeavesWhatItsAccountSays(t *testing.T) {
	long.Daily(t)
	places, err := normals.Embedded()
	require.NoError(t, err)
	rapid.Check(t, func(t *rapid.T) {
		h := newHistory(t, places, func(n int) int { return rapid.IntRange(0, n-1).Draw(t, "choice") })
		for range rapid.IntRange(1, 25).Draw(t, "steps") {
			h.do()
			h.holds()
		}
	})
	seeded := rand.New(rand.NewPCG(19, 3))
	h := newHistory(t, places, seeded.IntN)
	for range 10000 {
		h.do()
		h.holds()
	}
	kinds := map[string]int{}
	for _, l := range h.log {
		kind, _, _ := strings.Cut(l, " ")
		kinds[kind]++
	}
	t.Log(kinds)
	require.Len(t, kinds, 8, "a kind of step was never taken")
}
