// Package judge weighs. Gates say whether film may be laid; rules, one row each in the
// file of their question, speak for or against the options; weighing adds them up, and
// [Settle] finds the planting day. A rule reads facts, never the outcome of another rule.
package judge
