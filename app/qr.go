package app

import "rsc.io/qr/coding"

// qrSVG draws a text as a QR code (ISO/IEC 18004) at the least level of repair,
// black on white with its quiet zone. It is false where the text is too long.
func qrSVG(text, title string) (string, bool) {
	enc := coding.String(text)
	version := coding.Version(coding.MinVersion)
	for enc.Bits(version) > 8*version.DataBytes(coding.L) {
		if version++; version > coding.MaxVersion {
			return "", false
		}
	}
	plan, err := coding.NewPlan(version, coding.L, 0)
	if err != nil {
		return "", false
	}
	code, err := plan.Encode(enc)
	if err != nil {
		return "", false
	}
	const quiet = 4 // modules on each side
	side := num(float64(code.Size + 2*quiet))
	s := &svg{}
	s.open("svg", "xmlns", "http://www.w3.org/2000/svg", "viewBox", "0 0 "+side+" "+side, "role", "img", "aria-label", title, "class", "qr", "shape-rendering", "crispEdges")
	s.el("rect", "width", side, "height", side, "fill", "#fff")
	path := ""
	for y := range code.Size {
		for x := range code.Size {
			if code.Black(x, y) {
				path += "M" + num(float64(x+quiet)) + " " + num(float64(y+quiet)) + "h1v1h-1z"
			}
		}
	}
	s.el("path", "d", path, "fill", "#000")
	s.close("svg")
	return s.b.String(), true
}
