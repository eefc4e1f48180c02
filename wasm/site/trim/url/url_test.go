package url

import (
	standard "net/url"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The reference is Go's net/url: the same parts and the same text, for every
// address that a page of ours can have.
func TestAgreesWithNetURL(t *testing.T) {
	check := func(t require.TestingT, address string) {
		want, err := standard.Parse(address)
		require.NoError(t, err, address)
		got, err := Parse(address)
		require.NoError(t, err)
		require.Equal(t, []string{want.Scheme, want.Opaque, want.Host, want.Path, want.RawQuery, want.Fragment},
			[]string{got.Scheme, got.Opaque, got.Host, got.Path, got.RawQuery, got.Fragment}, address)
		require.Equal(t, want.String(), got.String(), address)
		want.Fragment, want.RawFragment, want.RawQuery, got.Fragment, got.RawQuery = "", "", "", "", ""
		require.Equal(t, want.String(), got.String(), address)
	}
	for _, address := range []string{"https://farm.example/", "http://127.0.0.1:8080/sub/path/?a=b&c#f=abc-def", "/card", "#answers", "?q", "mailto:a@b.example", "https://farm.example",
		"https://farm.example/a%20b?x=%20#c%3Dd", "about:blank"} {
		check(t, address)
	}
	part := rapid.StringMatching(`[a-zA-Z0-9._~-]{0,8}(%[0-9A-F][0-9A-F])?`)
	rapid.Check(t, func(t *rapid.T) {
		address := "https://farm.example/" + part.Draw(t, "path") + "/" + part.Draw(t, "leaf")
		if q := part.Draw(t, "query"); q != "" {
			address += "?" + q
		}
		if f := part.Draw(t, "fragment"); f != "" {
			address += "#" + f
		}
		check(t, address)
	})
}

func TestABrokenEscapeStays(t *testing.T) {
	u, err := Parse("https://farm.example/%zz?%#100%")
	require.NoError(t, err)
	assert.Equal(t, "/%zz", u.Path)
	assert.Equal(t, "100%", u.Fragment)
	assert.Equal(t, "https://farm.example/%zz?%#100%", u.String())
}
