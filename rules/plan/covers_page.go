//go:build page

package plan

func (a *Advice) sayCover(*CoverChoice, bool) {}
