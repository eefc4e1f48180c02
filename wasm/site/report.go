//go:build !js

package site

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

// Report says what was built and how big it is, in bytes.
type Report struct {
	Dir     string
	Version string
	Rows    []ReportRow
}

// ReportRow is the size of one file; Gzip and Brotli are 0 where no compressed
// copy was written.
type ReportRow struct {
	Name              string
	Raw, Gzip, Brotli int
}

func newReport(dir string, built *Site, all map[string][]byte) Report {
	report := Report{Dir: dir, Version: built.Version}
	for _, name := range slices.Sorted(maps.Keys(built.Files)) {
		report.Rows = append(report.Rows, ReportRow{name, len(built.Files[name]), len(all[name+".gz"]), len(all[name+".br"])})
	}
	return report
}

// String prints the sizes as a table, with the sum of the site last. A file
// without a compressed copy counts as it is.
func (r Report) String() string {
	var b strings.Builder
	var sum ReportRow
	fmt.Fprintf(&b, "%-36s %10s %10s %10s\n", "file, bytes", "raw", "gzip -9", "brotli -11")
	for _, row := range r.Rows {
		fmt.Fprintf(&b, "%-36s %10d %10s %10s\n", row.Name, row.Raw, orDash(row.Gzip), orDash(row.Brotli))
		sum.Raw += row.Raw
		sum.Gzip += orRaw(row.Gzip, row.Raw)
		sum.Brotli += orRaw(row.Brotli, row.Raw)
	}
	fmt.Fprintf(&b, "%-36s %10d %10d %10d\n", "whole site", sum.Raw, sum.Gzip, sum.Brotli)
	return b.String()
}

func orDash(n int) string {
	if n == 0 {
		return "-"
	}
	return fmt.Sprint(n)
}

func orRaw(n, raw int) int {
	if n == 0 {
		return raw
	}
	return n
}
