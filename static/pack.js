// pack.js is the desk at which a pack is made: fields, questions, their order, notes for the
// speaker. It is fetched by room.js, whose tools it uses, when somebody wants it.
(() => {
  "use strict";
  const page = window.filmfurrow, mostLink = 2000;
  const { questions, el, press, pick, para, work, call, table, input, ask, whole, numberOf, fieldOf, open, draw, ours, pack, problems, door } = page.tools;
  let making = null;
  // What a reader writes is never said in another language; our own notes are, until then.
  const inWords = (text) => page.words?.say(text) ?? text;
  const texts = (object) => JSON.stringify(object, null, 1);
  const begin = async () => {
    const rows = [...pack().stops.map((s) => ({ ...s, on: true })), ...ours.stops.filter((o) => !pack().stops.some((s) => s.farm === o.farm)).map(({ farm }) => ({ farm }))];
    const fields = table(await work(() => call("fields", "")));
    for (const [title, field] of fields) if (!rows.some((r) => r.field === field)) rows.push({ field, title, ask: "film" });
    making = { title: pack().title, rows, told: "" };
    draw();
  };
  // built is the pack as it is saved: what it promises is what holds now.
  const built = async () => {
    const made = { pack: 1, title: making.title.trim().slice(0, 60) || "A pack", stops: [] };
    for (const { on, ...row } of making.rows) {
      if (!on) continue;
      const own = ours.stops.find((o) => o.farm === row.farm), s = {};
      for (const name of ["farm", "field", "title", "ask", "turn", "to", "lesson", "notes"]) if (row[name] !== undefined && row[name] !== "" && row[name] !== own?.[name]) s[name] = row[name];
      if (own) s.farm = row.farm;
      if (s.turn === undefined || s.to === undefined) { delete s.turn; delete s.to; }
      if (s.ask || s.turn) {
        const full = whole(s), q = numberOf(full);
        s.ask = questions[q][0];
        s.answer = (await ask(fieldOf(s), q)).key;
        if (full.turn) Object.assign(s, { turn: full.turn, to: full.to, then: (await ask(fieldOf(s), q, full.turn, full.to)).key });
      }
      made.stops.push(s);
    }
    return made;
  };
  const save = async () => {
    const link = el("a", { href: URL.createObjectURL(new Blob([texts(await built())], { type: "application/json" })), download: "film-and-furrow-pack.json" });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  };
  const say = (text) => {
    making.told = text;
    draw();
  };
  const link = async () => {
    const address = `${location.origin}${location.pathname}#p=${door("seal", JSON.stringify(await built()))}`;
    if (address.length > mostLink) return say("The pack is too long for a link. Shorten the notes, or save it as a file.");
    making.link = address;
    try {
      await navigator.clipboard.writeText(address);
      say("The link is copied. Paste it into a message.");
    } catch {
      say("Copy this by hand.");
    }
  };
  page.desk = () => {
    if (!making) {
      begin();
      return [el("h2", {}, "Make a pack"), para("room-text", "Reading the fields on this device …")];
    }
    const rows = making.rows, swap = (i, j) => { if (rows[j]) { [rows[i], rows[j]] = [rows[j], rows[i]]; draw(); } };
    const line = (row, i) => {
      const own = whole(row), name = own.title ?? row.title, id = `row-${i}`;
      const turns = ["plant_on", "soil.texture", "soil.drainage", "soil.stones", "weeds.pressure", "weeds.nutsedge", "weeds.insect_pressure"];
      const choice = row.field && row.turn && input(row.turn).options;
      return el("li", { class: row.on ? "on" : "" },
        el("label", { class: "tick" }, el("input", { type: "checkbox", id, checked: row.on === true, onchange: (event) => { row.on = event.target.checked; draw(); } }), el("b", { translate: row.title !== undefined && row.title !== ours.stops.find((o) => o.farm === row.farm)?.title && "no" }, name)),
        pick(`${id}-ask`, "Question", questions.map(([, words]) => words), numberOf(own), (q) => { row.ask = questions[q][0]; }),
        el("div", { class: "field" }, el("label", { for: `${id}-notes` }, "Notes for the speaker"), el("textarea", { id: `${id}-notes`, rows: 2, maxlength: 600, oninput: (event) => { row.notes = event.target.value.replace(/\s+/g, " "); } }, row.notes ?? inWords(own.notes ?? ""))),
        row.field ? el("div", { class: "field" }, el("label", { for: `${id}-lesson` }, "The lesson"), el("textarea", { id: `${id}-lesson`, rows: 2, maxlength: 600, oninput: (event) => { row.lesson = event.target.value.replace(/\s+/g, " "); } }, row.lesson ?? "")) : "",
        row.field ? pick(`${id}-turn`, "What is turned", ["Nothing", ...turns.map((n) => input(n).label)], 1 + turns.indexOf(row.turn), (n) => { row.turn = turns[n - 1]; row.to = row.turn && input(row.turn).options[0]?.[0]; draw(); }) : "",
        choice?.length ? pick(`${id}-to`, "To what", choice.map(([, words]) => words), choice.findIndex(([word]) => word === row.to), (n) => { row.to = choice[n][0]; }) : "",
        row.turn === "plant_on" && row.field ? el("div", { class: "field" }, el("label", { for: `${id}-to` }, "To what"), el("input", { type: "date", id: `${id}-to`, value: row.to ?? "", onchange: (event) => { row.to = event.target.value || undefined; } })) : "",
        el("div", { class: "buttons" }, press(`${id}-up`, "Up", () => swap(i, i - 1), { "aria-label": `Up: ${name}` }), press(`${id}-down`, "Down", () => swap(i, i + 1), { "aria-label": `Down: ${name}` })));
    };
    const any = rows.some((r) => r.on);
    return [el("h2", {}, "Make a pack"), el("p", {}, "Choose fields, questions and their order. Your own come from “Your fields” on this device."),
      problems().length ? el("div", { role: "alert", class: "error" }, el("p", {}, "This pack was not opened:"), el("ul", {}, ...problems().map((p) => el("li", {}, p)))) : "",
      el("div", { class: "field" }, el("label", { for: "pack-title" }, "Name of the pack"), el("input", { type: "text", id: "pack-title", maxlength: 60, value: making.title, oninput: (event) => { making.title = event.target.value; } })),
      el("ol", { class: "pack-rows" }, ...rows.map(line)),
      el("div", { class: "buttons" }, press("pack-save", "Save the pack as a file", save, { disabled: !any }), press("pack-link", "Copy its link", link, { disabled: !any }), press("pack-show", "Show this pack", async () => { const text = texts(await built()); making = null; open(text); }, { disabled: !any })),
      el("p", { role: "status", id: "pack-told" }, making.told), making.link ? el("p", {}, el("code", { id: "pack-address" }, making.link)) : "",
      el("div", { class: "field" }, el("label", { for: "pack-file" }, "Open a pack"), el("input", { type: "file", id: "pack-file", accept: ".json,application/json", onchange: async (event) => { const file = event.target.files[0]; if (file) open(file.size > 65536 ? `{"pack":1,"title":"${"x".repeat(65536)}` : await file.text()); } }))];
  };
})();
