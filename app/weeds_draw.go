package app

// weedKey draws how the two nutsedges and a grass are told apart: the stem cut
// across, the tip of a leaf, the tubers. The shapes are our own; what they show
// is from memory and stands in the text too. Each name stands in place.
const weedKey = `<figure class="weed-key"><svg viewBox="0 0 620 270" role="img" aria-labelledby="weed-t weed-d"><title id="weed-t">Telling yellow nutsedge, purple nutsedge and grass apart</title>` +
	`<desc id="weed-d">Both nutsedges have a three-edged stem; a grass stem is round. A leaf of yellow nutsedge narrows slowly to a long thin tip, one of purple nutsedge ends abruptly. Yellow nutsedge has one round tuber at the end of each runner; purple nutsedge has chains of oblong tubers along them.</desc>` +
	`<g class="d-label weed-words"><text x="90" y="24">yellow</text><text x="290" y="24">purple</text><text x="490" y="24">a grass</text></g>` +
	`<g class="weed-line"><path d="M92 46l22 38h-44z"/><path d="M292 46l22 38h-44z"/><circle cx="512" cy="66" r="20"/><circle cx="512" cy="66" r="11"/>` +
	`<path d="M20 128q70-16 150 0q-80 16-150 0z"/><path d="M220 116h104q26 2 30 12q-4 10-30 12h-104z"/><path d="M440 120q80-6 140 8q-60 14-140 8z"/>` +
	`<path fill="none" d="M92 168v16M92 184q-40 6-58 34M92 184q4 24 0 40M92 184q40 6 58 34M292 168v16M292 184q-52 12-70 58M292 184q50 12 72 58M512 168v20M512 188q-34 20-46 56M512 188q-12 30-10 58M512 188q14 30 12 58M512 188q34 20 46 56"/></g>` +
	`<g class="weed-fill"><circle cx="32" cy="224" r="10"/><circle cx="92" cy="232" r="10"/><circle cx="152" cy="224" r="10"/>` +
	`<ellipse cx="262" cy="198" rx="12" ry="7"/><ellipse cx="238" cy="218" rx="12" ry="7"/><ellipse cx="222" cy="244" rx="12" ry="7"/><ellipse cx="322" cy="198" rx="12" ry="7"/><ellipse cx="348" cy="218" rx="12" ry="7"/><ellipse cx="364" cy="244" rx="12" ry="7"/></g></svg>` +
	`<figcaption>Stem, cut across: three edges on both nutsedges, round on a grass. Leaf tip: yellow narrows slowly to a thin point, purple ends short and blunt. Below ground: yellow has one smooth round tuber at the end of each runner; purple has chains of rough oblong ones; a grass has none. From memory: take a plant to your extension office.</figcaption></figure>`
