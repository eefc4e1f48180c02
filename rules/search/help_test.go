package search_test

import (
	"testing"

	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/plan"
)

// pack reads the invented farms of testdata/cases by name.
func pack(t testing.TB) map[string]field.Case { return farms.All(t) }

// advise is the advice of a case, on soil that is worked out once for all tests.
func advise(t testing.TB, c field.Case) plan.Advice { return farms.Advise(t, c) }
