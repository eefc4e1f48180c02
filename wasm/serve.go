//go:build !js

package main

import (
	"flag"
	"fmt"
	"io"
	"net"
	"net/http"
	"time"

	"filmfurrow/wasm/site"
)

func serve(args []string, _ io.Reader, out, errs io.Writer) int {
	flags := flag.NewFlagSet("serve", flag.ContinueOnError)
	flags.SetOutput(errs)
	addr := flags.String("addr", "localhost:8080", "address to serve on")
	compress := flags.Bool("compress", false, "compress the files first, as a public host would; takes longer")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	// The address is taken first: a port in use should be said before the
	// reader has waited for the build.
	listener, err := net.Listen("tcp", *addr)
	if err != nil {
		fmt.Fprintf(errs, "Cannot serve on %s: %v. Choose another with -addr localhost:8081.\n", *addr, err)
		return 1
	}
	begun := time.Now()
	report, err := site.Build(site.Options{Pages: site.Pages(), Out: "public", Compress: *compress, Say: sayTo(out)})
	if err != nil {
		fmt.Fprintln(errs, "The site could not be built:", err)
		return 1
	}
	var handler *site.Server
	files, err := site.ReadFolder(report.Dir)
	if err == nil {
		handler, err = site.NewServer(files, "")
	}
	if err != nil {
		fmt.Fprintln(errs, "The site could not be read back:", err)
		return 1
	}
	fmt.Fprintf(out, "Built in %.0f s. Open http://%s in a browser; stop with Ctrl-C.\n", time.Since(begun).Seconds(), listener.Addr())
	server := &http.Server{Handler: handler, ReadHeaderTimeout: 10 * time.Second}
	if err := server.Serve(listener); err != nil {
		fmt.Fprintln(errs, "Serving stopped:", err)
		return 1
	}
	return 0
}
