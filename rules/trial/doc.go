// Package trial plans and reads a strip trial of the grower's own: two to four ways of
// doing a thing, side by side in randomised blocks over the beds there are. It says
// beforehand what difference such a trial can show, and afterwards what was learned and
// what was not. It knows nothing of film: whoever asks names the ways.
//
// The blocks follow what uniformity trials teach: neighbouring beds differ least, and
// longer strips help less than more of them.
package trial
