package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/model/water"
	"filmfurrow/rules/model/waterquality"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// block is one box of the sheet.
func block(id, title string, body ...app.UI) app.UI {
	return app.Section().Class("water-block").ID(id).Body(append([]app.UI{heading3(title)}, body...)...)
}

// rows is a table whose first cell of each row is its heading. It scrolls
// sideways inside its frame where the screen is narrow.
func rows(caption string, head []string, body [][]string) app.UI {
	cells := make([]app.UI, len(head))
	for i, h := range head {
		cells[i] = app.Th().Scope("col").Text(h)
	}
	lines := make([]app.UI, len(body))
	for i, row := range body {
		line := make([]app.UI, len(row))
		for j, text := range row {
			if j == 0 {
				line[j] = app.Th().Scope("row").Text(text)
			} else {
				line[j] = app.Td().Text(text)
			}
		}
		lines[i] = app.Tr().Body(line...)
	}
	return app.Div().Class("table").Role("region").Aria("label", caption).TabIndex(0).Body(
		app.Table().Body(app.Caption().Text(caption), app.THead().Body(app.Tr().Body(cells...)), app.TBody().Body(lines...)))
}

// figures is a list of names and figures; pairs with an empty figure are left
// out.
func figures(pairs ...string) app.UI {
	var list []app.UI
	for i := 0; i+1 < len(pairs); i += 2 {
		if pairs[i+1] != "" {
			list = append(list, app.Div().Body(app.Dt().Text(pairs[i]), app.Dd().Text(pairs[i+1])))
		}
	}
	return app.Dl().Class("figures").Body(list...)
}

func (v waterView) byMonth() app.UI {
	d := v.plan.Demand
	if d == nil {
		return block("water-months", "Month by month", paragraph("Without climate and crop figures there is no need to print."))
	}
	symbol := unit.KindPer100.Symbol(v.system)
	depth := unit.KindDepth.Symbol(v.system)
	head := []string{"Month", "Run each zone, a day", "All zones, a day", "To pump, " + symbol, "In a cool year", "In a dry year", "Net, " + symbol, "Crop uses, " + depth}
	body := make([][]string, len(d.Months))
	volume := func(l unit.LitresPer100Metres) string { return unit.KindPer100.Figure(float64(l), v.system) }
	for i := range d.Months {
		m := &d.Months[i]
		run, hours := "—", "—"
		if m.Run > 0 {
			run = v.show(m.Run)
			switch {
			case m.Runs > 1:
				run = strconv.Itoa(m.Runs) + " × " + v.show(m.EachRun)
			case m.Interval > 1:
				run += ", or " + v.show(m.Together) + " every " + v.show(m.Interval)
			}
		}
		if m.HoursADay.Given {
			hours = v.show(m.HoursADay.Value)
		}
		name := unit.MonthName(m.Month)
		if int(m.Days) < unit.DaysIn(m.Year, m.Month) {
			name += " (" + v.show(m.Days) + ")"
		}
		body[i] = []string{name, run, hours, volume(m.Gross), volume(m.GrossCool.Value), volume(m.GrossDry.Value), volume(m.Net), unit.KindDepth.Figure(float64(m.Use), v.system)}
	}
	return block("water-months", "Month by month",
		rows("Means of a day, month by month", head, body),
		helpText("The thirstiest day is "+d.Peak.On.In(v.system)+": the crop uses "+v.show(d.Peak.Use)+", and "+v.show(d.Peak.Gross)+" must be pumped. It sizes everything below. Rain is not counted: film sheds it. Cool and dry years come about once in ten; air of a dry year is drier, too."),
		helpText(v.seasonWords(d)),
	)
}

func (v waterView) seasonWords(d *water.Demand) string {
	text := "Season of " + v.show(d.Season) + " from planting: as much to pump as " + v.show(d.InField) + " on the whole field."
	if d.Peak.GrossPoor > 0 {
		text += " In a field as uneven as old systems (70 %) the thirstiest day takes " + v.show(d.Peak.GrossPoor) + "."
	}
	for i := range d.Months {
		if m := &d.Months[i]; m.Month == monthOf(d.Peak.On) {
			text += " Reference evapotranspiration in " + unit.MonthName(m.Month) + ": " + v.show(unit.FineDepth(m.Reference)) + " a day by Penman-Monteith, " +
				v.show(unit.FineDepth(v.plan.Hargreaves[m.Month-1])) + " by Hargreaves (FAO-56, as a cross-check)."
		}
	}
	return text
}

