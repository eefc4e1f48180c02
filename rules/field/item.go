package field

import "filmfurrow/rules/unit"

// Item is one thing to buy or to have.
type Item uint8

// The items, in the order of the list.
const (
	ItemFilm Item = iota
	ItemTape
	ItemHeader
	ItemTakeOffs
	ItemEnds
	ItemValves
	ItemRegulators
	ItemFilter
	ItemGauge
	ItemBackflow
	ItemInjector
	ItemPins
	ItemPlants
	ItemFertiliser
	ItemCover
	ItemHoops
	ItemStakes
	ItemString
	ItemCount = iota
)

// ItemKeys are the items' names in the case file and in a table.
var ItemKeys = [ItemCount]string{"film_rolls", "tape_m", "header_m", "take_offs", "line_ends", "valves", "regulators",
	"filter", "gauge", "backflow_device", "injector", "soil_bags", "plants", "base_fertiliser_kg", "row_cover_m", "hoops", "stakes", "string_m"}

// ItemNames are what the list calls them, in the order of the items.
var ItemNames = [ItemCount]string{"rolls of film", "drip tape", "header pipe", "take-offs from header to tape", "ends for the tape",
	"zone valves", "pressure regulators", "filter", "pressure gauge", "backflow device", "injector for feeding", "soil bags or pins for the ends", "plants",
	"fertilizer for under the film", "row cover", "hoops", "stakes", "string"}

// KindOfItem is how a quantity of it is shown: tape, header, cover and string by their length, the base
// fertilizer by its mass, all else by the piece.
func KindOfItem(i Item) unit.Kind {
	switch i {
	case ItemTape, ItemHeader, ItemCover, ItemString:
		return unit.KindLong
	case ItemFertiliser:
		return unit.KindMass
	}
	return unit.KindCount
}
