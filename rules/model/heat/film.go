package heat

import "filmfurrow/rules/unit"

// Cover is one film as the physics needs it: plain numbers, whoever keeps the
// table of them. Covers are told apart by their place in a list; bare ground is
// none of them.
type Cover struct {
	Optics
	// Effect is the published difference between the daily mean under the film and
	// under bare ground at the reference state (see [Reference]), K at 5 and 10 cm.
	Effect [Depths]Effect
}

// Optics are a film's shares of radiation: short-wave (sun) reflected by the
// top, by the underside, and let through; long-wave likewise, of the dry film.
// Each share lies in 0–1 and on each side they sum to at most 1.
type Optics struct {
	ReflectTop, ReflectUnder, Transmit             float64
	LongReflectTop, LongReflectUnder, LongTransmit float64
}

// Effect is a published difference with its range, K.
type Effect struct{ Low, Value, High unit.CelsiusDegrees }

// Bare is the place of bare ground in the results; that of the first cover is
// Bare + 1.
const Bare = 0

// Check returns nil or a [*weather.InputError] for shares that no film can have
// and for an effect outside its own range.
func (c *Cover) Check() error {
	for _, r := range [...]struct {
		field string
		share float64
	}{
		{"sun reflected", c.ReflectTop}, {"sun reflected below", c.ReflectUnder}, {"sun passed", c.Transmit},
		{"sun reflected and passed", max(c.ReflectTop, c.ReflectUnder) + c.Transmit},
		{"heat reflected", c.LongReflectTop}, {"heat reflected below", c.LongReflectUnder}, {"heat passed", c.LongTransmit},
		{"heat reflected and passed", max(c.LongReflectTop, c.LongReflectUnder) + c.LongTransmit},
	} {
		if err := within(r.field, r.share, 0, 1, "", "what a film reflects, passes and absorbs makes 1"); err != nil {
			return err
		}
	}
	for d := range c.Effect {
		e := &c.Effect[d]
		if err := within("published effect", float64(e.Value), float64(e.Low), float64(e.High), "°C", "give a value within its range"); err != nil {
			return err
		}
	}
	return nil
}

// twin is the place in the results of the first cover of the same optics.
func (c *Covers) twin(f int) int {
	for i := range c.list {
		if c.list[i].Optics == c.list[f-1].Optics {
			return i + 1
		}
	}
	return f
}

// Covers is a list of films ready to be run: with the model's own effect of each
// at the reference state, which their published effects are carried by. Make it
// with [NewReference], or with [CoversOf] where that was worked out before.
type Covers struct {
	list   []Cover
	leader int // the film whose effect the others' are carried beside
	// modelled is the model's own difference of daily means at the reference state,
	// film minus bare, K.
	modelled [][Depths]float64
}