func monthOf(d unit.Date) int {
	_, month, _ := d.Civil()
	return month
}

func (v waterView) schedule() app.UI {
	s := v.plan.Schedule
	if s == nil {
		body := []app.UI{paragraph("Zones and hours need the flow of your source, the number of beds and their length. None is guessed: do the bucket test.")}
		if d := v.plan.Demand; d != nil && d.Peak.Run > 0 {
			body = append(body, paragraph("Whatever the zones, each one runs "+plan.RunWords(d.First.Every, d.First.Together).In(v.system)+" at planting and "+v.show(d.Peak.Run)+" on the thirstiest day, in "+runs(d.Peak.Runs)+"."))
		}
		return block("water-schedule", "Zones and schedule", body...)
	}
	body := []app.UI{}
	if len(s.Zones) == 0 {
		body = append(body, paragraph("Not even one bed can run on this flow."))
	} else {
		body = append(body, app.Figure().Class("water-figure").Body(app.Raw(v.zonePlan()), app.FigCaption().Text("Zones and header, seen from above. Beds hang on the header; each zone has its own valve.")))
		list := make([][]string, 0, len(s.Zones))
		for i := range s.Zones {
			z := &s.Zones[i]
			if i >= 12 && i < len(s.Zones)-1 {
				continue
			}
			beds := strconv.Itoa(z.FirstBed)
			if z.LastBed > z.FirstBed {
				beds += "–" + strconv.Itoa(z.LastBed)
			}
			litres := "—"
			if z.LitresADay.Given {
				litres = unit.KindVolume.Figure(float64(z.LitresADay.Value), v.system)
			}
			list = append(list, []string{strconv.Itoa(z.Number), beds, unit.KindFlow.Figure(float64(z.Flow), v.system), unit.KindLong.Figure(float64(z.FromSource), v.system), litres})
		}
		caption := "Zones of whole beds"
		if len(s.Zones) > 13 {
			caption += ": the first twelve and the last of " + strconv.Itoa(len(s.Zones))
		}
		body = append(body, rows(caption, []string{"Zone", "Beds", "Flow, " + unit.KindFlow.Symbol(v.system), "Pipe to it, " + unit.KindLong.Symbol(v.system), "Most a day, " + unit.KindVolume.Symbol(v.system)}, list))
	}
	if s.RunADay.Given && len(s.Zones) > 0 {
		body = append(body, figures(
			"Each zone, thirstiest day", v.show(s.RunADay.Value)+" in "+runs(s.Runs),
			"All zones, a day", v.show(s.HoursADay.Value)+" of your "+v.show(s.HoursGiven),
			"All zones, a week", v.show(s.HoursAWeek.Value),
			"Water, thirstiest day", v.show(s.LitresADay.Value)))
	}
	if len(v.plan.Turns) > 0 {
		list := make([][]string, len(v.plan.Turns))
		for i, t := range v.plan.Turns {
			list[i] = []string{"Zone " + strconv.Itoa(t.Zone) + ", run " + strconv.Itoa(t.Run), v.show(t.From), v.show(t.To)}
		}
		body = append(body, app.Details().ID("water-turns").Class("water-turns").Body(summary("Valve by valve"),
			rows("Time from the first opening, on the thirstiest day", []string{"Valve", "From", "To"}, list)))
	}
	return block("water-schedule", "Zones and schedule", body...)
}

