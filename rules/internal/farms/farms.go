// Package farms hands the invented farms of testdata/cases, and the soil years that
// tests have worked out for them, to the tests of every room.
package farms

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table/normals"
)

// root is the folder of the project.
func root() string {
	_, file, _, _ := runtime.Caller(0)
	return filepath.Join(filepath.Dir(file), "..", "..", "..")
}

// All reads every farm, by name.
func All(t testing.TB) map[string]field.Case {
	t.Helper()
	all, err := Read()
	require.NoError(t, err)
	require.NotEmpty(t, all)
	return all
}

// Read is [All] where no test is at hand.
func Read() (map[string]field.Case, error) {
	places, err := normals.Embedded()
	if err != nil {
		return nil, err
	}
	files, _ := filepath.Glob(filepath.Join(root(), "testdata/cases/*.json"))
	all := map[string]field.Case{}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			return nil, err
		}
		if all[strings.TrimSuffix(filepath.Base(file), ".json")], err = casefile.Decode(data, places); err != nil {
			return nil, fmt.Errorf("%s: %w", file, err)
		}
	}
	return all, nil
}

var (
	known = map[facts.SoilKey]*facts.SoilYear{}
	lock  sync.Mutex
)

// Soil is the soil year of a case, worked out once for all tests of a package.
func Soil(t require.TestingT, c field.Case) *facts.SoilYear {
	require.Empty(t, field.Check(&c))
	lock.Lock()
	defer lock.Unlock()
	if soil := known[facts.KeyOf(c)]; soil != nil {
		return soil
	}
	soil, err := facts.NewSoilYear(c)
	require.NoError(t, err)
	known[facts.KeyOf(c)] = soil
	return soil
}

// Advise is [rules.Advise] on a soil year that is worked out once for all tests: that
// is most of the work. That it is the same advice is TestSameCaseSameAdvice.
func Advise(t testing.TB, c field.Case) plan.Advice {
	t.Helper()
	a, err := rules.AdviseOn(Soil(t, c), c)
	require.NoError(t, err)
	return a
}
