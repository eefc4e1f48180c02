package casefile_test

import (
	"bytes"
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
)

func packFields(t testing.TB) []casefile.Field {
	t.Helper()
	all := packCases(t)
	var fields []casefile.Field
	for _, id := range slices.Sorted(maps.Keys(all)) {
		fields = append(fields, casefile.Field{Name: id, Case: all[id]})
	}
	return fields
}

func TestManyFieldsComeBackTheSame(t *testing.T) {
	fields := packFields(t)
	text := casefile.EncodeFields(fields)
	again, err := casefile.DecodeFields(text, places(t))
	require.NoError(t, err)
	assert.Equal(t, fields, again)
	assert.Equal(t, string(text), string(casefile.EncodeFields(again)))
}

// BrokenFieldFiles are files that must be refused whole.
func brokenFieldFiles(t testing.TB) map[string]string {
	good := string(casefile.EncodeFields(packFields(t)[:3]))
	first := `{"name":"a","case":{"crop":"tomato","plant_on":"2027-05-20","place":{"lat":42,"lon":-76}}}`
	return map[string]string{
		"empty":                 "",
		"a word":                "fields",
		"a list":                "[]",
		"null":                  "null",
		"cut":                   good[:len(good)/2],
		"two files":             good + good,
		"no version":            `{"fields":[` + first + `]}`,
		"version 9":             `{"version":9,"fields":[` + first + `]}`,
		"version 0":             `{"version":0,"fields":[` + first + `]}`,
		"version in words":      `{"version":"one","fields":[` + first + `]}`,
		"no fields":             `{"version":1,"fields":[]}`,
		"fields a word":         `{"version":1,"fields":"all"}`,
		"an unknown key":        `{"version":1,"fields":[` + first + `],"owner":"x"}`,
		"an unknown key inside": `{"version":1,"fields":[{"name":"a","kind":"b","case":{}}]}`,
		"no name":               `{"version":1,"fields":[` + strings.Replace(first, `"name":"a",`, "", 1) + `]}`,
		"an empty name":         `{"version":1,"fields":[` + strings.Replace(first, `"a"`, `"  "`, 1) + `]}`,
		"a long name":           `{"version":1,"fields":[` + strings.Replace(first, `"a"`, strconv.Quote(strings.Repeat("n", 61)), 1) + `]}`,
		"a control character":   `{"version":1,"fields":[` + strings.Replace(first, `"a"`, `"a\u0007"`, 1) + `]}`,
		"the same name twice":   `{"version":1,"fields":[` + first + `,` + first + `]}`,
		"no case":               `{"version":1,"fields":[{"name":"a"}]}`,
		"a wrong case":          `{"version":1,"fields":[` + first + `,` + strings.Replace(strings.Replace(first, `"a"`, `"b"`, 1), "tomato", "tomatoe", 1) + `]}`,
		"a case that is a word": `{"version":1,"fields":[{"name":"a","case":"tomato"}]}`,
		"201 fields":            `{"version":1,"fields":[` + strings.TrimSuffix(strings.Repeat(first+",", 201), ",") + `]}`,
		"two megabytes":         `{"version":1,"fields":[` + strings.Repeat(" ", 2<<20) + `]}`,
		"binary":                string([]byte{0, 1, 2, 0xff, 0xfe}),
	}
}

func TestBrokenFilesOfFieldsAreRefusedWhole(t *testing.T) {
	files := brokenFieldFiles(t)
	require.GreaterOrEqual(t, len(files), 20)
	for name, text := range files {
		fields, err := casefile.DecodeFields([]byte(text), places(t))
		assert.Error(t, err, name)
		assert.Empty(t, fields, name)
	}
	_, err := casefile.DecodeFields([]byte(files["a wrong case"]), places(t))
	assert.Equal(t, `fields[2].crop: "tomatoe" is not allowed. Allowed: one of 50 ids, see explain. Did you mean tomato?`, err.Error())
}

func FuzzDecodeFields(f *testing.F) {
	f.Add(casefile.EncodeFields(packFields(f)[:2]))
	for _, text := range brokenFieldFiles(f) {
		f.Add([]byte(text))
	}
	table := places(f)
	f.Fuzz(func(t *testing.T, data []byte) {
		fields, err := casefile.DecodeFields(data, table)
		if err != nil {
			return
		}
		again, err := casefile.DecodeFields(casefile.EncodeFields(fields), table)
		if err != nil || len(again) != len(fields) {
			t.Fatalf("reads back as something else: %v", err)
		}
		if !bytes.Equal(casefile.EncodeFields(fields), casefile.EncodeFields(again)) {
			t.Fatal("writes differently")
		}
	})
}