func (v waterView) line() app.UI {
	t := &v.plan.Tape
	if t.Profile == nil {
		return block("water-line", "Along one bed", paragraph("Pressure along a bed needs the bed’s length."))
	}
	r := t.Profile
	slope := "level"
	if v.plan.Climbs > 0 {
		slope = "climbing " + v.show(unit.FineShare(v.plan.Climbs)) + " away from the header"
	}
	points := make([][]string, 0, 8)
	for i, at := range r.Points {
		if i%4 == 0 || i == len(r.Points)-1 {
			points = append(points, []string{v.show(at.From), v.show(at.Pressure)})
		}
	}
	other := ""
	if v.plan.OtherEnd.Given {
		other = v.show(unit.FineShare(v.plan.OtherEnd.Value)) + ": put the header at the upper end where you can"
	}
	longest := v.show(t.Longest.Length)
	return block("water-line", "Along one bed",
		app.Figure().Class("water-figure").Body(app.Raw(v.pressurePicture()), app.FigCaption().Text("Pressure along one line, "+slope+", solved outlet by outlet.")),
		figures(
			"Pressure at the inlet", v.show(t.Pressure),
			"Lowest pressure", v.show(r.Lowest)+" at "+v.show(r.LowestAt),
			"Pressure at the end", v.show(r.End),
			"Spread of flow along the bed", v.show(unit.FineShare(t.Spread)),
			"Spread if fed from the upper end", other,
			"Longest bed for 10 %", longest,
			"Emission uniformity", v.show(unit.FineShare(t.Uniformity))+" as designed; old fields measure 65–80 %",
			"Flow of one bed", v.show(t.BedFlow)+", "+v.show(t.Flow),
			"Water in the lines of a bed", v.show(t.Fill)+", filled in "+v.show(t.FillMinutes),
		),
		app.Details().ID("water-points").Class("water-points").Body(summary("The same in figures"),
			rows("Pressure along one line", []string{"From the header", "Pressure"}, points)))
}

func (v waterView) soil() app.UI {
	s := v.plan.Soil
	if s == nil || s.Longest == 0 {
		return block("water-soil", "Soil and longest run", paragraph("The longest single run needs soil texture and the crop’s roots."))
	}
	percent := func(share float64) string { return v.show(unit.FineShare(100 * share)) }
	guide := "not in the field guides’ table"
	if s.GuideHigh > 0 {
		guide = percent(s.GuideLow) + " to " + percent(s.GuideHigh)
	}
	body := []app.UI{
		app.P().Body(strong(v.show(s.Longest)+" at most"), plain(" in one run; then water passes the roots. With the other published figures for this soil it is "+v.show(unit.Between(s.LongestLow, s.LongestHigh))+".")),
		figures(
			"Available water", percent(s.Water.Available)+" of the soil (field guides: "+guide+")",
			"Roots in the bed", v.show(unit.Short(s.Depth))+" deep",
			"Used between runs", v.show(unit.PercentOf(s.Depletion))+" of the available water",
			"Wet strip", v.show(unit.Short(s.Strip.Width))+", "+v.show(s.Strip.Share)+" of the bed top",
			"Store", v.show(s.Store),
		)}
	for i := range v.plan.Checks {
		if c := &v.plan.Checks[i]; c.ID == "longest-run" {
			body = append(body, helpText(c.Says.In(v.system)+" The two editions differ by half because they take other root depths, shares and strips. Dig beside the tape after a run: that decides."), app.P().Class("help").Body(app.Cite().Text("("+c.Source+")")))
		}
	}
	return block("water-soil", "Soil and longest run", body...)
}

