package app

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// shoppingPart is the list of what to buy, with the grower's own quantities
// beside ours, and what it costs by the grower's own prices.
type shoppingPart struct {
	app.Compo
	S    *store
	told string
}

func (p *shoppingPart) OnMount(app.Context) { p.S.follow(p, onAdvice|onUnits, p.Update) }
func (p *shoppingPart) OnDismount()         { p.S.leave(p) }

func (p *shoppingPart) Render() app.UI {
	s := p.S
	a, system := s.advice, s.system
	list, cost := s.shopping()
	if a.Refused() {
		return app.Section().ID("shopping").Class("sheet").Body(s.notNow("Nothing to buy for film.", "Film is not to be laid here."), s.paperHead())
	}
	rows := make([]app.UI, 0, len(list.Lines))
	how := &svg{}
	how.raw(`<dl class="how">`)
	lines := inOrder(&list)
	for i, l := range lines {
		rows = append(rows, p.row(l, i+1))
	}
	for _, item := range listOrder {
		l := &list.Lines[item]
		how.raw(`<dt>`, escape(sentence(l.Name)), `</dt><dd>`, escape(howWords(l, system)), `</dd>`)
	}
	how.raw(`</dl>`)
	mass := ""
	if list.RollMass > 0 {
		who := strconv.Itoa(list.Lifters) + " people lift it"
		if list.Lifters > 3 {
			who = "a loader lifts it"
		}
		mass = "A roll weighs about " + unit.Of(list.RollMass).In(system) + ": " + who + "."
	}
	title := "What to buy"
	for _, step := range a.Season(&list) {
		if step.ID == "order" {
			title = "Order by " + dayOfYear(step.On.Plus(step.Days-1), system)
		}
	}
	return app.Section().ID("shopping").Class("sheet").Body(
		s.paperHead(),
		box("view-head", app.H1().Text(title), para("sub", buyFor(a, system)), s.printButton("shopping-print", "Print the list")),
		p.whose(),
		app.Raw(partsHTML(lines)),
		asked("", listed("scroll list", "Shopping list", rows, "No.", "Item", "Quantity", "Your own")),
		paragraph(mass),
		app.Details().Class("fold").ID("shopping-how").Body(summary("How each quantity was worked out"),
			app.Raw(how.b.String()), paragraph(list.Layout.In(system)+" The film on the field weighs "+unit.Of(list.FilmMass).In(system)+".")),
		app.Details().Class("fold").ID("shopping-prices").Body(summary("Prices: your own or a supplier’s"), p.costs(&cost)),
		&foldPart{S: s, ID: "shopping-machine", Title: "Tractor, layer, and what to take care of", Part: s.machinePart},
		box("buttons",
			button("shopping-copy", "Copy as text").OnClick(p.copy),
			button("shopping-csv", "Save as a table (CSV)").OnClick(func(app.Context, app.Event) {
				saveFile("film-and-furrow-shopping.csv", "text/csv", p.table())
			})),
		app.P().Class("help").Role("status").Text(p.told),
	)
}

// whose asks whether the beds that all is bought for are the grower's.
func (p *shoppingPart) whose() app.UI {
	s := p.S
	f := &s.c.Field
	words := ""
	if f.Beds.Given && f.BedLength.Given {
		words = "For " + unit.Of(int(f.Beds.Value)).In(s.system) + " beds of " + unit.Of(f.BedLength.Value).In(s.system) + "."
	}
	borrowed := s.example || s.borrowed["field.beds"] || s.borrowed["field.bed_length_m"]
	class := "whose"
	if borrowed {
		class += " borrowed"
		words += " From the example. Yours?"
	}
	if words == "" {
		words = "How many beds, and how long? The list needs both."
	}
	return box(class, strong(words),
		button("beds-mine", "Yes, mine").Hidden(!borrowed || s.example).OnClick(func(app.Context, app.Event) { s.mine("field.beds", "field.bed_length_m") }),
		app.A().Class("act").Href(rooted("/details")+"#"+fieldID("field.beds")).Text("Change"))
}

func howWords(l *plan.Line, system unit.System) string {
	if l.Missing != "" {
		return "Needs " + l.Missing + "."
	}
	return l.How.In(system)
}

// careOf shows the cautions of a step, and one more by its id.
func careOf(a *plan.Advice, step judge.Step, also string) app.UI {
	var list []app.UI
	for i := range a.Cautions {
		if c := &a.Cautions[i]; c.Step == step || c.ID == also {
			list = append(list, paragraph("Take care: "+c.Text+" Last word: "+c.Defers+"."))
		}
	}
	return app.Div().Class("water-care").Hidden(len(list) == 0).Body(list...)
}

func (p *shoppingPart) row(l *plan.Line, n int) app.UI {
	quantity := quantityWords(l.Quantity, l.Kind, p.S.system)
	if l.Missing != "" {
		quantity = "?"
	}
	short := ""
	if l.Short() {
		short = " Yours is less than this."
	}
	return app.Tr().Body(
		app.Td().Class("count").Text(n),
		app.Th().Scope("row").Body(plain(sentence(l.Name)), span(l.Spec.In(p.S.system)+short)),
		app.Td().Class("figure").Text(quantity),
		app.Td().Body(&entry{S: p.S, Name: "shopping." + field.ItemKeys[l.Item], Inline: true}))
}

func quantityWords(v float64, kind unit.Kind, system unit.System) string {
	return unit.Quantity{Kind: kind, SI: v}.In(system)
}

