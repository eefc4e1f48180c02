package heat

// referenceEffect is the model's own difference of daily means, film minus bare,
// in K at 5 and 10 cm in the reference state of the published effects: a New
// England spring, mean of 15 April to 31 May. TestReferenceEffect recomputes it.
var referenceEffect = [Films][Depths]float64{
	Black:                {2.111, 2.053},
	Clear:                {6.949, 6.768},
	WhiteOnBlack:         {-1.340, -1.300},
	SilverOnBlack:        {0.732, 0.716},
	InfraredTransmitting: {3.465, 3.368},
	Red:                  {3.609, 3.509},
	Blue:                 {4.065, 3.952},
	BiodegradableBlack:   {2.428, 2.361},
	Paper:                {1.253, 1.221},
}
