package heat

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// The band covers what nobody could look up and what the grower may have told
// wrongly: in the spring of the reference every day's mean stays inside it when
// the year is cool or warm, the film lies otherwise than told, the bed is drier,
// wetter or cloddier, or a film's optics are another of those in print (bounds of
// J. Amer. Soc. Hort. Sci. 118(2):188, 1993; long-wave from memory). One case
// leaves it: clear film that lies slack. There a wide gap of still air warms in
// our physics, as no trial has tested.
func TestTheBandHoldsWhatIsNotKnown(t *testing.T) {
	in := newEnglandSpring()
	in.Lie = Embossed
	base := run(t, in)
	hold := func(name string, in Input, films ...int) {
		r := run(t, in)
		for _, f := range films {
			outside, worst := 0, unit.Celsius(0)
			for d := 14; d < base.season.Days; d++ {
				low, high := base.season.Band(f, FiveCentimetres, d)
				mean := r.season.Soil[f][FiveCentimetres].Mean[d]
				worst = max(worst, mean-base.season.Soil[f][FiveCentimetres].Mean[d], base.season.Soil[f][FiveCentimetres].Mean[d]-mean)
				if mean < low || mean > high {
					outside++
				}
			}
			t.Logf("%-34s %-22s moves the daily mean by up to %.2f K, %d of %d days outside the band", name, NameOf(f), worst, outside, base.season.Days-14)
			assert.Equal(t, f == Clear && in.Lie == Slack, outside > 0, "%s, %s", name, NameOf(f))
		}
	}
	all := []int{Bare, Black, Clear, WhiteOnBlack, SilverOnBlack, InfraredTransmitting, Red, Blue, BiodegradableBlack, Paper}
	for _, c := range []struct {
		name   string
		change func(*Input)
	}{
		{"a cool year", func(in *Input) { in.Season = weather.Cool }},
		{"a warm year", func(in *Input) { in.Season = weather.Warm }},
		{"smooth film", func(in *Input) { in.Lie = Smooth }},
		{"slack film", func(in *Input) { in.Lie = Slack }},
		{"a cloddy bed", func(in *Input) { in.Tilth = Cloddy }},
		{"a dry bed", func(in *Input) { in.Moisture = Dry }},
		{"a wet bed", func(in *Input) { in.Moisture = Wet }},
	} {
		changed := in
		c.change(&changed)
		hold(c.name, changed, all...)
	}
	for _, c := range []struct {
		name   string
		film   int
		change func(*Optics)
	}{
		{"reflects a tenth", Black, func(o *Optics) { o.ReflectTop = 0.10 }},
		{"half open to long-wave", Black, func(o *Optics) { o.LongTransmit = 0.5 }},
		{"0.70 open to the sun (dusty)", Clear, func(o *Optics) { o.Transmit, o.ReflectTop, o.ReflectUnder = 0.70, 0.2, 0.2 }},
		{"0.84 open to the sun (new)", Clear, func(o *Optics) { o.Transmit = 0.84 }},
		{"half open to long-wave", Clear, func(o *Optics) { o.LongTransmit = 0.5 }},
		{"reflects 0.40", WhiteOnBlack, func(o *Optics) { o.ReflectTop = 0.40 }},
		{"half open to long-wave", WhiteOnBlack, func(o *Optics) { o.LongTransmit = 0.5 }},
		{"0.35 open to the sun", InfraredTransmitting, func(o *Optics) { o.Transmit = 0.35 }},
	} {
		kept := referenced.list[c.film-1].Optics
		c.change(&referenced.list[c.film-1].Optics)
		hold(c.name, in, c.film)
		referenced.list[c.film-1].Optics = kept
	}
}

// A raised bed is drier, looser ground, and makes a modest difference: no
// measured one was found to check it against.
func TestARaisedBedIsDrierAndModest(t *testing.T) {
	in := newEnglandSpring()
	in.BedHeight = 0
	flat, ground := run(t, in), in
	for _, height := range []unit.Metres{0.15, 0.30} {
		in.BedHeight = height
		bed, below := in.layers()
		assert.Less(t, bed.water, below.water)
		assert.Less(t, bed.conductivity, below.conductivity)
		assert.Less(t, bed.capacity, below.capacity)
		_, same := ground.layers()
		assert.Equal(t, same, below, "what lies below the bed is the field's")
		r := run(t, in)
		for _, f := range []int{Bare, Black, Clear} {
			moved := 0.0
			for d := 14; d < r.season.Days; d++ {
				moved += float64(r.season.Soil[f][TenCentimetres].High[d]-flat.season.Soil[f][TenCentimetres].High[d]) / float64(r.season.Days-14)
			}
			t.Logf("raised by %v m, %s: highest at 10 cm %+.2f K against the flat", height, NameOf(f), moved)
			assert.Less(t, moved, 1.0)
			assert.Greater(t, moved, -1.0)
		}
	}
}
