package unit

// Optional is a value that may be unknown. It is comparable.
type Optional[T comparable] struct {
	Value T
	Given bool
}

// Known makes a given value.
func Known[T comparable](v T) Optional[T] { return Optional[T]{Value: v, Given: true} }

// Or gives the value, or the default where it is unknown.
func (o Optional[T]) Or(def T) T {
	if o.Given {
		return o.Value
	}
	return def
}
