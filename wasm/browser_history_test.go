//go:build !js

package main

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
)

// controls are all of the form's that can be set without a search, with what each holds.
const controls = `Object.fromEntries([...document.querySelectorAll(".more-all input, .more-all select")].filter((el) => el.id.startsWith("f-") && el.type !== "search" && el.type !== "checkbox").map((el) => [el.id, el.value]))`

// Two hundred random changes, steps back, reloads and links, in a browser: every control
// holds what an account kept outside of the page says. TestAnyWayThroughAField… in package
// app goes ten thousand steps without one.
func TestTwoHundredStepsThroughAField(t *testing.T) {
	t.Parallel()
	links := map[string]string{"broccoli": linkOf(t, "broccoli-late-summer"), "tomato": linkOf(t, "tomato-high-summer")}
	b := browsertest.Open(t)
	p := b.Whole(820, "/details")
	now := browsertest.Eval[map[string]string](p, controls)
	require.Greater(t, len(now), 50)
	var ids []string // crop brings its usual start along
	for id := range now {
		if id != "f-crop" {
			ids = append(ids, id)
		}
	}
	slices.Sort(ids)
	var before []map[string]string
	seeded := rand.New(rand.NewPCG(18, 19))
	last, taken := "", map[string]int{}
	touched := func(what string) {
		if last != what {
			before = append(before, maps.Clone(now))
			before = before[max(0, len(before)-10):]
		}
		last = what
	}
	for step := range 200 {
		did := ""
		set := func() {
			id := ids[seeded.IntN(len(ids))]
			text := browsertest.Eval[string](p, fmt.Sprintf(`((el, n) => {
				if (el.tagName === "SELECT") el.selectedIndex = n %% el.options.length;
				else if (el.type === "date") el.value = "2027-06-" + String(1 + n %% 28).padStart(2, "0");
				else el.value = ["", String(1 + n %% 9), "x" + n, String(n)][n %% 4];
				for (const kind of ["input", "change"]) el.dispatchEvent(new Event(kind, { bubbles: true }));
				return el.value;
			})(document.getElementById(%q), %d)`, id, seeded.IntN(1000)))
			did += " set " + id + " to " + text
			touched(id)
			now[id] = text
			taken["set"]++
		}
		switch act := seeded.IntN(40); {
		case act < 27:
			set()
		case act < 35:
			did = "take back"
			if len(before) > 0 {
				p.Do(`document.querySelector("#take-back").click()`)
				now, before, last = before[len(before)-1], before[:len(before)-1], ""
				taken[did]++
			}
		case act < 38:
			did = "reload"
			p.Reload()
			p.WaitWhole()
			last = ""
			taken[did]++
		default:
			crop := slices.Sorted(maps.Keys(links))[seeded.IntN(len(links))]
			did = "open " + crop
			p.Do(`location.hash = ` + browsertest.Quote("f="+links[crop]))
			p.Wait("the field of "+crop, `document.querySelector("#moved").textContent.includes("a field came with a link") && document.querySelector("#f-crop").value === "`+crop+`"`)
			touched(fmt.Sprint("link ", step))
			now = browsertest.Eval[map[string]string](p, controls) // what a link holds is held to elsewhere
			last = ""
			set() // an unchanged link is opened anew by a reload
			taken["open"]++
		}
		differ := fmt.Sprintf(`((want, have) => Object.keys(want).filter((id) => want[id].trim() !== have[id]?.trim()).map((id) => id + ": " + want[id] + " is " + have[id]).join("; "))(%s, %s)`, object(now), controls)
		for range 100 { // some are written a frame later
			if browsertest.Eval[string](p, differ) == "" {
				break
			}
			time.Sleep(50 * time.Millisecond)
		}
		require.Empty(t, browsertest.Eval[string](p, differ), "step %d: %s", step, did)
	}
	t.Log(taken)
	assert.Len(t, taken, 4)
}

// object is a map as JavaScript writes it.
func object(m map[string]string) string {
	text := "{"
	for _, key := range slices.Sorted(maps.Keys(m)) {
		text += browsertest.Quote(key) + ":" + browsertest.Quote(m[key]) + ","
	}
	return text + "}"
}
