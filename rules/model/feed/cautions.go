package feed

// Caution is a warning that must stand beside a step, and who has the last
// word on it.
type Caution struct {
	ID       string
	Text     string
	LastWord string
	Source   string
}

// Cautions for feeding, chlorinating and pumping through tape.
var Cautions = [...]Caution{
	{"backflow", "Wherever anything is injected, the law asks for a device that keeps it from flowing back to the source. A pressure regulator is not one.", "local plumbing code and water supplier", "Washington Administrative Code 16-202-310 (an example of such a rule)"},
	{"drinking-water", "A line that touches drinking water needs an approved assembly or an air gap. Injection makes it a high hazard: a vacuum breaker or a double check is then not enough.", "local plumbing code and water supplier", "Texas irrigation code, as filed by a city; IAPMO hazard classes"},
	{"chlorine-acid", "Never bring chlorine and acid together: not in one tank, not at one point of injection. Below pH 3 chlorine gas comes off.", "product label", "UC ANR, micro-irrigation maintenance"},
	{"chlorine-ammonia", "Never mix chlorine with ammonia fertilizer or urea: the gas is poisonous.", "product label", "New Jersey poison center"},
	{"acid", "Pour acid into water, never water into acid. Wear goggles and gloves, and have an eyewash at hand.", "product label", "from memory"},
	{"label", "Chlorine, acid and every pesticide may go through drip only where the label says so. Some states license it, and the injector must stop when the pump stops.", "product label and state chemigation rule", "from memory"},
	{"calcium-sulfate", "Do not mix calcium with sulfate or phosphate in one stock tank: it sets. Test a jar first.", "product label", "UC ANR, fertigation"},
	{"electricity", "Keep pipe, equipment and streams of water at least 10 ft from power lines, and more where your utility says so. Have a pump's wiring grounded and checked each season by an electrician, and switch it off and lock it before service.", "electrician and utility", "utility farm-safety programs"},
	{"shaft", "Keep the guards of a tractor-driven pump on. Stop the engine before you reach in. No loose clothing.", "machine manual", "from memory"},
	{"surface-water-food", "Pond and stream water can carry disease. Keep it off the parts that are eaten raw, and test it.", "produce-safety rule and health department", "Michigan on-farm produce safety; University of Vermont Extension"},
	{"not-drinking-water", "Water in irrigation lines is not for drinking: label every outlet.", "local health department", "from memory"},
	{"well", "Do not pump a household well for hours before you know its yield: it may run dry and burn the pump.", "well driller", "from memory"},
}

// CautionOf finds a caution by id.
func CautionOf(id string) (Caution, bool) {
	for _, c := range Cautions {
		if c.ID == id {
			return c, true
		}
	}
	return Caution{}, false
}