func (v waterView) supply() app.UI {
	s, f := v.plan.Supply, v.plan.Filter
	filter := strconv.Itoa(f.Mesh.Count) + " mesh (" + v.show(unit.Micrometres(f.Mesh.Opening)) + ")"
	if v.system == unit.US {
		filter = strconv.Itoa(f.Mesh.Count) + " mesh (" + strconv.Itoa(int(f.Mesh.Opening)) + " µm)"
	}
	if f.MediaFirst {
		filter += ", behind a media or disc filter: open water carries algae"
	}
	if f.SandFirst {
		filter += "; a sand separator first if the well lifts sand"
	}
	if s == nil {
		return block("water-supply", "Source, header, pump, filter", paragraph("Header and pump need flow, beds and bed length."), figures("Filter", filter), v.care("electricity"))
	}
	header := ""
	if s.Bore.Inside > 0 {
		header = s.Bore.Name + " in (" + v.show(unit.Bore(s.Bore.Inside)) + " inside), water at " + v.show(unit.WaterSpeed(s.Velocity)) + ", loss " + v.show(s.HeaderLoss)
		if !s.BoreFits {
			header += ": even this is too small"
		}
	}
	head, power, gives, injector := "", "", "", ""
	if s.Head.Injector > 0 {
		injector = ", injector " + v.show(headOf(s.Head.Injector))
	}
	if s.HeadKnown && s.Total > 0 {
		head = v.show(headOf(s.Total)) + ": lift " + v.show(headOf(s.Head.Lift)) + ", rise " + v.show(headOf(s.Head.Rise)) + ", pipe " + v.show(headOf(s.Head.Friction)) + ", filter " + v.show(headOf(s.Head.Filter)) + injector + ", tape " + v.show(headOf(s.Head.Operating))
	}
	if s.PumpNeeded {
		power = "not told: the lift is missing"
		if s.HeadKnown {
			power = v.show(unit.PumpPower(s.ShaftPower)) + " at the shaft, for a pump of 75 %; motors and engines must give more"
		}
	}
	if s.SourceGives.Given {
		gives = v.show(s.SourceGives.Value)
	}
	usable := ""
	if s.Usable > 0 {
		usable = v.show(s.Usable) + " of the tested flow"
	}
	needs := ""
	if s.Needs > 0 {
		needs = v.show(s.Needs)
	}
	tank, gravity := "", ""
	if k := s.Tank; k != nil {
		tank = "refills in " + v.show(k.Refill) + ", gives at most " + v.show(k.ADay) + " a day"
		if k.RunsDry {
			tank += ", is empty after " + v.show(k.UntilEmpty) + " of running"
		}
	}
	if g := s.Gravity; g != nil {
		gravity = v.show(g.Pressure) + " at the tape; beds up to " + v.show(g.Longest.Length) + " stay within 10 %"
	}
	return block("water-supply", "Source, header, pump, filter",
		figures("Usable flow", usable, "Header", header, "Pressure needed at the source", needs, "The source leaves at the tape", gives,
			"Total head", head, "Pump", power, "Tank", tank, "By height alone", gravity, "Filter", filter),
		v.care("electricity"), v.care("shaft"), v.care("well"), v.care("drinking-water"), v.care("surface-water-food"), v.care("not-drinking-water"))
}

func headOf(m unit.Metres) unit.Quantity { return unit.Quantity{Kind: unit.KindHead, SI: float64(m)} }

func (v waterView) quality() app.UI {
	q := &v.plan.Quality
	var body []app.UI
	line := func(text string) { body = append(body, item(text)) }
	for _, f := range q.Clogging {
		body = append(body, app.Li().Body(plain("Clogging by "+f.Clogger.Name+": "+f.Hazard.String()+" risk at "+strconv.FormatFloat(f.Value, 'f', -1, 64)+". "), app.Cite().Text("("+f.Clogger.Source+")")))
	}
	if q.HardnessWord != "" {
		line("Hardness: " + q.HardnessWord + ".")
	}
	if q.Restriction != waterquality.Unknown {
		line("Salt, any crop: " + q.Restriction.String() + " restriction. Soil taking water in: " + q.Infiltration.String() + " risk (after FAO Paper 29; pure water is the danger there).")
	}
	if q.Yield.Given {
		line("Yield expected with this water: " + v.show(q.Yield.Value) + "; this crop stands " + v.show(q.MostSalt.Value) + " without loss. Water that must pass the roots: " + v.show(unit.FineShare(v.plan.Demand.Leaching)) + ".")
	}
	if q.NitrogenCredit.Given {
		b := &v.s.workOut().list.Base
		line("Nitrogen that comes with the water over the season: " + v.show(b.Nutrients[plan.Nitrogen].Water) + " with beds " + v.show(b.Centres) + " apart. The feed is reckoned without it.")
	}
	if len(body) == 0 {
		return block("water-quality", "Water test", paragraph("No water test was given. Salt, pH, iron and hardness decide whether tape clogs and whether the crop stands the water: have them tested before you buy."))
	}
	return block("water-quality", "Water test", app.Ul().Body(body...))
}

func (v waterView) feeding() app.UI {
	f := v.plan.Feeding
	if f == nil {
		return block("water-feeding", "Feeding", paragraph("Give your rate, grade, stock and injector under “Feeding and chlorine”, and the flow of your source, for the sums. We recommend no rate and no product."), v.care("backflow"))
	}
	fits := "Injecting and rinsing fit into one run."
	if !f.Fits {
		fits = "Injecting and rinsing do not fit into one run."
	}
	return block("water-feeding", "Feeding, one day",
		figures("Nutrient, all beds", v.show(unit.FineMass(f.Nutrient)), "Product", v.show(unit.FineMass(f.Product)), "Stock solution", v.show(unit.FineVolume(f.Stock)), "Stock, largest zone", v.show(unit.FineVolume(f.ZoneStock)),
			"Inject, largest zone", v.show(f.ZoneInject), "Clean water after it", v.show(f.Rinse)),
		paragraph(fits+" Rates for an acre or hectare mean the field at your bed centers."),
		v.care("backflow"), v.care("calcium-sulfate"), v.care("label"))
}

