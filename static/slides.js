// slides.js has the two slides of the room that come late, and is fetched by room.js, whose
// tools it uses, when a talk goes on: the bed before and after, and the turn, where one
// slider moves the answer.
(() => {
  "use strict";
  const page = window.filmfurrow, days = 365;
  const { questions, el, press, work, call, table, input, ask, askRaw, fieldOf, stop, draw, door, state, ground, sayDay, why, number } = page.tools;

  // --- The bed, before and after ----------------------------------------------------
  // Two drawings on one page share their patterns; a screen reader hears the second one.
  const silent = (drawing) => drawing.replace(/ (id|aria-labelledby|role)="[^"]*"/g, "");
  const close = (drawing, box) => drawing.replace(/viewBox="[^"]*"/, `viewBox="${box}"`);
  const figure = (name, drawing, words) => el("figure", { class: name, "aria-hidden": name === "now" ? null : "true" }, el("span", { html: name === "now" ? drawing : silent(drawing) }), el("figcaption", {}, words));
  // other is what the answer is held against: what most of the room said besides it; else, where
  // bare ground shows nothing of what was asked, the next best.
  const sketched = ["surface", "thickness", "tape"];
  const other = ({ told, question, votes }) => {
    const kind = questions[question][0];
    if (told.key === "none" || !["film", "bed", ...sketched].includes(kind)) return null;
    const hands = Object.entries(votes).map(([i, n]) => [+i, n]).sort((a, b) => b[1] - a[1]), [most] = hands;
    const not = hands.find(([i, n]) => n > 0 && told.options[i].key !== told.key);
    if (not) return { i: not[0], says: not === most ? `You said: ${told.options[not[0]].short}` : `Some of you said: ${told.options[not[0]].short}` };
    const next = told.order.find((i) => told.options[i].key !== told.key);
    return sketched.includes(kind) && next !== undefined ? { i: next, says: `Next best: ${told.options[next].short}` } : null;
  };
  const closeUp = (i) => `<svg class="ballot-svg" viewBox="14 244 92 58" aria-hidden="true">${ground(i)}</svg>`;
  let before = { of: "", drawing: "" };
  const bed = () => {
    const shown = state(), { told, question, place } = shown, kind = questions[question][0], not = other(shown), i = not?.i ?? -1, of = [fieldOf(stop()), question, i, place].join();
    const drawn = sketched.includes(kind) && i >= 0; // the bed looks the same: a sketch shows what differs
    if (!drawn && before.of !== of) {
      const mine = before = { of, drawing: "" };
      work(async () => {
        await askRaw(fieldOf(stop()), question);
        return door("before", "", question, i);
      }).then((drawing) => {
        mine.drawing = drawing;
        if (mine === before && state().kind === "bed") draw();
      });
    }
    const mine = told.options.findIndex((o) => o?.key === told.key);
    const box = "30 20 500 306", after = el("span", { html: told.bed });
    // What stands on the drawing stands below it here: so it is large in every language. The
    // lines of one label belong together, what ends a label is a thing of its own.
    const groups = [];
    for (const label of after.querySelectorAll(".d-label")) {
      const x = label.getAttribute("x"), y = +label.getAttribute("y"), last = groups.at(-1);
      if (last?.x === x && Math.round(y - last.y) === 24) Object.assign(last, { y, words: [...last.words, label.textContent] });
      else groups.push({ x, y, words: [label.textContent] });
    }
    const bare = kind === "day" && told.film ? [`Bare ground: ${sayDay(told.bare)}`, `${told.cover}: ${sayDay(told.day)}`] : ["Before: flat bare ground", told.dates ? "After" : told.verdict];
    return [el("h2", {}, "The bed we would make"), el("div", { class: "room-bare" },
      figure("was", drawn ? closeUp(i) : close(before.drawing, box), not ? not.says : bare[0]),
      figure("now", drawn ? closeUp(mine) : close(told.bed, box), not ? `Worked out: ${told.options[mine].short}` : bare[1])),
    not && told.options[i].not ? el("p", { class: "room-text room-not" }, el("b", {}, told.options[i].short), el("b", {}, ": "), el("span", {}, told.options[i].not)) : "",
    el("ul", { class: "room-facts room-measures" }, ...groups.map(({ words }) => el("li", {}, ...[words.slice(0, -1).join(" ").replaceAll("- ", "-"), words.at(-1)].filter(Boolean).map((w) => el("span", {}, w)))))];
  };

  // --- The turn: one slider ---------------------------------------------------------
  let turn = null, now = null, found = null; // what is turned: { name, values, words, at }
  const dateAt = (year, n) => new Date(Date.UTC(year, 0, 1 + n)).toISOString().slice(0, 10);
  const dayIn = (iso) => number(iso) - number(`${iso.slice(0, 4)}-01-01`);
  const warmSteps = 5, degree = () => state().metric ? 1 : 10 / 9; // or 2 °F, in °C
  const sliders = () => [...new Set([stop().turn ?? "plant_on", "plant_on", "warmth", "soil.texture", "weeds.pressure"])].filter((name) => name !== "plant_on" || questions[state().question][0] !== "day");
  const fact = (name) => state().told.facts.find(([, , of]) => of === name)?.[0] ?? "";
  const makeTurn = (name) => {
    const s = stop(), { told, metric } = state(), t = { name, label: "Warmth", at: 0, year: null, cells: null };
    if (name === "plant_on") {
      const year = told.day.slice(0, 4);
      t.label = input(name).label;
      t.values = Array.from({ length: days }, (_, i) => dateAt(year, i));
      t.words = sayDay;
      t.start = dayIn(told.day);
    } else if (name === "warmth") {
      t.values = Array.from({ length: 2 * warmSteps + 1 }, (_, i) => i - warmSteps);
      t.words = (v) => v === 0 ? "as warm as it is" : metric ? v > 0 ? `${v} °C warmer` : `${-v} °C colder` : v > 0 ? `${2 * v} °F warmer` : `${-2 * v} °F colder`;
      t.start = warmSteps;
    } else {
      const { label, options } = input(name);
      t.label = label;
      if (options.length) {
        t.values = options.map(([id]) => id);
        t.words = (v) => options.find(([id]) => id === v)?.[1] ?? "";
        t.start = Math.max(0, options.findIndex(([, words]) => words.toLowerCase() === fact(name).toLowerCase()));
      } else { // a figure: up to twice what it becomes
        t.values = [s.to / 12, ...Array.from({ length: 12 }, (_, i) => s.to * (i + 1) / 6)];
        t.words = () => now?.turned ?? fact(name);
        t.start = 0;
      }
    }
    t.at = t.start;
    return t;
  };
  const turned = (t, i) => t.name === "warmth" ? ["", "", t.values[i] * degree()] : [t.name, t.values[i], 0];
  let asked = 0;
  // take answers for a place of the slider; of many in a row the last one wins.
  const take = async (i) => {
    const t = turn, mine = ++asked;
    t.at = i;
    paintTurn();
    const spec = turned(t, i), answer = await work(async () => mine === asked ? askRaw(fieldOf(stop()), state().question, ...spec) : null);
    if (!answer || mine !== asked || t !== turn) return;
    now = answer;
    if (now.key !== state().told.key && !found) {
      found = { key: now.key };
      mark(t);
    }
    paintTurn();
    if (t.name !== "plant_on") rest(t, spec);
  };
  // rest works the year out once the slider rests; along the days it stays the same.
  let resting = 0;
  const rest = (t, spec) => {
    const mine = ++resting;
    setTimeout(() => {
      if (mine !== resting || t !== turn) return;
      work(async () => { // the year is that of the field that was asked last
        await askRaw(fieldOf(stop()), state().question, ...spec);
        return yearOf(await call("year", ""));
      }).then((year) => { if (t === turn) { t.year = year; paintTurn(); } });
    }, 400);
  };
  // mark finds where the answer turns: to the day, or the first of a list's places.
  const mark = async (t) => {
    const { told, question } = state();
    const is = async (i) => (await ask(fieldOf(stop()), question, ...turned(t, i))).key;
    if (t.name === "plant_on") {
      let [same, other] = [t.start, t.at], key = found.key;
      while (Math.abs(other - same) > 1) {
        const middle = Math.round((same + other) / 2);
        if (await is(middle) === told.key) same = middle;
        else other = middle;
      }
      found = { key, at: other > same ? other : other + 1, words: `${(await ask(fieldOf(stop()), question, t.name, t.values[other])).name}: ${other > same ? "from" : "until"} ${sayDay(t.values[other])}` };
    } else {
      t.cells = [];
      for (let i = 0; i < t.values.length && t === turn; i++) {
        const a = await ask(fieldOf(stop()), question, ...turned(t, i));
        t.cells.push({ key: a.key, film: a.film });
      }
    }
    if (t === turn) paintTurn();
  };
  const look = ({ key, film }) => ({ day: film, film: key, verdict: { lay: "black", lay_with_care: "later", do_not_lay: "none" }[key] })[questions[state().question][0]] ?? (key === state().told.key ? "ballot" : "other");
  const months = () => ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"].map((m) => el("span", {}, m));
  const band = (cells, total) => `<svg class="room-band" aria-hidden="true">${cells.map((c) => `<rect class="m-film m-${c.key}" x="${100 * c.at / total}%" width="${100 * c.wide / total}%" height="100%"/>`).join("")}${found?.at && total === days ? `<rect class="room-mark" x="${100 * found.at / days - 0.2}%" width=".4%" height="100%"/>` : ""}</svg>`;
  // The year was asked by the week: where the day itself was found, the week gives way to it.
  const spread = (year) => {
    const from = year.map((s) => found?.at && Math.abs(s.at - found.at) < 7 && s.at > 0 ? found.at : s.at);
    return year.map((s, i) => ({ key: s.key, at: from[i], wide: (from[i + 1] ?? days) - from[i] }));
  };
  const paintTurn = () => {
    const { room, told, kind } = state();
    if (!room || kind !== "turn" || !turn) return;
    const t = turn, a = now ?? told, changed = a.name !== told.name;
    const put = (id, text) => { const e = document.getElementById(id); if (e && e.textContent !== text) e.textContent = text; };
    put("room-answer", `${changed ? "Now: " : "Still: "}${a.name}.`);
    put("room-dates", a.dates || a.verdict);
    put("room-why", why(a));
    put("room-at", t.words(t.values[t.at]));
    document.getElementById("room-first").hidden = !changed;
    const beds = room.querySelector(".room-bare");
    if (beds.drawn !== a.bed) { // the bed of before beside that of now
      beds.drawn = a.bed;
      const box = "30 40 500 270";
      const drawing = (of) => {
        const i = sketched.includes(questions[state().question][0]) ? told.options.findIndex((o) => o?.key === of.key) : -1;
        return i < 0 ? close(of.bed, box) : closeUp(i);
      };
      beds.replaceChildren(a.bed === told.bed ? "" : figure("was", drawing(told), "At first"), figure("now", drawing(a), a.bed === told.bed ? "The bed" : "Now"));
    }
    const strip = room.querySelector(".room-strip"), year = room.querySelector(".room-year");
    if (t.name === "plant_on") strip.innerHTML = t.year ? band(spread(t.year), days) : "";
    else strip.innerHTML = band(t.values.map((_, i) => ({ key: t.cells?.[i] ? look(t.cells[i]) : "other", at: i, wide: 1 })), t.values.length);
    const point = room.querySelector(".room-point");
    point.textContent = found?.words ?? "";
    point.hidden = !found?.words;
    if (found?.at) point.style.left = `${Math.min(78, Math.max(0, 100 * found.at / days - 10))}%`;
    if (year) year.innerHTML = t.year ? band(spread(t.year), days) : "";
    const legend = room.querySelector(".room-legend");
    const seen = new Map((t.year ?? []).map((s) => [s.key, s.words]));
    if (legend.dataset.of !== String([...seen.keys()])) {
      legend.dataset.of = [...seen.keys()];
      legend.replaceChildren(...[...seen].slice(0, 5).map(([key, words]) => el("li", {}, el("span", { html: `<svg class="swatch" width="40" height="24" aria-hidden="true"><rect class="m-film m-${key}" width="100%" height="100%"/></svg>` }), " ", shortOf(key) ?? words.split(":")[0])));
      if (!t.year) legend.append(el("li", {}, "Trying each week of the year …"));
    }
    const range = document.getElementById("room-slider");
    if (range && +range.value !== t.at) range.value = t.at;
    range?.setAttribute("aria-valuetext", document.getElementById("room-at")?.textContent ?? "");
  };
  const shortOf = (key) => {
    const { told, question } = state();
    return questions[question][0] === "film" ? told.options.find((o) => o.key === key)?.short : null;
  };
  const yearOf = (text) => table(text).map(([day, key, words]) => ({ at: dayIn(day), key, words }));
  const startTurn = (name) => {
    turn = makeTurn(name);
    now = null;
    found = null;
    asked++;
    rest(turn, ["", "", 0]); // the year of the farm as it is
  };
  const slider = () => {
    const s = stop(), { told, question } = state();
    if (!turn || !sliders().includes(turn.name)) startTurn(sliders()[0]);
    const t = turn, then = told.options.find((o) => o.key === s.then);
    const head = t.name === "plant_on" && s.turn === "plant_on" && questions[question][0] === "film" && then ? `On which day does ${then.short} win?` : "Turn one thing";
    const range = el("input", { type: "range", id: "room-slider", min: 0, max: t.values.length - 1, step: 1, value: t.at, "aria-label": t.label, oninput: (event) => take(+event.target.value) });
    // The handle stands over the middle of its place.
    range.style.width = `calc(${100 - 100 / t.values.length}% + 3vw)`;
    range.style.marginLeft = `calc(${50 / t.values.length}% - 1.5vw)`;
    const few = t.values.length <= 5 ? el("div", { class: "room-cells" }, ...t.values.map((v) => el("span", {}, t.words(v)))) : "";
    const set = s.turn === t.name && s.to != null ? press("room-turn", "Turn it", setIt) : "";
    return [el("div", { class: "room-head" }, el("h2", {}, head), el("b", { id: "room-at" })), el("div", { class: "room-turn" },
      el("div", { class: "room-bare" }),
      el("div", { class: "room-now" }, el("p", { class: "room-answer", id: "room-answer" }), el("p", { class: "room-sum", id: "room-first" }, `At first: ${told.name}.`), el("p", { id: "room-dates" }), el("p", { id: "room-why", class: "room-text" })),
    ), el("div", { class: "room-sliders" }, ...sliders().map((name) => press(`turn-${name.replace(".", "-")}`, name === "warmth" ? "Warmth" : input(name).label, () => { startTurn(name); draw(); }, { "aria-pressed": String(name === t.name) })), set),
    el("div", { class: "room-slide" }, el("p", { class: "room-point", hidden: true }), el("div", { class: "room-strip" }), range, few),
    t.name === "plant_on" ? "" : el("div", { class: "room-year" }),
    el("div", { class: "room-months" }, ...months()), el("ul", { class: "room-legend" })];
  };
  const setIt = () => {
    const s = stop(), i = turn.name === "plant_on" ? dayIn(s.to) : turn.values.findIndex((v) => v === s.to || Math.abs(v - s.to) < 1e-6);
    if (turn.name === s.turn && i >= 0) take(i);
  };
  const turnBy = (by) => take(Math.min(Math.max(turn.at + by * (turn.name === "plant_on" ? 7 : 1), 0), turn.values.length - 1));

  // proof is what the lesson rests on: the answer at first, and after the turn.
  let proved = { of: null };
  const proof = () => {
    const s = stop(), { told, question, place } = state(), of = [fieldOf(s), question, s.turn, s.to, place].join();
    if (!s.turn || !sliders().includes(s.turn) || questions[question][0] !== s.ask || told.key === "none") return "";
    if (proved.of !== of) {
      const mine = proved = { of };
      ask(fieldOf(s), question, s.turn, s.to).then((answer) => {
        mine.then = answer;
        if (mine === proved && state().kind === "lesson") draw();
      });
    }
    const { then } = proved;
    return el("ul", { class: "room-facts" }, el("li", {}, el("b", {}, told.name), "At first"), then ? el("li", {}, el("b", {}, then.name), el("span", {}, input(s.turn).label), el("span", {}, ": "), el("span", {}, then.turned)) : "");
  };

  page.slides = {
    proof,
    bed, turn: slider, paint: paintTurn,
    key: (key) => { if (turn) key === "t" ? setIt() : turnBy(key === "+" ? 1 : -1); },
    end: () => { turn = now = found = null; },
  };
})();
