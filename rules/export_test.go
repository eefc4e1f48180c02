package rules

// Side is one direction of a plain search, for the brute-force test.
type Side struct {
	Values     []Value
	Above, All bool
}

// BruteSides lists the values that a plain search of an input must try. A walk
// from an end of an open field's range reports nothing where its very first
// value differs, since the other walk finds where that begins.
func BruteSides(c Case, in *Input) (sides []Side) {
	filled, _ := fill(c)
	for _, w := range walksOf(&c, &filled, in) {
		s := Side{w.values, w.above, w.all}
		if w.unknown && !w.all && len(w.values) > 0 {
			turner, _ := NewTurner(mustDig(c), c, false)
			first := c
			in.Set(&first, w.values[0])
			if a, ok := turner.ask(first); ok && a != turner.old {
				continue
			}
		}
		sides = append(sides, s)
	}
	return sides
}

// ShapeOf is the cross-section of a bed of one height.
var ShapeOf = shapeOf

// LeastPower is the least power for each height of bed.
var LeastPower = leastPower

var digs = map[GroundKey]*Ground{}

func mustDig(c Case) *Ground {
	key := KeyOf(c)
	if digs[key] == nil {
		digs[key], _ = Dig(c)
	}
	return digs[key]
}

// OptionsOf counts the options of a question.
var OptionsOf = Question.options