func (v waterView) chlorine() app.UI {
	c := v.plan.Chlorine
	if c == nil {
		return block("water-chlorine", "Chlorine", paragraph("Only where the label and local code allow it. Give the bleach and the strength under “Feeding and chlorine” for the sum."), v.care("chlorine-acid"))
	}
	iron := ""
	if c.ForIron > 0 {
		iron = v.show(c.ForIron) + " is used up by the iron alone (University of Florida)"
	}
	return block("water-chlorine", "Chlorine",
		figures("Inject into the largest zone", v.show(unit.SmallFlow(c.Inject)), "Strength wanted", v.show(c.Wanted), "Iron", iron),
		paragraph("Inject ahead of the filter. Published levels: 1 mg/L free chlorine at the line ends against slime in use; 200–500 mg/L only between crops, with no plants on the lines (University of Florida). The label decides."),
		v.care("chlorine-acid"), v.care("chlorine-ammonia"), v.care("acid"), v.care("label"), v.care("backflow"))
}

// care prints one caution where it bites, with who has the last word; nothing
// where the plan does not call for it.
func (v waterView) care(id string) app.UI {
	for _, c := range v.plan.Cautions {
		if c.ID == id {
			return app.P().Class("water-care care-"+id).Body(strong("Take care. "), plain(c.Text+" "), app.Em().Text("Last word: "+c.LastWord+"."))
		}
	}
	return nil
}

// lastWord names who decides, once, before the figures.
func (v waterView) lastWord() app.UI {
	return para("water-last", "Labels, the local plumbing and chemigation codes, and licensed electricians, plumbers and applicators have the last word on every line of this sheet.")
}

func (v waterView) checks() app.UI {
	var list []app.UI
	for i := range v.plan.Checks {
		c := &v.plan.Checks[i]
		if c.ID == "longest-run" {
			continue
		}
		word := "Within. "
		if !c.Agrees {
			word = "Outside. "
		}
		list = append(list, app.Li().Body(strong(word), plain(c.Says.In(v.system)+" "), app.Cite().Text("("+c.Source+")")))
	}
	if len(list) == 0 {
		return nil
	}
	return app.Section().Class("water-checks").ID("water-checks").Body(heading3("Beside rules of the trade"), app.Ul().Body(list...))
}

func (v waterView) assumed() app.UI {
	list := make([]app.UI, len(v.plan.Assumed))
	for i, a := range v.plan.Assumed {
		list[i] = item(fieldWords(a.Field) + ": " + a.Value.In(v.system) + " (" + a.Source + ")")
	}
	if v.plan.Climbs > 0 {
		list = append(list, item("Slope along the beds: "+v.show(unit.FineShare(v.plan.Climbs))+", climbing away from the header, which is the worse way (along the contour it is less)"))
	}
	return app.Details().ID("water-assumed").Class("water-assumed").Body(summary("What the plan takes for granted"), app.Ul().Body(list...))
}

// steps show each sum with its figures, so that it can be done by hand.
func (v waterView) steps() app.UI {
	list := make([]app.UI, len(v.plan.Steps))
	for i := range v.plan.Steps {
		s := &v.plan.Steps[i]
		formula, source := s.Formula, s.Source
		if formula == "" { // they come as a file when the steps are unfolded
			formula, source, _ = strings.Cut(v.s.texts["step:"+s.ID], "\t")
		}
		inputs := make([]app.UI, len(s.Inputs))
		for j, in := range s.Inputs {
			inputs[j] = item(sentence(in.Name) + ": " + in.Quantity.In(v.system))
		}
		list[i] = app.Li().ID("water-step-"+s.ID).Body(
			app.H4().Text(s.Title),
			para("formula", sentence(formula)+"."),
			app.Ul().Body(inputs...),
			app.P().Body(strong(sentence(s.Result.Name)+": "+s.Result.Quantity.In(v.system)), plain(" "), app.Cite().Text("("+source+")")),
		)
	}
	return app.Details().ID("water-steps").Class("water-steps").Body(summary("How it was worked out, step by step"), app.Ol().Body(list...)).On("toggle", func(app.Context, app.Event) { v.s.wantTexts() })
}
