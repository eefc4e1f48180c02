// Command flow uses all of what Go's compiler and runtime make of jumps, calls, stacks and
// pointers on them. What it prints is the same however it is squeezed.
package main

import (
	"errors"
	"fmt"
	"os"
	"runtime"
	"runtime/debug"
	"slices"
	"strings"
	"sync"
)

type node struct {
	left, right *node
	words       []string
}

// grown is a tree whose only references lie on the stack while it grows.
func grown(depth int) *node {
	if depth == 0 {
		return &node{words: []string{fmt.Sprint(depth)}}
	}
	left := grown(depth - 1)
	if depth%5 == 0 {
		runtime.GC()
	}
	right := grown(depth - 1)
	return &node{left, right, append(slices.Clone(left.words), right.words...)}
}

func (n *node) count() int {
	if n == nil {
		return 0
	}
	return 1 + n.left.count() + n.right.count()
}

// deep needs a larger stack with each turn, on which pointers to the stack itself lie.
func deep(n int, up *[16]int) int {
	var here [16]int
	here[n%16] = n
	if up != nil {
		up[n%16] += n
	}
	if n == 0 {
		return 0
	}
	sum := deep(n-1, &here)
	for _, v := range here {
		sum += v
	}
	return sum
}

func fails(kind int) (said string, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("kind %d: %v", kind, r)
		}
	}()
	defer func() { said += "left;" }()
	for i := range 3 {
		defer func() { said += fmt.Sprint(i, ";") }()
	}
	var (
		none  *node
		list  []int
		table map[string]int
		any   interface{ count() int }
	)
	switch kind {
	case 0:
		return "", errors.New("no fault")
	case 1:
		_ = none.words
	case 2:
		_ = list[kind]
	case 3:
		table["x"] = 1
	case 4:
		_ = any.count()
	case 5:
		panic(fmt.Sprint("own ", kind))
	case 6:
		defer func() { panic(fmt.Sprint(recover(), " and again")) }()
		panic("first")
	case 7:
		_ = kind / len(list)
	case 8:
		_ = interface{}(kind).(string)
	case 9:
		func() { // this one is over, the outer function goes on
			defer func() { said += fmt.Sprint(recover(), ";") }()
			panic("inner")
		}()
	}
	return said + "whole;", nil
}

func exits() (said string) {
	var wait sync.WaitGroup
	wait.Add(1)
	go func() {
		defer wait.Done()
		defer func() { said = fmt.Sprint("gone ", recover()) }()
		runtime.Goexit()
	}()
	wait.Wait()
	return said
}

// sieve is a chain of goroutines.
func sieve(n int) (primes []int) {
	numbers := make(chan int)
	go func(to chan int) {
		for i := 2; ; i++ {
			to <- i
		}
	}(numbers)
	for range n {
		prime := <-numbers
		primes = append(primes, prime)
		next, from := make(chan int), numbers
		go func() {
			for i := range from {
				if i%prime != 0 {
					next <- i
				}
			}
		}()
		numbers = next
	}
	return primes
}

// shared has many goroutines that wait for each other, each on a stack that grows.
func shared() (sum int) {
	var wait sync.WaitGroup
	var lock sync.Mutex
	results := make(chan int, 3)
	done := make(chan bool)
	go func() {
		for {
			select {
			case n := <-results:
				lock.Lock()
				sum += n
				lock.Unlock()
			case <-done:
				done <- true
				return
			}
		}
	}()
	for i := range 40 {
		wait.Add(1)
		go func() {
			defer wait.Done()
			results <- deep(i*20, nil)
			runtime.Gosched()
			if i%10 == 0 {
				runtime.GC()
			}
			results <- deep(i*10, nil)
		}()
	}
	wait.Wait()
	for len(results) > 0 {
		runtime.Gosched()
	}
	done <- true
	<-done
	lock.Lock()
	defer lock.Unlock()
	return sum
}

type shape interface{ area() float64 }
type square struct{ a float64 }
type disc struct{ r float64 }

func (s square) area() float64 { return s.a * s.a }
func (d *disc) area() float64  { return 3 * d.r * d.r }

func labels(n int) (path string) {
outer:
	for i := range n {
		for j := range n {
			switch {
			case (i+j)%7 == 3:
				continue outer
			case i*j > 20:
				break outer
			case j%2 == 0 && i%3 != 1 || j == 5:
				path += "a"
				fallthrough
			case i > j:
				path += "b"
			default:
				if j > 3 {
					goto next
				}
				path += "c"
			}
		}
	next:
		path += fmt.Sprint(i)
	}
	return path
}

// called counts the functions that wait for it. None of them is within another, since what tells
// those apart is taken out on purpose.
//
//go:noinline
func called(n int) int {
	if n > 0 {
		return called(n - 1)
	}
	return runtime.Callers(1, make([]uintptr, 99))
}

func main() {
	fmt.Println(grown(11).count(), len(grown(6).words))
	fmt.Println(deep(3000, nil))
	for kind := range 10 {
		fmt.Println(fails(kind))
	}
	fmt.Println(exits())
	fmt.Println(sieve(40))
	fmt.Println(shared())
	sum := 0.0
	for _, s := range []shape{square{2}, &disc{3}, square{4}} {
		f := s.area // a value of a method
		sum += f()
	}
	fmt.Println(sum, labels(9))
	words := strings.Fields("one two three two one two")
	counted := map[string]int{}
	for _, w := range words {
		counted[w]++
	}
	slices.SortFunc(words, func(a, b string) int { return strings.Compare(b, a) })
	fmt.Println(words, counted)
	fmt.Println(called(30) - called(0))
	for i := range 5 {
		debug.SetGCPercent(10 + i)
		kept := grown(8)
		runtime.GC()
		if kept.count() != 511 {
			os.Exit(3)
		}
	}
	defer fmt.Println("deferred")
	defer func() { fmt.Println(recover()); panic("at the end") }()
	panic("last but one")
}
