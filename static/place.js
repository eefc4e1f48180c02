// place.js is the panel on which a room chooses a place of its own, and sees which lessons hold
// there. It is fetched by room.js, whose tools it uses, when somebody wants it.
(() => {
  "use strict";
  const page = window.filmfurrow, { el, press, para, table, door, state, pack, stops, stateOf, asTyped, settle, talk, leave } = page.tools;
  page.place = () => {
    const { place, far } = state(), list = el("ul", { class: "room-found" }), says = el("p", { class: "room-text", role: "status" });
    let shown = "";
    const find = () => {
      const [[told], ...hits] = table(door("find", box.value));
      says.textContent = told;
      if (/loading/.test(told)) setTimeout(() => { if (box.isConnected) find(); }, 500);
      const found = JSON.stringify(hits);
      if (found === shown) return; // what stays is not drawn again under a finger
      shown = found;
      list.replaceChildren(...hits.slice(0, 4).map(([words], i) => el("li", {}, press(`found-${i}`, words, () => settle(i)))));
    };
    const box = el("input", { type: "search", id: "room-town", autocomplete: "off", oninput: find, onkeydown: (event) => { if (event.key === "Enter") list.querySelector("button")?.click(); } });
    const left = stops().map((s, i) => [s, stateOf(i), pack().stops[i]]);
    return [el("h2", {}, "In our own place"), el("div", { class: "room-ask" }, el("label", { for: "room-town" }, "Town, station or zip code"), box), says, list, para("room-text", far),
      place ? para("room-sum", place) : "", place ? el("ul", { class: "room-holds" }, ...left.map(([s, c, from]) => el("li", { class: c?.holds === false ? "no" : c?.holds ? "yes" : "" }, el("b", asTyped("title", from), s.title.split(",")[0]), " ", c?.holds === false ? `does not hold here: ${c.says}` : c?.holds ? "holds here" : "being worked out …"))) : "",
      el("div", { class: "room-doing" }, press("room-talk", "To the talk", talk), place ? press("room-invented", "Back to the invented places", leave) : "")];
  };
})();
