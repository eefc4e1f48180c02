//go:build !js

package tongue_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/tongue"
)

// A small catalogue, invented for the test.
const small = `# units
{} in
= {} pulgadas

1 in
= 1 pulgada

{} to {}
= {} a {}

May {}
= {} de mayo

{} days
= {} días

bell pepper
= pimiento

tender
= delicado

Wait {} before planting {}.
= Antes de plantar {2}, espere {1}.

It holds {} of weeds
= Frena {} de la maleza

Which film?
= ¿Qué plástico?

Kept as “{*}”.
= Guardado como “{}”.

{} and {}
= {} y {}

May {}, {}
= {} de mayo de {}

black film
= plástico negro

{} is sold by thickness
= Con {}, se vende por grosor

{} does better: {sentence}
= Con {} va mejor: {}

air in the first weeks, when plants are small and the canopy leaves most of the film bare to the sun, usually averages {}
= el aire promedia {}
`

func TestCatalogueSays(t *testing.T) {
	c, err := tongue.Parse(small)
	require.NoError(t, err)
	for english, twin := range map[string]string{
		"Wait 12 days before planting bell pepper.": "Antes de plantar pimiento, espere 12 días.",
		"Bell pepper":             "Pimiento",
		"Bell pepper:":            "Pimiento:",
		" 8 to 10 in ":            " 8 a 10 pulgadas ",
		"1 in":                    "1 pulgada",
		"May 13":                  "13 de mayo",
		"1,200.5":                 "1,200.5",
		"It holds 85 % of weeds.": "Frena 85 % de la maleza.",
		"which film?":             "¿qué plástico?",
		"Kept as “North end”.":    "Guardado como “North end”.",
		"It holds 85 % of weeds. Wait 3 days before planting bell pepper. Bell pepper": "Frena 85 % de la maleza. Antes de plantar pimiento, espere 3 días. Pimiento",
		"May 3, 2027":                      "3 de mayo de 2027",
		"Black film is sold by thickness.": "Con plástico negro, se vende por grosor.",
		"Bell pepper and May 3":            "Pimiento y 3 de mayo",
		"Black film does better: air in the first weeks, when plants are small and the canopy leaves most of the film bare to the sun, usually averages 8 in.": "Con plástico negro va mejor: el aire promedia 8 pulgadas.",
	} {
		said, all := c.Say(english)
		assert.True(t, all, english)
		assert.Equal(t, twin, said)
	}
	for _, english := range []string{"Wait 12 days before planting otherwise.", "Unheard of", "Wait  before planting bell pepper."} {
		said, all := c.Say(english)
		assert.False(t, all, english)
		assert.Equal(t, english, said)
	}
	said, all := c.Say("Unheard of. Wait 3 days before planting bell pepper.")
	assert.False(t, all)
	assert.Equal(t, "Unheard of. Antes de plantar pimiento, espere 3 días.", said)
}

func TestBadCataloguesAreNamed(t *testing.T) {
	for text, part := range map[string]string{
		"one\ntwo\n= dos\n":              `line 2: "two" follows "one"`,
		"= dos\n":                        `line 1: "= dos" needs an English line`,
		"one\n":                          `"one" has no twin`,
		"{} a\n= b\n":                    "has 1 places, its twin \"b\" has 0",
		"{} {}\n= {1} {1}\n":             "each once",
		"one\n= uno\n\none\n= una\n":     "two twins",
		"{} a\n= {} b\n\n{} a\n= {} c\n": "two twins",
	} {
		_, err := tongue.Parse(text)
		assert.ErrorContains(t, err, part)
	}
}
