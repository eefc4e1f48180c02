package app

import (
	"strconv"

	"filmfurrow/rules/unit"
)

// manyBeds is from where on beds are no longer drawn one by one.
const manyBeds = 48

// zonePlan draws source, header, valves and beds from above; zones take turns
// in three fillings, so that they are told apart without colour.
func (v waterView) zonePlan() string {
	s := v.plan.Schedule
	zones := s.Zones
	beds := zones[len(zones)-1].LastBed
	var d svg
	d.open("svg", "viewBox", "0 0 480 280", "class", "water-svg", "role", "img", "aria-label",
		escape("Plan of "+strconv.Itoa(len(zones))+" zones on one header: "+strconv.Itoa(beds)+" beds in all. The table below lists them."))
	d.raw(`<defs><pattern id="w-lines" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="w-paper" width="8" height="8"/><path class="w-hatch" d="M0 0V8"/></pattern>` +
		`<pattern id="w-dots" width="8" height="8" patternUnits="userSpaceOnUse"><rect class="w-paper" width="8" height="8"/><circle class="w-dot" cx="4" cy="4" r="1.8"/></pattern></defs>`)
	const left, right, main, top, foot = 84.0, 468.0, 66.0, 96.0, 224.0
	pitch := (right - left) / float64(beds)
	d.el("path", "class", "w-pipe", "d", "M 34 "+num(main)+" H "+num(left+pitch*(float64(zones[len(zones)-1].FirstBed)-0.5)))
	d.el("circle", "class", "w-source", "cx", "26", "cy", num(main), "r", "14")
	d.text(2, main+38, "w-label", "start", "source")
	each := 1
	for (len(zones)+each-1)/each > 8 {
		each++
	}
	for i := range zones {
		z := &zones[i]
		from, to := left+pitch*float64(z.FirstBed-1), left+pitch*float64(z.LastBed)
		x := from + pitch/2
		d.el("path", "class", "w-pipe-thin", "d", "M "+num(x)+" "+num(main)+" V "+num(top-8)+" H "+num(to-pitch/2))
		if len(zones) <= 24 {
			d.el("path", "class", "w-valve", "d", "M "+num(x-6)+" "+num(main+6)+" h 12 l -12 12 h 12 z")
		}
		fill := "w-zone w-zone-" + strconv.Itoa(i%3)
		if beds > manyBeds {
			d.el("rect", "class", fill, "x", num(from), "y", num(top), "width", num(to-from-min(1, pitch/4)), "height", num(foot-top))
		} else {
			for b := z.FirstBed; b <= z.LastBed; b++ {
				d.el("rect", "class", fill, "x", num(left+pitch*(float64(b)-0.9)), "y", num(top-8), "width", num(pitch*0.8), "height", num(foot-top+8))
			}
		}
		if i%each == 0 && len(zones) > 1 {
			d.text((from+to)/2, foot+24, "w-label", "middle", strconv.Itoa(z.Number))
		}
	}
	if len(zones) > 1 {
		d.text((left+right)/2, foot+48, "w-label", "middle", "zones 1 to "+strconv.Itoa(len(zones)))
	} else {
		d.text((left+right)/2, foot+48, "w-label", "middle", "all beds in one zone")
	}
	d.text(right, main-14, "w-label", "end", v.headerWords())
	d.close("svg")
	return d.b.String()
}

func (v waterView) headerWords() string {
	if s := v.plan.Supply; s != nil && s.Bore.Inside > 0 {
		return "header " + s.Bore.Name + " in"
	}
	return "header"
}

// pressurePicture draws the pressure along one line, with the lowest point and
// the pressure that keeps the flow within a tenth.
func (v waterView) pressurePicture() string {
	r := v.plan.Tape.Profile
	low, high := min(r.Lowest, v.plan.LeastPressure), max(r.Highest, r.Inlet)
	room := (high-low)/5 + 1
	low, high = max(0, low-room), high+room
	end := r.Points[len(r.Points)-1].From
	const left, right, top, foot = 66.0, 462.0, 26.0, 216.0
	x := func(at unit.Metres) float64 { return left + (right-left)*float64(at/end) }
	y := func(p unit.Kilopascals) float64 { return foot - (foot-top)*float64((p-low)/(high-low)) }
	var d svg
	d.open("svg", "viewBox", "0 0 480 280", "class", "water-svg", "role", "img", "aria-label",
		escape("Pressure along one line: "+v.show(r.Inlet)+" at the inlet, "+v.show(r.Lowest)+" at its lowest, "+v.show(r.LowestAt)+" from the header. “The same in figures” lists it."))
	d.el("path", "class", "w-axis", "d", "M "+num(left)+" "+num(top-10)+" V "+num(foot)+" H "+num(right))
	d.el("path", "class", "w-limit", "d", "M "+num(left)+" "+num(y(v.plan.LeastPressure))+" H "+num(right))
	path := ""
	for i, at := range r.Points {
		step := " L "
		if i == 0 {
			step = "M "
		}
		path += step + num(x(at.From)) + " " + num(y(max(at.Pressure, low)))
	}
	d.el("path", "class", "w-curve", "d", path)
	d.el("circle", "class", "w-lowest", "cx", num(x(r.LowestAt)), "cy", num(y(r.Lowest)), "r", "6")
	figure := func(p unit.Kilopascals) string { return unit.KindPressure.Figure(float64(p), v.system) }
	d.text(left-8, y(r.Inlet)+6, "w-label", "end", figure(r.Inlet))
	if y(r.Lowest)-y(r.Inlet) > 20 {
		d.text(left-8, y(r.Lowest)+6, "w-label", "end", figure(r.Lowest))
	}
	d.text(8, 16, "w-label", "start", unit.KindPressure.Symbol(v.system))
	below := y(v.plan.LeastPressure) + 20
	if below > foot-4 {
		below = y(v.plan.LeastPressure) - 8
	}
	d.text(left+8, below, "w-label", "start", "a tenth less flow: "+figure(v.plan.LeastPressure))
	d.text(left, foot+24, "w-label", "start", "header")
	d.text(right, foot+24, "w-label", "end", v.show(end))
	d.text((left+right)/2, foot+48, "w-label", "middle", "along the bed")
	d.close("svg")
	return d.b.String()
}
