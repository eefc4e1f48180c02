package heat

// referenceEffect is the model's own difference of daily means, film minus bare,
// in K at 5 and 10 cm in the reference state of the published effects: a New
// England spring, mean of 15 April to 31 May. TestReferenceEffect recomputes it.
var referenceEffect = [Films][Depths]float64{
	Black:                {2.146, 2.088},
	Clear:                {6.966, 6.787},
	WhiteOnBlack:         {-1.305, -1.264},
	SilverOnBlack:        {0.769, 0.753},
	InfraredTransmitting: {3.499, 3.402},
	Red:                  {3.638, 3.539},
	Blue:                 {4.095, 3.983},
	BiodegradableBlack:   {2.463, 2.397},
	Paper:                {1.289, 1.257},
}
