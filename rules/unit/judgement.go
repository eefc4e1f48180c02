package unit

// Judgement is a figure that the engine decides with and that no table of the trade
// gives outright: what it means, and whose it is. Each room lists its own, and
// "explain judgements" prints them all.
type Judgement struct {
	ID     string // lower-case words joined by hyphens, the first of them the room's or question's
	Means  string
	Value  float64 // in Unit
	Unit   string  // "" for a share, a count, or a fit, which runs from −1 to +1
	Source string  // publisher or place; "" is our judgment
}

// Whose tells where the figure comes from.
func (j *Judgement) Whose() string {
	if j.Source == "" {
		return "our judgment"
	}
	return j.Source
}

// The sources of figures that no publication gives.
const (
	CommonPractice = "common practice, no source"
	FromMemory     = "from memory"
)
