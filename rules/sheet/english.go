package sheet

// The laying-day sheet in English: "key = sentence", {} marks a quantity.
var _ = language("en", `
language = English
title = Laying day
ready = READY
not-ready = NOT READY. No: {}. Open: {}.
stop-no = No
stop-yes = Yes
stop-open = Open
last-word = Labels, local codes and licensed people overrule this sheet.

head-go = Lay today? Every line must say yes; if not, wait
head-boxes = Tick what is done
head-settings = Set the machine
head-order = The work, from soil to film
head-people = Who stands where
head-checks = Check every {}
head-checks-bed = Check every {}: on each bed {} ×
head-faults = Problems and fixes
head-caution = Take care

verdict-no = The advice for this field: do not lay film here.
ball-open = Squeeze a ball of soil and poke it. It must hold, then break.
ball-yes = The ball holds, and breaks when poked: fit to work.
ball-crumbles = The ball crumbles: too dry. Water the ground and try again tomorrow.
ball-ribbons = The ball ribbons and shines: too wet. Wait.
hand-open = Look at the hand that squeezed: field capacity leaves a wet outline.
hand-yes = The hand shows a wet outline: field capacity.
hand-dry = The hand is dry: below field capacity. Water through to the depth of the bed; tape hardly wets a dry bed.
hand-clay = The hand is dry, but the ball holds: on clay that is moist enough to work.
hand-water = Water drips: above field capacity. Let it drain.
wind-open = Measure the wind. Above about {} the wind gets under the film.
wind-yes = Wind {}; the limit is about {}.
wind-no = Wind {}; the limit is about {}. The wind gets under the film: wait for a calm hour.
people-open = Count the people. Needed: {}.
people-yes = People here: {}; needed: {}.
people-no = People here: {}; needed: {}. Find help, or wait.
rolls-open = Count the rolls of film here. Needed: {}.
rolls-yes = Rolls of film here: {}; needed: {}.
rolls-no = Rolls of film here: {}; needed: {}. Fetch the rest first.
rolls-unknown = Work out the rolls of film first: give the length and the number of beds.
tractor-open = Find out the tractor's power. This bed needs at least {}.
tractor-yes = Tractor: {}; this bed needs at least {}.
tractor-walk = Walk-behind tractor: {}. Flat ground only, film up to {} wide; firm the bed in a first pass.
tractor-no = Tractor: {}; this bed needs at least {}. Form a lower bed, or borrow a heavier tractor.

go-parts = On the headland: tape, tape ends, knives, shovels, pressure gauge.
go-tools = String line, shovels, wide hoe and a bar for the roll are here.
go-weight = The tractor has weight on the front; roll bar up, belt on.
go-signal = Everyone knows the stop signal: both arms up.
go-lines = Cables and pipes in the ground are marked.
go-backflow = An approved backflow device is fitted before any tape meets drinking water.
go-label = The label's interval after treatment has run out, or ends before planting.
go-read = Everyone has read the cautions on this sheet.

set-height = Bed height {}.
set-flat = No bed: flat ground, firmed.
set-top = Bed top {}, base {}, centers {}.
set-crown = Crown: the middle {} higher than the shoulders, so that no water stands.
set-film = Film {} wide, {}; right side up.
set-film-by = Film {} wide, sold by weight; right side up.
set-white-up = White side up, black side down.
set-silver-up = Silver side up, black side down.
set-tuck = Tuck {} on each side, never less than {}.
set-tape = Lines of tape on a bed: {}. {} deep, emitters up, {} apart.
set-offset = Tape {} off the plant line, so that no hole is punched in it.
set-tension = Tight as a drum, not stretched: cold film shrinks, hot film goes slack.
set-speed = Speed about {}; the job takes about {} by the clock.
set-work = The job takes about {} of work, {} by the clock.

flow-soil = loose soil
flow-ridge = ridge
flow-bed = firm bed
flow-taped = bed with tape
flow-draped = film over the crown
flow-tight = tight film
flow-covered = covered edges
flow-closed = finished bed
do-soil = discs draw soil in over the full width.
do-flat = level the strip and firm it. No clods, no hollow.
do-form = the pan forms and firms it. No clods, no hollow in the middle.
do-tape = fed from its reel, emitters up, {} deep.
do-film = unrolled over the crown.
do-tight = press wheels hold the edges and the film tight.
do-cover = discs throw soil on the edges, {} at least.
do-end = stop, cut, bury the end; leave {} of tape.
by-hand-bed = string line on both sides; rake up and firm the bed, dig a trench along each side.
by-hand-tape = laid out straight, emitters up, {} deep.
by-hand-film = unroll a short length, edges in the trenches.
by-hand-tight = tighten it by foot; anchor spots opposite each other.
by-hand-cover = fill both trenches with the wide hoe, {} at least.

people-driver = The driver sees everyone before moving.
people-start = At the start: the second person stands behind and to the side, feet on the film's end, and buries {} before the tractor goes on.
people-never = Never between tractor and layer, never in front of the wheels. Nobody rides.
people-walk = Then walk {} behind and watch edges, tape and gaps.
people-third = A third person at the far end cuts and buries.

check-edge = Pull at the edge: it does not come up.
check-tape = Feel for the tape: there, not twisted, emitters up.
check-bed = Height and crown as set; a pressed finger leaves no wave in the film.

fault-loose = Film loose: more weight on the press wheels, slower, lay in the warm of the day.
fault-loose-hand = Film loose: pull again, tread the edge in, lay in the warm of the day.
fault-tear = Tears at the shoulder: less tension, round the shoulders, pick stones.
fault-edge = Edge lifts: deeper discs, more soil, slower. Shovel it down now.
fault-edge-hand = Edge lifts: deeper trench, more soil. Shovel it down now.
fault-twist = Tape twisted: stop, straighten it, free the reel.
fault-low = Low spots: fill and firm before the film goes over.
fault-dry = End of the bed dry: flush, look for a kink or leak, read the pressure at the end.

care-tractor = Stop the power take-off, lower the layer, key out, before anyone touches it.
care-knife = Cut away from your body. Gloves.
care-lift = A roll weighs {}. People to lift it: {}.
care-lift-loader = A roll weighs {}: too much for three people. Use a loader.
care-heat = Water, shade and a partner. Confusion or hot skin: stop and call for help.
care-flame = A torch for holes can set film and grass alight: water at hand.
care-treated = Treated ground: only what the label and the licensed applicator allow.
`)
