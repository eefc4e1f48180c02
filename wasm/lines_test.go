//go:build !js

package main

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
)

func caseLine(crop, station string, day int) string {
	return fmt.Sprintf(`{"crop":%q,"plant_on":"2027-05-%02d","place":{"station":%q}}`, crop, day, station)
}

func county(n int) []string {
	lines := make([]string, n)
	for i := range lines {
		switch {
		case i%17 == 5:
			lines[i] = `{"crop":"tomatoe"}`
		case i%29 == 7:
			lines[i] = "not a case"
		default:
			lines[i] = caseLine(table.Crops[i%len(table.Crops)].ID, []string{"USC00072730", "USC00304174"}[i%2], 1+i%28)
		}
	}
	return lines
}

func through(t testing.TB, lines []string, encode encoding) string {
	t.Helper()
	places, err := normals.Embedded()
	require.NoError(t, err)
	var out bytes.Buffer
	require.NoError(t, adviseLines(strings.NewReader(strings.Join(lines, "\n")), &out, places, encode))
	return out.String()
}

// A line in, a line out, in order; and a table that is cut into shards gives the
// same bytes as the whole.
func TestShardsAndTheWholeGiveTheSameBytes(t *testing.T) {
	lines := county(300)
	whole := through(t, lines, casefile.EncodeAdviceLine)
	assert.Equal(t, len(lines), strings.Count(whole, "\n"))
	out := strings.Split(whole, "\n")
	assert.Contains(t, out[5], `"error":"crop: \"tomatoe\" is not allowed`)
	assert.Contains(t, out[7], `"error"`)
	assert.Contains(t, out[0], `"crop":"tomato"`)
	var shards strings.Builder
	for from := 0; from < len(lines); from += 37 {
		shards.WriteString(through(t, lines[from:min(from+37, len(lines))], casefile.EncodeAdviceLine))
	}
	assert.Equal(t, whole, shards.String())
}

func TestALineThatIsTooLongIsOneError(t *testing.T) {
	out := through(t, []string{strings.Repeat("x", 1<<20), caseLine("tomato", "USC00072730", 20)}, casefile.EncodeAdviceLine)
	assert.Equal(t, 2, strings.Count(out, "\n"))
	assert.Contains(t, out, "at most 65536 bytes")
}

// A field at each of many stations, so that no soil's year serves a second line.
func BenchmarkStationLines(b *testing.B) {
	places, err := normals.Embedded()
	require.NoError(b, err)
	stations := places.All()
	lines := make([]string, 200)
	for i := range lines {
		lines[i] = caseLine(table.Crops[i%len(table.Crops)].ID, stations[i*len(stations)/len(lines)].ID, 1+i%28)
	}
	for b.Loop() {
		through(b, lines, casefile.EncodeBrief)
	}
	b.ReportMetric(float64(len(lines))*float64(b.N)/b.Elapsed().Seconds(), "lines/s")
}

// The rate of a county's table on this machine: lines a second.
func BenchmarkLines(b *testing.B) {
	lines := county(512)
	for b.Loop() {
		through(b, lines, casefile.EncodeAdviceLine)
	}
	b.ReportMetric(float64(len(lines))*float64(b.N)/b.Elapsed().Seconds(), "lines/s")
}

func BenchmarkBriefLines(b *testing.B) {
	lines := county(512)
	for b.Loop() {
		through(b, lines, casefile.EncodeBrief)
	}
	b.ReportMetric(float64(len(lines))*float64(b.N)/b.Elapsed().Seconds(), "lines/s")
}
