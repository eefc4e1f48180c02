package heat

// referenceEffect is the model's own difference of daily means, film minus bare,
// in K at 5 and 10 cm in the reference state of the published effects: a New
// England spring, mean of 15 April to 31 May. TestReferenceEffect recomputes it.
var referenceEffect = [Films][Depths]float64{
	Black:                {2.160, 2.102},
	Clear:                {6.974, 6.794},
	WhiteOnBlack:         {-1.305, -1.264},
	SilverOnBlack:        {0.777, 0.761},
	InfraredTransmitting: {3.511, 3.414},
	Red:                  {3.646, 3.547},
	Blue:                 {4.105, 3.993},
	BiodegradableBlack:   {2.477, 2.410},
	Paper:                {1.295, 1.264},
}
