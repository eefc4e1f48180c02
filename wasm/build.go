//go:build !js

package main

import (
	"flag"
	"fmt"
	"io"
	"time"

	"filmfurrow/wasm/site"
)

func build(args []string, _ io.Reader, out, errs io.Writer) int {
	flags := flag.NewFlagSet("build", flag.ContinueOnError)
	flags.SetOutput(errs)
	options := site.Options{Pages: site.Pages(), Say: sayTo(out)}
	flags.StringVar(&options.Out, "out", "public", "folder to write the site to")
	flags.StringVar(&options.Base, "base", "", "path below which the site is published, such as /sub/path")
	flags.StringVar(&options.Site, "site", "", "public address of the site, such as https://example.org; without it shared links name no address")
	flags.BoolVar(&options.Compress, "compress", true, "also write brotli and gzip copies for hosts that serve them")
	flags.BoolVar(&options.Untrimmed, "untrimmed", false, "link the framework whole, for comparison")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	begun := time.Now()
	report, err := site.Build(options)
	if err != nil {
		fmt.Fprintln(errs, "The site could not be built:", err)
		return 1
	}
	fmt.Fprint(out, report)
	fmt.Fprintf(out, "Done in %.0f s. The site is in %s.\n", time.Since(begun).Seconds(), options.Out)
	return 0
}

func sayTo(out io.Writer) func(string) {
	return func(line string) { fmt.Fprintln(out, line) }
}
