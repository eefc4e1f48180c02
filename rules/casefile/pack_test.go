package casefile_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

var ourFarms = []string{"heron-flat", "slow-acre"}

// A whole pack: a farm of ours, another question put to one, and a field of the maker's.
func goodPack(t testing.TB) string {
	c := packCases(t)["pepper-cool-spring"]
	return `{"pack":1,"title":"Two and one","stops":[{"farm":"heron-flat","notes":"Who has burned a stem?"},` +
		`{"farm":"slow-acre","ask":"film","answer":"black"},` +
		`{"field":"` + casefile.Link(&c) + `","title":"By the creek","ask":"verdict","answer":"lay","turn":"plant_on","to":"2027-03-20","then":"do_not_lay","lesson":"Frost decides."}]}`
}

func TestAPackIsRead(t *testing.T) {
	title, stops, err := casefile.DecodePack([]byte(goodPack(t)), ourFarms, places(t))
	require.NoError(t, err)
	assert.Equal(t, "Two and one", title)
	require.Len(t, stops, 3)
	assert.Equal(t, casefile.Stop{Farm: "heron-flat", Notes: "Who has burned a stem?"}, stops[0])
	assert.Equal(t, "black", stops[1].Answer)
	assert.True(t, stops[1].Asked)
	assert.Equal(t, packCases(t)["pepper-cool-spring"], stops[2].Field)
	assert.Equal(t, field.InputByName("plant_on"), stops[2].Turn)
	assert.Equal(t, "do_not_lay", stops[2].Then)
}

// A day is promised as the round day nearest to it, in any year.
func TestADayIsPromised(t *testing.T) {
	text := strings.Replace(goodPack(t), `"ask":"film","answer":"black"`, `"ask":"day","answer":"03-20"`, 1)
	_, stops, err := casefile.DecodePack([]byte(text), ourFarms, places(t))
	require.NoError(t, err)
	assert.Equal(t, question.Day, stops[1].Ask)
	assert.Equal(t, "03-20", stops[1].Answer)
}

// What is wrong is named with its place, value, range and mend, and nothing is read.
func TestABrokenPackIsRefusedWhole(t *testing.T) {
	good := goodPack(t)
	for name, c := range map[string]struct{ from, to, want string }{
		"no title":            {`"title":"Two and one",`, ``, `title: null is not allowed. Allowed: 1 to 60 letters on one line. Write something shorter, or leave it out.`},
		"another version":     {`"pack":1`, `"pack":2`, `pack: 2 is not allowed. Allowed: 1. Choose a file that “Save the pack” wrote, or update the page.`},
		"a farm of no pack":   {`"heron-flat"`, `"heron"`, `stops[1].farm: "heron" is not allowed. Allowed: heron-flat, slow-acre. Write one of these.`},
		"farm and field":      {`"title":"By`, `"farm":"slow-acre","title":"By`, `stops[3]: farm and field is not allowed. Allowed: one of the two. Name a farm of ours, or give a field.`},
		"a field cut short":   {`","title":"By`, `0","title":"By`, `The link was cut or mistyped.`},
		"an unknown question": {`"ask":"film"`, `"ask":"colour"`, `stops[2].ask: "colour" is not allowed. Allowed: verdict, film, bed, surface, thickness, tape, wait, day. Write one of these.`},
		"a day of no line":    {`"ask":"film","answer":"black"`, `"ask":"day","answer":"05-13"`, `stops[2].answer: "05-13" is not allowed. Allowed: 01-01, 01-10, 01-20, 02-01, `},
		"a day with a year":   {`"ask":"film","answer":"black"`, `"ask":"day","answer":"2027-05-10"`, `stops[2].answer: "2027-05-10" is not allowed.`},
		"another's answer":    {`"black"`, `"lay"`, `stops[2].answer: "lay" is not allowed. Allowed: black, `},
		"an answer to what":   {`"ask":"film",`, ``, `stops[2].ask: missing. Allowed: a question. Say which question the answers are to.`},
		"no such input":       {`"plant_on"`, `"plants_on"`, `stops[3].turn: "plants_on" is not allowed. Allowed: the name of an input.`},
		"no such day":         {`"2027-03-20"`, `"2027-02-30"`, `stops[3].to: "2027-02-30" is not allowed.`},
		"turned to nothing":   {`"to":"2027-03-20",`, ``, `stops[3].turn: missing. Allowed: turn, to and then. Give all three, or none.`},
		"a name unknown":      {`"notes"`, `"note"`, `stops[1].note: unknown field. Allowed: farm and field and`},
		"a name twice":        {`"notes"`, `"farm":"slow-acre","notes"`, `stops.farm: given twice. Allowed: once. Remove one of the two.`},
		"notes too long":      {`Who has burned a stem?`, strings.Repeat("a", casefile.MaxWords+1), `stops[1].notes: "aaa`},
		"notes of two lines":  {`burned a`, `burned\na`, `letters on one line`},
		"no stops":            {good[strings.Index(good, `[{"farm"`):], `[]}`, `stops: a list of 0 is not allowed. Allowed: 1 to 40 fields. Choose at least one field.`},
		"cut short":           {`Frost decides."}]}`, `Frost`, `file: broken JSON near byte`},
		"more behind":         {`decides."}]}`, `decides."}]}{}`, `more text behind`},
		"too large":           {`Frost decides.`, strings.Repeat(" ", casefile.MaxPackBytes), `at most 65536 bytes`},
	} {
		text := strings.Replace(good, c.from, c.to, 1)
		require.NotEqual(t, good, text, name)
		title, stops, err := casefile.DecodePack([]byte(text), ourFarms, places(t))
		require.Error(t, err, name)
		assert.Contains(t, err.Error(), c.want, name)
		assert.Empty(t, title, name)
		assert.Empty(t, stops, name)
	}
}

