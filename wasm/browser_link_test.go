//go:build !js

package main

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/table/normals"
	"filmfurrow/wasm/browsertest"
)

func linkOf(t *testing.T, id string) string {
	t.Helper()
	return linkOfFile(t, "../testdata/cases/"+id+".json")
}

func linkOfFile(t *testing.T, file string) string {
	t.Helper()
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	places, err := normals.Embedded()
	require.NoError(t, err)
	c, err := casefile.Decode(data, places)
	require.NoError(t, err)
	return casefile.Link(&c)
}

func TestALinkOpensItsField(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	link := linkOf(t, "broccoli-late-summer")
	p := b.Page(820, "/#f="+link)
	p.WaitText("#note", "came with a link")
	p.WaitText("#verdict h1", "silver")
	assert.Equal(t, "broccoli", browsertest.Eval[string](p, `document.querySelector("#f-crop").value`))
	assert.Equal(t, "null", browsertest.Eval[string](p, `String(localStorage.getItem("film-furrow/field"))`), "nothing is kept before somebody types")

	p.Do(`location.hash = "f=` + linkOf(t, "carrot-drill") + `"`)
	p.WaitText("#verdict h1", "Do not lay film here")
	p.Back()
	p.WaitText("#verdict h1", "silver")
}

func TestADamagedLinkLoadsNothing(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	link := linkOf(t, "broccoli-late-summer")
	for _, bad := range []string{link[:40], link[:len(link)-1] + "0", "2" + link[1:], "%%%bad", "hello"} {
		p := b.Page(820, "/#f="+bad)
		p.WaitText("#note", "Nothing was loaded.")
		assert.Equal(t, "bell-pepper", browsertest.Eval[string](p, `document.querySelector("#f-crop").value`))
		p.Close()
	}
}

// What is typed after a link came in is what a reload brings back, not the link.
func TestWhatIsTypedAfterALinkIsKept(t *testing.T) {
	t.Parallel()
	b := browsertest.Open(t)
	p := b.Page(820, "/#f="+linkOf(t, "broccoli-late-summer"))
	p.WaitText("#verdict h1", "silver")
	p.Choose("#f-soil-texture", "clay")
	p.Wait("the link to leave the address", `location.hash === ""`)
	p.Reload()
	p.WaitReady()
	p.Wait("the field as it was changed", `document.querySelector("#f-crop").value === "broccoli" && document.querySelector("#f-soil-texture").value === "clay"`)
}
