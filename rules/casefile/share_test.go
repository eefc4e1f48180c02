package casefile_test

import (
	"encoding/base32"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
)

const linkLetters = "0123456789abcdefghjkmnpqrstvwxyz"

func packCases(t testing.TB) map[string]field.Case {
	t.Helper()
	all := map[string]field.Case{}
	for id, data := range packFiles(t) {
		c, err := casefile.Decode(data, places(t))
		require.NoError(t, err)
		all[id] = c
	}
	return all
}

func TestLinksBringTheCaseBack(t *testing.T) {
	longest := 0
	for id, c := range packCases(t) {
		text := casefile.Link(&c)
		again, err := casefile.ReadLink(text, places(t))
		require.NoError(t, err, id)
		assert.Equal(t, c, again, id)
		assert.Empty(t, strings.Trim(text, linkLetters), "letters that can be read aloud")
		longest = max(longest, len(text))
	}
	t.Logf("longest link of the pack: %d letters", longest)
	assert.Less(t, longest, 300)
}

func TestAStationKeepsTheLinkShort(t *testing.T) {
	st := places(t).All()[4000]
	c, err := casefile.Decode([]byte(`{"crop":"bell-pepper","plant_on":"2027-05-20","place":{"station":"`+st.ID+`"},"soil":{"texture":"loam"},"weeds":{"pressure":"heavy"},"field":{"bed_length_m":60.96,"beds":8},"water":{"flow_l_h":4542.4941408,"hours_per_day":8}}`), places(t))
	require.NoError(t, err)
	text := casefile.Link(&c)
	again, err := casefile.ReadLink(text, places(t))
	require.NoError(t, err)
	assert.Equal(t, c, again)
	assert.Less(t, len(text), 120)
}

func TestEveryCutAndEveryChangedLetterIsRefused(t *testing.T) {
	for _, c := range packCases(t) {
		text := casefile.Link(&c)
		for n := range text {
			_, err := casefile.ReadLink(text[:n], places(t))
			require.ErrorIs(t, err, casefile.ErrLink, "cut at %d", n)
		}
		for i := range text {
			for _, r := range linkLetters + "O-A" {
				changed := text[:i] + string(r) + text[i+1:]
				if changed == text {
					continue
				}
				_, err := casefile.ReadLink(changed, places(t))
				require.ErrorIs(t, err, casefile.ErrLink, "%c at %d", r, i)
			}
		}
		return // one case is enough here; the fuzz target does the rest
	}
}

func TestLinksSayWhyTheyAreRefused(t *testing.T) {
	c := packCases(t)["pepper-cool-spring"]
	good := casefile.Link(&c)
	for text, want := range map[string]string{
		"":                          "The link holds no field.",
		"2" + good[1:]:              "A newer Film & Furrow made this link. Update the page, then open it again.",
		"hello":                     "This is not a Film & Furrow link.",
		good[:len(good)-9]:          "The link was cut or mistyped.",
		strings.Repeat("1", 3000):   "The link is too long to be one of ours.",
		"1!!":                       "The link was cut or mistyped.",
		good[:9] + "zz" + good[11:]: "The link was altered or mistyped.",
	} {
		_, err := casefile.ReadLink(text, places(t))
		require.Error(t, err)
		assert.Equal(t, want+"\nnothing was loaded", err.Error())
	}
}

// Each input has a number in the link, and no two options of one input share a
// hash.
func TestEveryInputFitsIntoALink(t *testing.T) {
	base := packCases(t)["least-known"]
	for i := range field.Inputs {
		in := &field.Inputs[i]
		for _, o := range in.Options {
			if in.Form != field.FormChoice {
				continue
			}
			c := base
			in.Set(&c, field.Value{Word: o.ID})
			if len(field.Check(&c)) > 0 {
				continue
			}
			again, err := casefile.ReadLink(casefile.Link(&c), places(t))
			require.NoError(t, err, in.Name)
			v, _ := in.Get(&again)
			assert.Equal(t, o.ID, v.Word, in.Name)
		}
	}
	names := casefile.LinkFields()
	for i := range field.Inputs {
		assert.True(t, slices.Contains(names, field.Inputs[i].Name), "%s is missing in linkFields", field.Inputs[i].Name)
	}
	for i := range field.Climate {
		assert.True(t, slices.Contains(names, field.Climate[i].Name), "%s is missing in linkFields", field.Climate[i].Name)
	}
}