// What is sealed comes back whole; cut or altered, it does not come back at all.
func TestWhatIsSealedComesBack(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		body := rapid.SliceOf(rapid.Byte()).Draw(rt, "body")
		text := casefile.Sealed(body)
		back, err := casefile.Unsealed(text)
		require.NoError(rt, err)
		assert.Equal(rt, string(body), string(back))
		at := rapid.IntRange(0, len(text)-1).Draw(rt, "at")
		_, err = casefile.Unsealed(text[:at])
		assert.ErrorIs(rt, err, casefile.ErrLink)
		letter := rapid.SampledFrom([]byte(linkLetters)).Draw(rt, "letter")
		if letter != text[at] {
			_, err = casefile.Unsealed(text[:at] + string(letter) + text[at+1:])
			assert.ErrorIs(rt, err, casefile.ErrLink)
		}
	})
}

// FuzzDecodePack: no text makes the reader panic, and what it accepts promises answers that
// there are.
func FuzzDecodePack(f *testing.F) {
	f.Add([]byte(goodPack(f)))
	f.Add([]byte(`{"pack":1,"title":"x","stops":[{"farm":"slow-acre"}]}`))
	f.Add([]byte(`{"pack":1,"title":"x","stops":[{"farm":"slow-acre","ask":"day","answer":"05-10","turn":"weeds.pressure","to":"heavy","then":"none"}]}`))
	table := places(f)
	f.Fuzz(func(t *testing.T, data []byte) {
		title, stops, err := casefile.DecodePack(data, ourFarms, table)
		if err != nil {
			if title != "" || stops != nil {
				t.Fatal("half a pack")
			}
			return
		}
		if !casefile.GoodName(title) || len(stops) == 0 || len(stops) > casefile.MaxStops {
			t.Fatal("a pack out of range")
		}
		for _, s := range stops {
			if s.Farm == "" && len(field.Check(&s.Field)) > 0 {
				t.Fatal("a field that cannot be answered")
			}
			for _, promised := range []string{s.Answer, s.Then} {
				if s.Ask == question.Day && promised != "" && promised != "none" {
					if _, err := unit.ParseDate("2027-" + promised); err != nil {
						t.Fatal("a day that the calendar lacks")
					}
				}
			}
			if s.Turn != nil && s.Turn.CheckValue(s.To) != nil {
				t.Fatal("turned out of range")
			}
		}
	})
}
