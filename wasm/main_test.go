//go:build !js

package main

import (
	"os"
	"testing"

	"filmfurrow/wasm/browsertest"
)

func TestMain(m *testing.M) { os.Exit(browsertest.Main(m)) }
