// Package question lists what is asked and which answers there are, in their order.
package question
