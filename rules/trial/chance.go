package trial

import "math"

// shareBelow is the regularised incomplete beta function I_x(a, b), by Lentz's continued
// fraction (Abramowitz and Stegun, 26.5.8).
func shareBelow(x, a, b float64) float64 {
	switch {
	case x <= 0:
		return 0
	case x >= 1:
		return 1
	case x > (a+1)/(a+b+2):
		return 1 - shareBelow(1-x, b, a)
	}
	la, _ := math.Lgamma(a)
	lb, _ := math.Lgamma(b)
	lab, _ := math.Lgamma(a + b)
	front := math.Exp(lab-la-lb+a*math.Log(x)+b*math.Log(1-x)) / a
	const tiny = 1e-300
	c, d, f := 1.0, 0.0, 1.0
	for i := range 500 {
		m := float64(i / 2)
		term := 1.0
		switch {
		case i == 0:
		case i%2 == 0:
			term = m * (b - m) * x / ((a + 2*m - 1) * (a + 2*m))
		default:
			term = -(a + m) * (a + b + m) * x / ((a + 2*m) * (a + 2*m + 1))
		}
		if d = 1 + term*d; math.Abs(d) < tiny {
			d = tiny
		}
		if c = 1 + term/c; math.Abs(c) < tiny {
			c = tiny
		}
		d = 1 / d
		f *= c * d
		if math.Abs(c*d-1) < 1e-14 && i > 0 {
			break
		}
	}
	return front * (f - 1)
}

// chanceOfF is how often a ratio of variances of so many degrees of freedom is as large by
// chance: the upper tail of the F distribution.
func chanceOfF(f, between, within float64) float64 {
	if f <= 0 || math.IsNaN(f) {
		return 1
	}
	return shareBelow(within/(within+between*f), within/2, between/2)
}

// chanceOfT is how often t lies as far from 0 on either side by chance.
func chanceOfT(t, freedom float64) float64 {
	return shareBelow(freedom/(freedom+t*t), freedom/2, 0.5)
}

// tOf is the t that is passed on either side with a chance, such as 0.05.
func tOf(chance, freedom float64) float64 {
	low, high := 0.0, 1.0
	for chanceOfT(high, freedom) > chance {
		high *= 2
	}
	for range 80 {
		if mid := (low + high) / 2; chanceOfT(mid, freedom) > chance {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2
}

// Sure is the chance of a wrong "yes" that a trial is read with: one in twenty.
const Sure = 0.05

// Power is how likely a two-sided test at [Sure] shows a true difference that is so many of
// its standard errors, with so many degrees of freedom: from the noncentral t distribution,
// summed over the chi distribution of the error.
func Power(errors, freedom float64) float64 { return powerPast(tOf(Sure, freedom), errors, freedom) }

// powerPast is [Power] for the t that a test at its level must pass.
func powerPast(t, errors, freedom float64) float64 {
	below := func(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }
	ln, _ := math.Lgamma(freedom / 2)
	const steps = 2000
	from, to := 0.0, 1+10/math.Sqrt(freedom) // s ÷ σ
	sum, weight := 0.0, 0.0
	for i := 1; i < steps; i++ {
		s := from + (to-from)*float64(i)/steps
		w := math.Exp((freedom-1)*math.Log(s) - freedom*s*s/2 + freedom/2*math.Log(freedom/2) + math.Ln2 - ln)
		sum += w * (1 - below(t*s-errors) + below(-t*s-errors))
		weight += w
	}
	return sum / weight
}
