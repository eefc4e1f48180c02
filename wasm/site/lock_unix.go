//go:build unix && !solaris && !aix

package site

import (
	"os"
	"syscall"
)

// hold waits until no other process holds the file, and holds it until that is closed.
func hold(file *os.File) error { return syscall.Flock(int(file.Fd()), syscall.LOCK_EX) }