func TestAnyCaseSurvivesALink(t *testing.T) {
	base := packCases(t)["least-known"]
	rapid.Check(t, func(rt *rapid.T) {
		c := anyCase(rt, base)
		again, err := casefile.ReadLink(casefile.Link(&c), places(t))
		require.NoError(rt, err)
		assert.Equal(rt, c, again)
	})
}

// A link whose checksum is right may still be nonsense: another program, or a
// newer version, wrote it. It is refused with the reason.
func TestFramedNonsenseIsRefused(t *testing.T) {
	c := packCases(t)["pepper-cool-spring"]
	good := casefile.Unframed(casefile.Link(&c))
	unknown := "The link holds a field that this version does not know.\nnothing was loaded"
	number := func(name string) byte { return byte(slices.Index(casefile.LinkFields(), name)) }
	for name, fields := range map[string][]byte{
		"a field of the future":   {250, 0, 2},
		"fields out of order":     append(slices.Clone(good), good...),
		"a choice cut short":      {number("crop"), 1, 2},
		"an unknown option":       {number("crop"), 1, 2, 3},
		"a number cut short":      {number("field.beds")},
		"too many places":         {number("field.beds"), 9, 2},
		"a raw number cut short":  {number("field.beds"), 15, 1, 2, 3},
		"a raw not-a-number":      append([]byte{number("field.beds"), 15}, 0x7f, 0xf8, 0, 0, 0, 0, 0, 1),
		"months cut short":        {number("climate.tmin_c"), 0, 2},
		"a text longer than told": {number("place.station"), 9, 'U', 'S'},
		"an empty text":           {number("place.station"), 0},
		"a text of controls":      {number("place.station"), 2, 'U', 7},
		"half a bed":              {number("field.beds"), 1, 10},
		"a choice at the end":     append(slices.Clone(good), 249, 1, 2),
	} {
		_, err := casefile.ReadLink(casefile.Framed(fields), places(t))
		require.Error(t, err, name)
		assert.Equal(t, unknown, err.Error(), name)
	}
	_, err := casefile.ReadLink(casefile.Framed([]byte{number("crop")}[:0]), places(t))
	require.ErrorIs(t, err, casefile.ErrLink)
	assert.Contains(t, err.Error(), "The link holds a field that is out of range.", "an empty case lacks crop, day and place")
	assert.Contains(t, err.Error(), "crop: missing")
	again, err := casefile.ReadLink(casefile.Framed(good), places(t))
	require.NoError(t, err)
	assert.Equal(t, c, again)
}

// FuzzReadLink: no text makes the reader panic, neither as it comes nor with
// the right length and checksum put round it; what the reader accepts is
// written and read the same.
func FuzzReadLink(f *testing.F) {
	for _, c := range packCases(f) {
		link := casefile.Link(&c)
		f.Add(link)
		f.Add(string(casefile.Unframed(link)))
	}
	for _, text := range []string{"", "1", "2abc", "1zzzz", "%%%", strings.Repeat("0", 400)} {
		f.Add(text)
	}
	table := places(f)
	f.Fuzz(func(t *testing.T, text string) {
		for _, link := range []string{text, casefile.Framed([]byte(text))} {
			c, err := casefile.ReadLink(link, table)
			if err != nil {
				continue
			}
			again, err := casefile.ReadLink(casefile.Link(&c), table)
			if err != nil || c != again {
				t.Fatalf("reads back as another case: %v", err)
			}
		}
	})
}

// RFC 4648 §6 in our letters: the standard library writes the same, and reads what we take.
func TestLettersAreBase32(t *testing.T) {
	standard := base32.NewEncoding(linkLetters).WithPadding(base32.NoPadding)
	rapid.Check(t, func(t *rapid.T) {
		b := rapid.SliceOf(rapid.Byte()).Draw(t, "bytes")
		text := casefile.Spelled(b)
		assert.Equal(t, standard.EncodeToString(b), text)
		back, ok := casefile.Unspelled(text)
		assert.True(t, ok)
		assert.Equal(t, b, back)
	})
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[0-9a-zA-Z=\n]{0,24}`).Draw(t, "text")
		want, err := standard.DecodeString(text)
		got, ok := casefile.Unspelled(text)
		assert.Equal(t, err == nil && standard.EncodeToString(want) == text, ok, text)
		if ok {
			assert.Equal(t, want, got)
		}
	})
}
