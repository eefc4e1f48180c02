// Empty: with it the compiler lets setGCPercent stand without a body.
