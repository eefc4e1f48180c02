//go:build !js

package browsertest

import (
	"fmt"

	"github.com/chromedp/cdproto/input"
)

// Drag presses the mouse on the first match, at a share of its width (0–1),
// moves it through the other shares and lets go, with real mouse events.
func (p *Page) Drag(selector string, shares ...float64) {
	p.t.Helper()
	type box struct{ X, Y, Width float64 }
	b := Eval[box](p, fmt.Sprintf(`(() => {
		const el = document.querySelector(%s);
		el.scrollIntoView({ block: "center", behavior: "instant" });
		const r = el.getBoundingClientRect();
		return { X: r.x, Y: r.y + r.height / 2, Width: r.width };
	})()`, quote(selector)))
	event := func(kind input.DispatchMouseEventType, share float64, buttons int64) {
		p.mouse(kind, b.X+share*b.Width, b.Y, buttons)
	}
	event(input.DispatchMouseEventTypeMouseMoved, shares[0], 0)
	event(input.DispatchMouseEventTypeMousePressed, shares[0], 1)
	for _, share := range shares[1:] {
		event(input.DispatchMouseEventTypeMouseMoved, share, 1)
	}
	event(input.DispatchMouseEventTypeMouseReleased, shares[len(shares)-1], 0)
}

// mouse sends one event of the left button at a place in the window, in CSS pixels.
func (p *Page) mouse(kind input.DispatchMouseEventType, x, y float64, buttons int64) {
	p.t.Helper()
	call(p, input.DispatchMouseEvent, input.DispatchMouseEventParams{
		Type: kind, X: x, Y: y, Button: input.MouseButtonLeft, Buttons: buttons, ClickCount: 1,
	})
}
