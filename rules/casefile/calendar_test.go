package casefile_test

import (
	"bytes"
	"maps"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/unit"
)

// RFC 5545, read back by a general-purpose parser.
func TestTheCalendarIsReadByAnother(t *testing.T) {
	all := packCases(t)
	maps.DeleteFunc(all, func(id string, _ field.Case) bool { return !long.Sample(id) })
	// Beside the pack: a leap year, and a season south of the equator that crosses
	// the year's end.
	for _, id := range []string{"alder-bend", "quarry-lane", "terrace-south"} {
		data, err := os.ReadFile("../../testdata/sheets/" + id + ".json")
		require.NoError(t, err)
		all[id], err = casefile.Decode(data, places(t))
		require.NoError(t, err)
	}
	for id, c := range all {
		a, err := rules.Advise(c)
		require.NoError(t, err)
		plan := a.WaterPlan()
		list := a.Shopping(&plan)
		steps := a.Season(&list)
		text := casefile.Calendar(steps, "Film & Furrow; "+id, unit.On(2026, 11, 25), unit.US, func(text string) string { return text })
		for _, line := range strings.Split(strings.TrimSuffix(string(text), "\r\n"), "\r\n") {
			assert.LessOrEqual(t, len(line), 75, "RFC 5545 section 3.1")
			assert.NotContains(t, line, "\n")
		}
		cal, err := ics.ParseCalendar(bytes.NewReader(text))
		require.NoError(t, err, id)
		require.Len(t, cal.Events(), len(steps))
		uids := map[string]bool{}
		for i, e := range cal.Events() {
			uids[e.Id()] = true
			start, err := e.GetAllDayStartAt()
			require.NoError(t, err)
			y, m, d := steps[i].On.Civil()
			assert.Equal(t, time.Date(y, time.Month(m), d, 0, 0, 0, 0, start.Location()), start)
			end, err := e.GetAllDayEndAt()
			require.NoError(t, err)
			assert.Equal(t, int(max(1, steps[i].Days)), int(end.Sub(start).Hours()/24+0.5))
			if rule := e.GetProperty(ics.ComponentPropertyRrule); steps[i].Weeks > 1 {
				require.NotNil(t, rule)
				assert.Equal(t, "FREQ=WEEKLY;COUNT="+strconv.Itoa(steps[i].Weeks), rule.Value, "RFC 5545 section 3.3.10")
			} else {
				assert.Nil(t, rule)
			}
			assert.Equal(t, steps[i].What.In(unit.US), unescape(e.GetProperty(ics.ComponentPropertySummary).Value))
		}
		assert.Len(t, uids, len(steps))
	}
}

func unescape(s string) string {
	return strings.NewReplacer(`\,`, ",", `\;`, ";", `\n`, "\n", `\\`, `\`).Replace(s)
}
