//go:build !js

package main

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/wasm/browsertest"
)

// alone leaves only the strip on the page, for a picture of it.
const alone = `document.querySelectorAll(".head, .notes, .moved, .yours, .why > :not(#season-strip)").forEach((el) => el.remove())`

// still holds when no soil is being worked out.
const still = `document.querySelector("#season-strip")?.getAttribute("aria-busy") === "false"`

// strip opens the page and waits until the program answers a click: what stands
// there before is the page as it was built.
func strip(b *browsertest.Browser, width int) *browsertest.Page {
	p := b.Whole(width, "/why/wait")
	p.Do(`document.querySelectorAll("#season-strip details").forEach((d) => { d.open = true })`)
	p.Wait("the program to answer", `(document.querySelector("#units-metric").click(), document.querySelector("#strip-table caption").textContent.includes("cm"))`)
	p.Wait("the program to answer", `(document.querySelector("#units-US").click(), document.querySelector("#strip-table caption").textContent.includes(" in ")) && `+still)
	return p
}

// days counts from 1 January 1970, as the handle does.
func days(date string) string { return `(Date.parse("` + date + `") / 864e5)` }

func standsOn(p *browsertest.Page, date string) {
	p.Wait("handle, date fields and line to stand on "+date, `document.querySelector("#strip-day").value === String(`+days(date)+`)
		&& document.querySelector("#strip-plant-on").value === "`+date+`"
		&& Math.abs(parseFloat(document.querySelector("#strip-now").getAttribute("x1")) - 100 * (`+days(date)+` - document.querySelector("#strip-day").min)
			/ (document.querySelector("#strip-day").max - document.querySelector("#strip-day").min)) < 0.01`)
}

// The strip in three widths, light; then dark and in forced colours. Names lie
// side by side without touching, and nothing pokes out of the page.
func TestTheSeasonStripFitsThreeWidths(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	for _, width := range []int{320, 390, 820, 1920} {
		p := strip(b, width)
		assert.LessOrEqual(t, browsertest.Eval[int](p, "document.documentElement.scrollWidth - document.documentElement.clientWidth"), 0, "%d px", width)
		touching := browsertest.Eval[[]string](p, `(() => {
			const texts = [...document.querySelectorAll(".strip-svg text")].filter((el) => el.checkVisibility())
				.map((el) => [el.textContent, el.getBoundingClientRect()]).filter(([, r]) => r.width > 0);
			const found = [];
			texts.forEach(([a, r], i) => texts.slice(i + 1).forEach(([b, s]) => {
				// Line boxes are taller than letters: a third of a line may overlap.
				if (r.left < s.right - 1 && s.left < r.right - 1 && r.top + 5 < s.bottom && s.top + 5 < r.bottom) found.push(a + " / " + b);
			}));
			texts.forEach(([a, r]) => { if (r.left < 0 || r.right > innerWidth) found.push(a + " pokes out"); });
			return found;
		})()`)
		assert.Empty(t, touching, "words that touch at %d px", width)
		p.Do(alone)
		p.Screenshot("strip-" + strconv.Itoa(width))
		if width == 820 {
			p.Media("", "prefers-color-scheme", "dark")
			p.Screenshot("strip-dark")
			p.Media("", "forced-colors", "active")
			p.Screenshot("strip-forced")
		}
		p.Close()
	}
}

func TestThePlantingDayByKeyboard(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := strip(b, 820)
	// The frost is over by then, so that the day wanted is the day planted.
	p.Do(`(() => { const d = document.querySelector("#strip-plant-on"); d.value = "2027-06-10"; d.dispatchEvent(new Event("change", { bubbles: true })); })()`)
	standsOn(p, "2027-06-10")
	assert.Equal(t, "slider", browsertest.Eval[string](p, `document.querySelector("#strip-day").getAttribute("role")`))
	p.Do(`document.querySelector("#strip-day").focus()`)
	for _, step := range []struct{ key, date string }{
		{"ArrowRight", "2027-06-11"}, {"ArrowUp", "2027-06-12"}, {"ArrowLeft", "2027-06-11"}, {"ArrowDown", "2027-06-10"},
		{"PageUp", "2027-06-17"}, {"PageUp", "2027-06-24"}, {"PageDown", "2027-06-17"},
	} {
		p.Press(step.key)
		standsOn(p, step.date)
		assert.Equal(t, "strip-day", browsertest.Eval[string](p, `document.activeElement.id`), "the focus stays after %s", step.key)
	}
	words := browsertest.Eval[string](p, `document.querySelector("#strip-day").getAttribute("aria-valuetext")`)
	assert.Regexp(t, `^June 17, 2027\. Soil under .+ \d+ °F, bare \d+ °F\.$`, words)
	p.WaitText(".strip-says", "on June 17")

	// Far out, the strip moves on, and the handle with it.
	for range 12 {
		p.Press("PageUp")
	}
	standsOn(p, "2027-09-09")
	assert.Equal(t, "strip-day", browsertest.Eval[string](p, `document.activeElement.id`))
}

