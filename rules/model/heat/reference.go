package heat

// referenceEffect is the model's own difference of daily means, film minus bare,
// in K at 5 and 10 cm in the reference state of the published effects: a New
// England spring, mean of 15 April to 31 May. TestReferenceEffect recomputes it.
var referenceEffect = [Films][Depths]float64{
	Black:                {2.595, 2.510},
	Clear:                {6.552, 6.370},
	WhiteOnBlack:         {-2.750, -2.682},
	SilverOnBlack:        {0.540, 0.516},
	InfraredTransmitting: {3.682, 3.565},
	Red:                  {3.299, 3.195},
	Blue:                 {4.000, 3.875},
	BiodegradableBlack:   {2.890, 2.797},
	Paper:                {0.664, 0.635},
}
