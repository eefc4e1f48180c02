//go:build !js

package pack_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/rules/pack"
)

// The two farms for cards teach what they say as well: TestEachFarmTeachesWhatItSays goes
// through them with the others.
func init() { all = append(all, pack.MoreCards[:]...) }

func TestAnEditorHasTenCards(t *testing.T) { assert.Len(t, all, 10) }