func TestThePlantingDayByPointer(t *testing.T) {
	b := browsertest.Open(t)
	p := strip(b, 1920)
	at := browsertest.Eval[float64](p, `(() => { const s = document.querySelector("#strip-day"); return (24 + (s.clientWidth - 48) * (s.value - s.min) / (s.max - s.min)) / s.clientWidth; })()`)
	p.Drag("#strip-day", at, at+0.05, at+0.1, at+0.15, at+0.2)
	p.Wait("a later day", `document.querySelector("#strip-plant-on").value > "2027-06-10"`)
	date := browsertest.Eval[string](p, `document.querySelector("#strip-plant-on").value`)
	standsOn(p, date)
	p.WaitText("#moved", "plant")
}

func TestThePlantingDayTyped(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := strip(b, 820)
	set := func(id, date string) {
		p.Do(`(() => { const d = document.querySelector("` + id + `"); d.value = "` + date + `"; d.dispatchEvent(new Event("change", { bubbles: true })); })()`)
	}
	set("#strip-plant-on", "2027-06-05")
	standsOn(p, "2027-06-05")
	set("#strip-plant-on", "2027-07-25")
	standsOn(p, "2027-07-25")
	p.Wait("the strip to say so", `document.querySelector("#strip-now-label").textContent === "plant July 25"`)
}

// The table says what the curves show: every seventh day, with each cover.
func TestTheStripHasATableTwin(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := strip(b, 820)
	p.Do(`document.querySelector("#strip-twin").open = true`)
	assert.Equal(t, 27, browsertest.Eval[int](p, `document.querySelectorAll("#strip-twin tbody tr").length`))
	assert.Equal(t, 11, browsertest.Eval[int](p, `document.querySelectorAll("#strip-twin thead th").length`))
	ten := p.Text("#strip-twin tbody tr")
	assert.Regexp(t, `^April 1`, ten)
	p.Click("#strip-depth-5")
	p.Wait("other figures at the other depth", `document.querySelector("#strip-twin tbody tr").innerText !== `+browsertest.Quote(ten)+` && document.querySelector("#strip-twin").open`)
	assert.Equal(t, "true", browsertest.Eval[string](p, `document.querySelector("#strip-depth-5").getAttribute("aria-pressed")`))
	p.Do(`document.querySelector("#units-metric").click()`)
	p.WaitText("#strip-table caption", "5 cm")
	assert.Equal(t, p.Text(".strip-says"), browsertest.Eval[string](p, `[...document.querySelectorAll(".strip-says li")].map((li) => li.innerText).join("\n")`))
	assert.Equal(t, browsertest.Eval[string](p, `document.querySelector("#strip-desc").textContent`),
		browsertest.Eval[string](p, `[...document.querySelectorAll(".strip-says li")].map((li) => li.textContent).join(" ")`), "who cannot see the strip hears what stands under it")
}

func TestAProbeReadingIsAnswered(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Whole(820, "/details")
	p.Do(unfold)
	p.Do(`document.querySelector("#units-metric").click()`)
	p.Do(`document.querySelector("#menu").open = false`)
	p.Type("#f-soil-temperature-c", "14")
	p.WaitText("#probe-says", "On which day")
	p.Do(`(() => { const d = document.querySelector("#f-soil-measured-on"); d.value = "2027-05-12"; d.dispatchEvent(new Event("change", { bubbles: true })); })()`)
	p.WaitText("#probe-says", "moved the curves up by")
	p.Type("#f-soil-temperature-c", "54")
	p.WaitText("#probe-says", "too far to believe")
	p.WaitText("#limits", "too far to believe")
}

// While another soil is worked out, the old curves stay, dimmed.
func TestTheOldCurvesStayDimmed(t *testing.T) {
	b := browsertest.Open(t)
	p := b.Whole(820, "/details")
	p.Do(unfold)
	p.Choose("#f-soil-texture", "clay")
	p.WaitText("#moved", "Moved with it")
	view(p, "/why/wait")
	p.Wait("the strip", still)
	p.Do(`(() => {
		const strip = document.querySelector("#season-strip");
		window.seen = [];
		new MutationObserver(() => window.seen.push([strip.className, strip.querySelector(".strip-svg") !== null, strip.querySelector(".waiting").textContent]))
			.observe(strip, { attributes: true, childList: true, subtree: true, characterData: true });
	})()`)
	p.Do(`document.querySelector("#take-back").click()`) // to the soil before
	p.Wait("the dimmed strip, then the new one", `window.seen.some(([c]) => c.includes("season-old")) && `+still)
	assert.True(t, browsertest.Eval[bool](p, `window.seen.every(([, drawn]) => drawn)`), "there is a curve at every moment")
	assert.Equal(t, "season season-few", browsertest.Eval[string](p, `document.querySelector("#season-strip").className`))
}
