//go:build !js

package main

import (
	"encoding/json"
	"fmt"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/browsertest"
)

// On later visits Plan opens on what the season asks of the grower's own field that day,
// large and above the verdict, and one tap leads to its view. It is still one screen. The
// example and a field of a link are nobody's season.
func TestALaterVisitOpensOnWhatTheSeasonAsks(t *testing.T) {
	t.Parallel()
	farm, err := os.ReadFile("../testdata/cases/pepper-cool-spring.json")
	require.NoError(t, err)
	kept, err := json.Marshal(map[string]any{"schema": 2, "case": string(farm), "system": 1, "typed": map[string]string{}})
	require.NoError(t, err)
	b := browsertest.Open(t)
	on := func(day, before string) string {
		return fmt.Sprintf(`{ const right = Date, off = new right(%q) - right.now();
			globalThis.Date = class extends right { constructor(...a) { if (a.length) super(...a); else super(right.now() + off); } static now() { return right.now() + off; } }; } `, day+"T08:00") + before
	}
	keeping := `localStorage.setItem("film-furrow/field", ` + quoted(string(kept)) + `);`
	for _, v := range []struct{ day, asks, path string }{
		{"2027-05-08", `^Lay in \d+ days?$`, "/lay"},
		{"2027-07-24", `^Water \d+ min today$`, "/water"},
		{"2027-10-10", `^Lift from [A-Z][a-z]+ \d+ on$`, "/year"},
	} {
		for _, size := range []struct {
			wide, tall int
			screens    float64
		}{{820, 1180, 1}, {1280, 800, 1}, {1920, 1080, 1}, {390, 844, 2}} {
			p := b.Tab(browsertest.Tab{Path: "/", Width: size.wide, Height: size.tall, Whole: true, Before: on(v.day, keeping)})
			p.Wait("what the season asks", `document.querySelector("#verdict .now") !== null`)
			assert.Regexp(t, v.asks, p.Text("#verdict .now"))
			place := browsertest.Eval[[]float64](p, `[document.querySelector("#verdict .now").getBoundingClientRect().bottom - document.querySelector("#verdict h1").getBoundingClientRect().top,
				document.querySelector("#verdict").getBoundingClientRect().bottom / innerHeight, document.documentElement.scrollHeight / innerHeight]`)
			t.Logf("%s at %d × %d: %s; verdict ends at %.2f, %.2f screens", v.day, size.wide, size.tall, p.Text("#verdict .now"), place[1], place[2])
			assert.LessOrEqual(t, place[0], 1.0, "above the verdict")
			assert.LessOrEqual(t, place[1], 1.0)
			assert.LessOrEqual(t, place[2], size.screens, "%s at %d × %d", v.day, size.wide, size.tall)
			p.Screenshot(fmt.Sprintf("now-%s-%d", v.day, size.wide))
			if size.wide == 820 {
				p.Click("#verdict .now a")
				p.Wait("its view", fmt.Sprintf(`location.pathname === %q`, v.path))
			}
			p.Close()
		}
	}
	p := b.Tab(browsertest.Tab{Path: "/", Whole: true, Before: on("2027-05-08", `localStorage.clear();`)})
	assert.False(t, p.Visible("#verdict .now"), "the example is nobody's season")
	p.Close()
}
