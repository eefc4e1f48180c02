//go:build !js

package site

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"sync"
)

// The icon is a bed cut across: sky, soil, the raised bed under its film, the
// tape's wet ground beneath, a leaf above. It is drawn here from the same few
// shapes for every size, so there is no picture file to keep.

// shape is a filled polygon or, with a radius, a disc; coordinates run from 0
// to 100 across the icon.
type shape struct {
	fill   color.NRGBA
	points [][2]float64
	radius float64
}

var (
	sky  = color.NRGBA{0xfb, 0xf8, 0xf1, 0xff}
	soil = color.NRGBA{0x6b, 0x4a, 0x32, 0xff}
	film = color.NRGBA{0x22, 0x1d, 0x1a, 0xff}
	wet  = color.NRGBA{0x2f, 0x6f, 0xa3, 0xff}
	leaf = color.NRGBA{0x3c, 0x7d, 0x3a, 0xff}
)

var bedShapes = []shape{
	{fill: soil, points: [][2]float64{{0, 72}, {14, 72}, {26, 50}, {50, 47}, {74, 50}, {86, 72}, {100, 72}, {100, 100}, {0, 100}}},
	{fill: wet, points: [][2]float64{{50, 68}}, radius: 12},
	{fill: film, points: [][2]float64{{8, 76}, {13, 71}, {24.5, 48.5}, {50, 45}, {75.5, 48.5}, {87, 71}, {92, 76}, {88, 79}, {82, 73}, {72.5, 54}, {50, 51}, {27.5, 54}, {18, 73}, {12, 79}}},
	{fill: leaf, points: [][2]float64{{48.5, 47}, {48.5, 30}, {51.5, 30}, {51.5, 47}}},
	{fill: leaf, points: [][2]float64{{50, 36}, {36, 31}, {30, 19}, {44, 22}}},
	{fill: leaf, points: [][2]float64{{50, 32}, {56, 18}, {70, 14}, {64, 28}}},
}

// icons are the icon files, drawn when first asked for.
var icons = sync.OnceValue(func() map[string][]byte {
	return map[string][]byte{
		"icon.svg":         drawSVG(),
		"icon-192.png":     drawPNG(192, 1),
		"icon-512.png":     drawPNG(512, 1),
		"maskable-512.png": drawPNG(512, 0.8), // a launcher may cut away the outer tenth on each side
	}
})

func drawSVG() []byte {
	var b bytes.Buffer
	hex := func(c color.NRGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="%s"/>`, hex(sky))
	for _, s := range bedShapes {
		if s.radius > 0 {
			fmt.Fprintf(&b, `<circle cx="%g" cy="%g" r="%g" fill="%s"/>`, s.points[0][0], s.points[0][1], s.radius, hex(s.fill))
			continue
		}
		b.WriteString(`<path d="`)
		for i, p := range s.points {
			fmt.Fprintf(&b, "%c%g %g", "ML"[min(i, 1)], p[0], p[1])
		}
		fmt.Fprintf(&b, `z" fill="%s"/>`, hex(s.fill))
	}
	b.WriteString("</svg>\n")
	return b.Bytes()
}

// drawPNG paints the shapes with four by four samples to a pixel. scale below
// one leaves a margin, filled with the ground the shapes stand on.
func drawPNG(size int, scale float64) []byte {
	const samples = 4
	img := image.NewNRGBA(image.Rect(0, 0, size, size))
	step := 100 / float64(size*samples)
	for y := range size {
		for x := range size {
			var r, g, b int
			for sy := range samples {
				for sx := range samples {
					px := (float64(x*samples+sx) + 0.5) * step
					py := (float64(y*samples+sy) + 0.5) * step
					c := colourAt(50+(px-50)/scale, 50+(py-50)/scale)
					r, g, b = r+int(c.R), g+int(c.G), b+int(c.B)
				}
			}
			n := samples * samples
			img.SetNRGBA(x, y, color.NRGBA{uint8(r / n), uint8(g / n), uint8(b / n), 0xff})
		}
	}
	var out bytes.Buffer
	if err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&out, img); err != nil {
		panic(err) // an in-memory image of fixed size cannot fail to encode
	}
	return out.Bytes()
}

func colourAt(x, y float64) color.NRGBA {
	c := sky
	if x < 0 || x > 100 || y > 100 { // outside the drawing the ground goes on
		if y >= 72 {
			c = soil
		}
	}
	for _, s := range bedShapes {
		if s.contains(x, y) {
			c = s.fill
		}
	}
	return c
}

func (s shape) contains(x, y float64) bool {
	if s.radius > 0 {
		dx, dy := x-s.points[0][0], y-s.points[0][1]
		return dx*dx+dy*dy <= s.radius*s.radius
	}
	inside := false
	for i, p := range s.points {
		q := s.points[(i+1)%len(s.points)]
		if (p[1] > y) != (q[1] > y) && x < (q[0]-p[0])*(y-p[1])/(q[1]-p[1])+p[0] {
			inside = !inside
		}
	}
	return inside
}
