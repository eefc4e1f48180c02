package app

import (
	"image"
	"image/color"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// picture paints the modules of a drawn code.
func picture(t *testing.T, drawing string) image.Image {
	t.Helper()
	side, err := strconv.ParseFloat(regexp.MustCompile(`viewBox="0 0 ([\d.]+) `).FindStringSubmatch(drawing)[1], 64)
	require.NoError(t, err)
	const scale = 4
	img := image.NewGray(image.Rect(0, 0, int(side)*scale, int(side)*scale))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	for _, m := range regexp.MustCompile(`M([\d.]+) ([\d.]+)h1v1h-1z`).FindAllStringSubmatch(drawing, -1) {
		x, _ := strconv.ParseFloat(m[1], 64)
		y, _ := strconv.ParseFloat(m[2], 64)
		for i := range scale * scale {
			img.Set(int(x)*scale+i%scale, int(y)*scale+i/scale, color.Black)
		}
	}
	return img
}

// Another library's reader reads the code back: the same link, at every length that
// a field can have.
func TestAnotherReaderReadsTheQRCode(t *testing.T) {
	for _, n := range []int{1, 60, 180, 300, 700, 1500} {
		link := "https://farm.example/#f=" + strings.Repeat("1cr02fay2040", 1+n/12)[:n]
		drawing, ok := qrSVG(link, "QR code")
		require.True(t, ok, n)
		bits, err := gozxing.NewBinaryBitmapFromImage(picture(t, drawing))
		require.NoError(t, err)
		read, err := qrcode.NewQRCodeReader().Decode(bits, map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true})
		require.NoError(t, err, n)
		assert.Equal(t, link, read.GetText())
	}
	_, ok := qrSVG(strings.Repeat("x", 3000), "QR code")
	assert.False(t, ok, "longer than any code")
}