// taken is the quantity that counts, in words, with whose it is.
func (p *shoppingPart) taken(l *plan.Line) (words, whose string) {
	switch {
	case l.Own.Given:
		return quantityWords(l.Own.Value, l.Kind, p.S.system), "your own; ours was " + quantityWords(l.Quantity, l.Kind, p.S.system)
	case l.Missing != "":
		return "?", "needs " + l.Missing
	}
	return quantityWords(l.Quantity, l.Kind, p.S.system), l.How.In(p.S.system)
}

func (p *shoppingPart) table() string {
	list, _ := p.S.shopping()
	var b strings.Builder
	b.WriteString(csvRow("item", "ask for", "quantity", "how"))
	for _, item := range listOrder {
		l := &list.Lines[item]
		words, whose := p.taken(l)
		b.WriteString(csvRow(l.Name, l.Spec.In(p.S.system), words, whose))
	}
	return b.String()
}

func (p *shoppingPart) copy(ctx app.Context, _ app.Event) {
	list, _ := p.S.shopping()
	var b strings.Builder
	for _, l := range inOrder(&list) {
		words, _ := p.taken(l)
		if spec := l.Spec.In(p.S.system); spec != "" {
			words += " (" + spec + ")"
		}
		b.WriteString(inOwnWords(sentence(l.Name)) + ": " + inOwnWords(words) + "\n")
	}
	copyText(ctx, b.String(), "Copied.", copyByHand, func(words string) { p.told = words })
}

const copyByHand = "This browser does not let the page copy. Select the text by hand."

// copyText puts a text on the clipboard and tells whether it is there.
func copyText(ctx app.Context, text, done, failed string, tell func(string)) {
	clipboard := app.Window().Get("navigator").Get("clipboard")
	if !clipboard.Truthy() {
		tell(failed)
		return
	}
	say := func(words string) app.Func {
		return app.FuncOf(func(app.Value, []app.Value) any {
			ctx.Dispatch(func(app.Context) { tell(words) })
			return nil
		})
	}
	clipboard.Call("writeText", text).Call("then", say(done), say(failed))
}

// priceNames are the grower's own prices, in the order of the sum.
var priceNames = []string{"prices.currency", "prices.film_roll", "prices.roll_biodegradable", "prices.roll_paper", "prices.tape_m", "prices.fittings_bed", "prices.system", "prices.plant", "prices.wage_hour", "prices.laying_hours", "prices.lifting_hours", "prices.haul_tonne", "prices.crop_unit"}

func (p *shoppingPart) costs(c *plan.Cost) app.UI {
	rows := make([]app.UI, 0, len(c.Lines))
	for _, l := range c.Lines {
		amount := money(l.Amount, c.Currency)
		if !l.Priced {
			amount = l.NoSum
		}
		rows = append(rows, rowOf(l.Name, l.How.In(p.S.system), amount))
	}
	total, per := "Total "+money(c.Total, c.Currency)+". ", money(c.PerMetre, c.Currency)+" for each metre of bed"
	if p.S.system == unit.US {
		per = money(c.PerFoot, c.Currency) + " for each foot of bed"
	}
	per += "; " + money(c.PerPlant, c.Currency) + " for each plant."
	switch {
	case c.Partial && c.Total == 0:
		total, per = "No total yet: give a price. ", ""
	case c.Partial:
		total = "Total " + money(c.Total, c.Currency) + ", in part: what has no price is left out. "
	}
	even := ""
	if c.BreakEven > 0 {
		even = " Over bare ground it costs " + money(c.Extra, c.Currency) + " more: " + unit.Of(int(c.BreakEven)).In(p.S.system) + " units of crop pay for that."
	}
	part := func(o unit.Optional[float64]) string {
		if !o.Given {
			return "no price"
		}
		return money(o.Value, c.Currency)
	}
	films := make([]app.UI, 0, len(c.Films))
	for i := range c.Films {
		f := &c.Films[i]
		whole, note := money(f.Total, c.Currency), f.Note.In(p.S.system)
		if f.Partial && f.Total == 0 {
			whole = "no price"
		} else if f.Partial {
			whole += " in part"
		}
		if f.UpTo.Given {
			note += " Up to " + money(f.UpTo.Value, c.Currency) + " a roll it is no dearer than the first."
		}
		films = append(films, rowOf(sentence(f.Name), note, part(f.Film), part(f.Laying), part(f.Lifting), part(f.Haul), whole))
	}
	w := c.Hours
	return app.Div().ID("costs").Body(
		helpText("We give no prices. What has none is left out, and the total says so. For scale only: a farm magazine of 2013 told of about $180 of film and $125 of tape for an acre in Michigan."),
		asked("fields", fieldsOf(p.S, priceNames)...),
		listed("scroll stack", "Costs", rows, "For", "Amount", "How"),
		app.P().Body(strong(total), plain(per+even)),
		paragraph("Work: laying "+unit.Of(w.Laying).In(p.S.system)+" of one person ("+unit.Of(w.LayingClock).In(p.S.system)+" by the clock with "+strconv.Itoa(w.People)+" people), lifting "+unit.Of(w.Lifting).In(p.S.system)+". "+w.How.In(p.S.system)),
		heading("Films side by side"),
		listed("scroll", "Films side by side", films, "Kind", "Film", "Laying", "Lifting", "Hauling", "Together", "Note"),
	)
}

func money(v float64, currency string) string {
	text := strconv.FormatFloat(v, 'f', 2, 64)
	if currency == "" {
		return text
	}
	return currency + " " + text
}

// buyFor says which day the list is for.
func buyFor(a *plan.Advice, system unit.System) string {
	if a.FilmDown() {
		return "for planting on " + dayOfYear(a.WaitPlan.PlantOn, system) + "; the film is down"
	}
	return "for laying on " + dayOfYear(a.WaitPlan.LayOn, system)
}
