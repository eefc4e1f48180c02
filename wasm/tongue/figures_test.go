//go:build !js

package tongue_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/wasm/tongue"
)

// Figures by the Unicode Common Locale Data Repository: Mexico and the United States write
// 1,234.5, Argentina 1.234,5, Spain 1234,5 and 12.345.
func TestFiguresAsACountryWritesThem(t *testing.T) {
	for _, c := range []struct{ tag, text, want string }{
		{"es", "1.25 mil, 1,200 m", "1.25 mil, 1,200 m"},
		{"es-MX", "1.25 mil, 1,200 m", "1.25 mil, 1,200 m"},
		{"es-US", "1.25 mil, 1,200 m", "1.25 mil, 1,200 m"},
		{"es-AR", "1.25 mil, 1,200 m", "1,25 mil, 1.200 m"},
		{"es-ES", "12,345.5 m", "12.345,5 m"},
		{"es-ES", "1,200 m", "1200 m"},
		{"es-AR", "0.5–1.5 °C, −2.5", "0,5–1,5 °C, −2,5"},
		{"es-AR", "2027-04-03, 2027, 6:30, v9.8.0, 1.2.3, 10.1016/x, a1.5", "2027-04-03, 2027, 6:30, v9.8.0, 1.2.3, 10.1016/x, a1.5"},
		{"es-AR", "52.1/3.5 and 7.5. Then 8.", "52.1/3.5 and 7,5. Then 8."},
	} {
		_, figures, err := tongue.Split(c.tag)
		require.NoError(t, err)
		assert.Equal(t, c.want, figures(c.text), c.tag)
	}
	_, _, err := tongue.Split("es-XYZ")
	assert.ErrorContains(t, err, "country of two letters")
}
