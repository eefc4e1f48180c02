package app

import "github.com/maxence-charriere/go-app/v9/pkg/app"

// only builds an element where a condition holds. The framework's own If
// builds it either way.
func only(holds bool, build func() app.UI) app.UI {
	if !holds {
		return nil
	}
	return build()
}
