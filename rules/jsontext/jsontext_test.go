package jsontext

import (
	"bytes"
	"encoding/json"
	"io"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The reference for every check here is Go's encoding/json: what it takes is
// taken with the same values, what it refuses is refused.

func reference(t require.TestingT, d *json.Decoder) any {
	token, err := d.Token()
	require.NoError(t, err)
	switch v := token.(type) {
	case json.Delim:
		o, list := &Object{}, []any(nil)
		for d.More() {
			if v == '{' {
				name, err := d.Token()
				require.NoError(t, err)
				o.Names = append(o.Names, name.(string))
				o.Values = append(o.Values, reference(t, d))
			} else {
				list = append(list, reference(t, d))
			}
		}
		_, err := d.Token()
		require.NoError(t, err)
		if v == '{' {
			return o
		}
		return list
	case json.Number:
		return Number(v)
	}
	return token
}

func same(t require.TestingT, text []byte) {
	got, err := Parse(text, 1000)
	if err == ErrDepth {
		return
	}
	require.Equal(t, json.Valid(text), err == nil, "%q: %v", text, err)
	if err != nil {
		return
	}
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	want := reference(t, d)
	_, err = d.Token()
	require.Equal(t, io.EOF, err)
	require.Equal(t, want, got, "%q", text)
}

var samples = []string{
	``, ` `, `{}`, `[]`, ` { "a" : [ 1 , -0.5e+3 , true , false , null , "x" ] , "a" : {} } `, `{"a":1,}`, `[1,]`, `[,1]`, `{"a"}`, `{"a":}`, `{a:1}`,
	`01`, `-`, `1.`, `.5`, `1e`, `1e+`, `+1`, `-0`, `1E9`, `tru`, `nul`, `truex`, `"a`, `"\x"`, `"\u12"`, `"\u12g4"`, `"\u00e9\n\/\b\f\r\t\"\\"`, `"\ud83c\udf31"`, `"\ud83c"`,
	`"\ud83cx"`, `"\udf31\ud83c"`, `"\ud83c\u0041"`, `"\uD83C\uDF31"`, "\"\x01\"", "\"\xff\"", "\"\u2028\"", "1 2", "{} x", "[[[]]]", "\"\\u\x10000\"", `"\uÀ"`,
}

func TestParseAgreesWithTheReference(t *testing.T) {
	for _, text := range samples {
		same(t, []byte(text))
	}
}

func TestParseSaysWhere(t *testing.T) {
	for text, at := range map[string]int{`{"a":1,}`: 7, `[1 2]`: 3, `{"a" 1}`: 5, `tru`: 3, `"a`: 2, ``: 0, `[01]`: 2} {
		_, err := Parse([]byte(text), 5)
		assert.Equal(t, BrokenError(at), err, text)
	}
	_, err := Parse([]byte(`[[[]]]`), 2)
	assert.Equal(t, ErrDepth, err)
	_, err = Parse([]byte(`{} {}`), 2)
	assert.Equal(t, ErrMore, err)
}

func TestQuoteAgreesWithTheReference(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := string(rapid.SliceOfN(rapid.Byte(), 0, 30).Draw(t, "bytes"))
		if rapid.Bool().Draw(t, "text") {
			s = rapid.String().Draw(t, "text")
		}
		want, err := json.Marshal(s)
		require.NoError(t, err)
		require.Equal(t, string(want), Quote(s))
		back, err := Parse([]byte(Quote(s)), 0)
		require.NoError(t, err)
		var again string
		require.NoError(t, json.Unmarshal(want, &again))
		require.Equal(t, again, back)
	})
}

func TestGetTakesTheLast(t *testing.T) {
	v, err := Parse([]byte(`{"a":1,"b":2,"a":3}`), 1)
	require.NoError(t, err)
	assert.Equal(t, Number("3"), v.(*Object).Get("a"))
	assert.Nil(t, v.(*Object).Get("c"))
}

func FuzzParse(f *testing.F) {
	for _, text := range samples {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, text []byte) { same(t, text) })
}
