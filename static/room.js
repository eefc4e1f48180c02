// room.js is the page on a projector: one question at a time. The room guesses, the answer
// opens, its reasons come one by one, and one thing is turned live. It works nothing out:
// the program's door (app/workshop.go) answers what it asks.
(() => {
  "use strict";
  const page = window.filmfurrow, questions = {{.Questions}}, base = {{.Base}};
  let ours = null; // the pack of the site, fetched
  const smallest = 8; // hands that fill a ballot's height at the least
  const holdForTen = 600, mostReasons = 6;
  const oneRow = 9; // more ballots than these stand in two rows
  const inFront = 6; // of so many, those that are shown when they race

  let door = null, room = null;
  let pack = null, at = 0, step = 0, question = 0, mode = "talk", place = "";
  let votes = {}, last = 0, wide = false, told = null, metric = false;
  let problems = [], far = "";
  let checks = [];
  const known = new Map();

  // --- Elements ------------------------------------------------------------------
  const el = (name, attributes, ...inside) => {
    const e = document.createElement(name);
    for (const [key, value] of Object.entries(attributes ?? {})) {
      if (key.startsWith("on")) e.addEventListener(key.slice(2), value);
      else if (key === "html") e.innerHTML = value; // drawings of our own program
      else if (value === true) e.setAttribute(key, "");
      else if (value !== false && value != null) e.setAttribute(key, value);
    }
    e.append(...inside.filter((i) => i != null && i !== ""));
    return e;
  };
  const para = (name, text) => text ? el("p", { class: name }, text) : "";
  const press = (id, text, on, more) => el("button", { type: "button", class: "plain", id, onclick: on, ...more }, text);
  const pick = (id, label, names, chosen, on) => {
    const list = el("select", { id, onchange: () => on(list.selectedIndex) }, ...names.map((name, i) => el("option", { value: i, selected: i === chosen }, name)));
    return el("div", { class: "field" }, el("label", { for: id }, label), list);
  };

  const never = (iso) => iso > "2200"; // the last day of the engine stands for none
  const sayDay = (iso) => {
    if (never(iso)) return "never";
    const month = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"][+iso.slice(5, 7) - 1], day = +iso.slice(8);
    return metric ? `${day} ${month}` : `${month} ${day}`;
  };

  // lineOf gives the five round days, the 1st, 10th and 20th of months, that a room chooses from, and
  // which of them is nearest to the day, of two the earlier. A line begins with a month, so where on
  // it that lies is the calendar's doing; of two lines that hold it, it is the earlier one if that
  // holds bare ground's day too.
  const number = (iso) => Date.parse(iso) / 86400000;
  const round = (n) => new Date(Date.UTC(Math.floor(n / 36), Math.floor(n / 3) % 12, Math.max(1, 10 * (n % 3)))).toISOString().slice(0, 10);
  const lineOf = (day, bare) => {
    const away = (n) => Math.abs(number(round(n)) - number(day));
    let n = 36 * day.slice(0, 4) + 3 * (day.slice(5, 7) - 1);
    while (away(n + 1) < away(n)) n++;
    let first = n - n % 3;
    if (n < first + 2 && number(bare) <= number(round(first + 1)) + 5) first -= 3;
    return { days: [0, 1, 2, 3, 4].map((i) => round(first + i)), at: n - first };
  };

  // --- What is asked of the engine: one thing at a time, what the room looks at first ---------
  const soon = [], later = [];
  let busy = false;
  const run = async () => {
    if (busy) return;
    busy = true;
    for (let job; (job = soon.shift() ?? later.shift());) await job();
    busy = false;
  };
  const work = (job, list = soon) => new Promise((done) => {
    list.push(async () => done(await job()));
    run();
  });
  const call = (name, ...args) => new Promise((done) => { if (door) door(name, ...args, done); });
  const table = (text) => text.split("\n").slice(0, -1).map((line) => line.split("\t"));
  const inputs = new Map();
  const input = (name) => {
    if (!inputs.has(name)) {
      const [[label], ...options] = table(door("input", name));
      inputs.set(name, { label, options });
    }
    return inputs.get(name);
  };
  // An answer is a row, then the gates, then each option with its reasons; what is wrong is
  // a sentence.
  const readAnswer = (text) => {
    const [first, ...rest] = table(text);
    if (!first || first.length < 8) return { wrong: text };
    const [key, name, why, bed, verdict, dates, turned, day] = first;
    const a = { key, name, text: why, facts: [], bed, verdict, dates, turned, day, gates: [], options: [], order: [] };
    let list = a.gates;
    for (const [n, ...cells] of rest) {
      if (n === "") list.push({ rule: cells[0], points: +cells[1], out: cells[2] !== "", text: cells[3], source: cells[4] });
      else if (n === "fact") a.facts.push(cells);
      else if (n === "day") { // the room's answer is the day of the line that is nearest
        const [day, bare, film, cover] = cells, { days, at } = lineOf(day, bare);
        a.options = days.map((iso) => ({ key: iso.slice(5), name: sayDay(iso), short: sayDay(iso), day: iso, why: [] }));
        const nearest = a.options[at];
        Object.assign(a, { day, bare, film, cover, key: nearest.key, name: sayDay(day), facts: a.facts.filter(([, , of]) => of !== "plant_on") });
        list = nearest.why;
      } else {
        a.options[+n] = { key: cells[0], name: cells[1], short: cells[2], not: cells[3], why: list = [] };
        a.order.push(+n); // as they rank
      }
    }
    if (a.name === "") Object.assign(a, { name: "There is no day to vote on", text: a.gates[0]?.text ?? "Nothing keeps it back: no day is the first." });
    return a;
  };
  const fieldOf = (stop) => stop.farm ?? stop.field;
  const numberOf = (stop) => questions.findIndex(([word]) => word === (stop.ask ?? ours.stops.find((o) => o.farm === stop.farm)?.ask));
  // Of a farm of ours, what a pack leaves out is what ours says.
  const whole = (stop) => {
    const own = ours.stops.find((o) => o.farm === stop.farm);
    return own && (!stop.ask || stop.ask === own.ask) ? { ...own, ...stop } : { title: own?.title, turn: own?.turn, to: own?.to, ...stop };
  };
  // What the pack's maker typed is never said in another language.
  const typed = (name, stop = pack.stops[at]) => stop[name] !== undefined && stop[name] !== ours.stops.find((o) => o.farm === stop.farm)?.[name];
  const asTyped = (name, stop) => ({ translate: typed(name, stop) && "no" });
  const stops = () => pack.stops.map(whole);
  const stop = () => whole(pack.stops[at]);
  // What an input is turned to goes as a word, or as a figure in SI; days count from 1970.
  const askRaw = async (field, q, name = "", to = "", warmer = 0) => {
    const figure = name === "plant_on" ? number(to) : +to || 0;
    return readAnswer(await call("ask", field, q, name, typeof to === "string" && name !== "plant_on" ? to : "", figure, warmer, place !== ""));
  };
  const ask = (field, q, name = "", to = "", warmer = 0, list = soon) => {
    const key = JSON.stringify([field, q, name, to, warmer, place]);
    if (known.has(key)) return Promise.resolve(known.get(key));
    return work(async () => known.get(key) ?? askRaw(field, q, name, to, warmer), list).then((answer) => {
      known.set(key, answer);
      return answer;
    });
  };

  // --- Is each lesson still true? -------------------------------------------------
  // check asks each stop's promise anew, in the room's own place or by this version.
  const check = () => {
    later.length = 0;
    checks = stops().map((s) => s.answer ? { holds: null, says: "" } : null);
    for (const [i, s] of stops().entries()) {
      const state = checks[i];
      if (!state) continue;
      const q = numberOf(s);
      ask(fieldOf(s), q, "", "", 0, later).then(async (first) => {
        state.says = first.name ?? first.wrong;
        state.holds = first.key === s.answer;
        if (state.holds && s.turn) state.holds = (await ask(fieldOf(s), q, s.turn, s.to, 0, later)).key === s.then;
        if (mode !== "pack") draw();
      });
    }
  };
  const stateOf = (i) => checks[i];
  const out = (i) => stateOf(i)?.holds === false;

  // --- Drawings --------------------------------------------------------------------
  // A ballot is a bed from which its film is drawn up as hands go up. The bed is a sketch;
  // the height above it is the count, or the points.
  // What marks it is drawn once, with the ballots for phones (app/ballot.go).
  const asks = () => questions[question][0];
  const sketch = (i) => questions[question][2][i] ?? ["ballot", 40, ""];
  const ground = (i) => {
    const [, bed, marks] = sketch(i);
    return `<path class="d-soil" d="M20 300L30 ${300 - bed}Q60 ${292 - bed} 90 ${300 - bed}L100 300Z"/>${marks}`;
  };
  const ballot = (i, share, count) => {
    const [look, bed] = sketch(i), top = 300 - bed - 10 - 190 * share;
    return `<svg class="ballot-svg" viewBox="0 0 120 300" preserveAspectRatio="xMidYMax meet" aria-hidden="true"><path class="m-film m-${look}" d="M20 ${top}Q60 ${top - 9} 100 ${top}L112 300H8Z"/>${ground(i)}${count ? `<text x="60" y="${top - 16}" text-anchor="middle">${count}</text>` : ""}</svg>`;
  };
  const hands = () => Object.values(votes).reduce((a, b) => a + b, 0);
  const handsOf = (n) => `${n} ${n === 1 ? "hand" : "hands"}`;
  const most = () => Math.max(smallest, ...Object.values(votes));
  const vote = (i, n) => {
    votes[i] = Math.max(0, (votes[i] ?? 0) + n);
    last = i;
    draw();
  };
  // A tap is a hand, a ballot that is held is ten; the click that ends a hold counts none.
  let held = 0, tens = false;
  const many = () => told.options.length > oneRow;
  const ballots = (open) => onLine(open, el("div", { class: "ballots" + (many() && !open ? " many" : "") }, ...told.options.map((o, i) => {
    const n = votes[i] ?? 0;
    if (open && many() && !n && o.key !== told.key) return "";
    const drawn = el("span", { class: "ballot-draw", html: ballot(i, open && !hands() && asks() !== "day" ? +(o.key === told.key) : n / most(), open ? 0 : n) });
    if (open) return el("div", { class: "ballot" + (o.key === told.key ? " told" : "") }, drawn, el("span", { class: "ballot-name" }, el("b", {}, o.short), !n ? "" : asks() !== "day" ? `: ${n}` : el("span", { class: "day-hands" }, handsOf(n))));
    const let_go = () => clearTimeout(held);
    return el("button", {
      type: "button", class: "ballot", id: `vote-${i}`,
      onpointerdown: () => { tens = false; let_go(); held = setTimeout(() => { tens = true; vote(i, 10); }, holdForTen); },
      onpointerup: let_go, onpointercancel: let_go, oncontextmenu: (event) => event.preventDefault(),
      onclick: () => { let_go(); if (!tens) vote(i, 1); tens = false; },
    }, drawn, el("span", { class: "ballot-name" }, el("span", { class: "ballot-key", translate: "no" }, String(i + 1)), " ", el("span", {}, asks() === "day" ? o.short : o.short.replace(/^([\d.]+) /, "$1\u00a0")), el("span", { class: "for-readers" }, `: ${n}`))); // a figure keeps its unit
  })));
  // Days stand on a line (line.js).
  const onLine = (open, list) => {
    if (asks() !== "day") return list;
    part({{.Line}});
    return page.line?.(list, told, open) ?? list;
  };
  // The figure of a ballot, as phones show it, is a hand too; held down it is ten.
  let down = false; // long enough for ten
  const count = (key, again) => {
    const i = (+key || 10) - 1;
    if (!told?.options[i] || again && down) return;
    down = again;
    vote(i, again ? 9 : 1);
  };
  const code = () => {
    const address = `${location.origin}${base}/ballot/${asks()}`;
    return el("button", { type: "button", class: "room-qr" + (wide ? " wide" : ""), id: "room-qr", "aria-label": "Vote with your own phone", onclick: () => { wide = !wide; draw(); } },
      el("span", { html: door("qr", address) }), wide ? el("span", { translate: "no" }, address.replace(/^https?:\/\//, "")) : "");
  };

  // --- Reasons, what counts most first ------------------------------------------------
  const reasons = (answer = told) => {
    if (!answer) return [];
    const kind = asks();
    if (kind === "verdict") return answer.gates.slice(1).map((g) => ({ ...g, head: "What decides it" }));
    const rules = new Map();
    for (const o of answer.options) for (const f of o.why) {
      if (!rules.has(f.rule)) rules.set(f.rule, { rule: f.rule, of: new Map() });
      rules.get(f.rule).of.set(o.key, f);
    }
    const list = [...rules.values()];
    for (const r of list) {
      const own = r.of.get(answer.key), all = answer.options.map((o) => r.of.get(o.key)?.points ?? 0);
      let who = null;
      if (!own) for (const o of answer.options) {
        const f = r.of.get(o.key);
        if (f && (!who || f.out || Math.abs(f.points) > Math.abs(r.of.get(who.key).points))) who = o;
      }
      const f = own ?? r.of.get(who.key);
      r.weight = Math.max(...all) - Math.min(...all) + ([...r.of.values()].some((x) => x.out) ? 1.5 : 0);
      r.text = f.text;
      r.who = own ? "" : who.short;
      r.source = f.source;
    }
    if (kind === "wait") return list.filter((r) => r.of.has(answer.key)).map((r) => ({ ...r, head: "What decides it" }));
    if (kind === "day") return answer.key === "none" ? [] : [...list, { rule: "Bare ground", text: bareDay(answer) }];
    return list.filter((r) => r.weight > 0.05).sort((a, b) => b.weight - a.weight).slice(0, mostReasons);
  };
  // The last thing that is said of a day is what it would be on bare ground.
  const bareDay = ({ day, bare }) => {
    const gain = number(bare) - number(day), days = `${Math.abs(gain)} ${Math.abs(gain) === 1 ? "day" : "days"}`;
    return never(bare) ? "On bare ground no day of the year will do." : !gain ? "On bare ground it is the same day: this film gains none."
      : gain > 0 ? `On bare ground it would be ${sayDay(bare)}: this film gains ${days}.` : `On bare ground it would be sooner, ${sayDay(bare)}: this film costs ${days}.`;
  };
  // why is the reason that stands beside an answer: where nearly all would do, what counts most.
  const why = (answer) => {
    const [first] = ["surface", "thickness", "tape"].includes(asks()) ? reasons(answer) : [];
    return first && !first.who ? first.text : answer.text;
  };
  // sums are the points of all options after so many reasons; with the last one come the rest.
  const sums = (n, list) => {
    const first = new Set(list.slice(0, n).map((r) => r.rule)), all = n >= list.length;
    return told.options.map((o, i) => {
      const mine = o.why.filter((f) => all || first.has(f.rule));
      return { ...o, i, sum: mine.reduce((a, f) => a + f.points, 0), gone: mine.some((f) => f.out) };
    }).sort((a, b) => a.gone - b.gone || b.sum - a.sum || a.i - b.i);
  };
  const race = (n, list) => {
    const order = sums(n, list), before = sums(n - 1, list), points = order.filter((o) => !o.gone).map((o) => o.sum);
    const low = Math.min(0, ...points), high = Math.max(...points), lead = order[0];
    const leads = order[1] && !order[1].gone && lead.sum - order[1].sum < 0.005 ? "None leads yet." : n > 1 && before[0].key !== lead.key ? `${lead.short} leads now. Before it was ${before[0].short}.` : `${lead.short} leads.`;
    if (many()) order.length = inFront;
    return {
      chart: el("div", { class: "ballots race" }, ...order.map((o) => el("div", { class: "ballot" + (o === lead ? " told" : "") + (o.gone ? " gone" : ""), "data-key": o.key },
        el("span", { class: "ballot-draw", html: ballot(o.i, o.gone ? 0 : (o.sum - low) / (high - low || 1)) }), el("span", { class: "ballot-name" }, o.short)))),
      says: leads + (many() ? " The first six are shown." : ""),
    };
  };

  // --- Steps ----------------------------------------------------------------------------
  const kinds = () => ["meet", "guess", "answer", "bed", ...reasons().map((_, i) => i), "turn", "lesson"];
  const meet = (i) => {
    at = Math.min(Math.max(i, 0), pack.stops.length - 1);
    question = Math.max(0, numberOf(stop()));
    again(0);
  };
  // passing over: a field that is refused has no day to ask for.
  const again = (to, passing = 0) => {
    step = to;
    votes = {};
    told = null;
    page.slides?.end();
    wide = false;
    const [mine, q] = [at, question];
    ask(fieldOf(pack.stops[at]), question).then((answer) => {
      if (mine !== at || q !== question) return;
      if (answer.wrong) problems = [answer.wrong];
      else if (passing && answer.key === "none" && asks() === "day") return ways.a(passing < 0);
      else told = answer;
      draw();
    });
    draw();
  };
  // move goes on or back; past the lesson comes the next field whose lesson holds.
  const move = (by) => {
    if (mode !== "talk") { mode = "talk"; return draw(); }
    const end = kinds().length, next = step + by;
    if (by > 0 && step > 0 && !told) return;
    if (kinds()[step] === "turn") page.slides?.end();
    if (next < 0 || next >= end) {
      return farm(by);
    }
    step = next;
    draw();
  };
  // Keys that lead elsewhere: to the next farm and the one before, the lesson, another question.
  const farm = (by) => {
    let to = at;
    do to += by; while (to >= 0 && to < pack.stops.length && out(to));
    if (to >= 0 && to < pack.stops.length) meet(to);
  };
  const ways = {
    n: () => farm(1),
    p: () => farm(-1),
    l: () => { if (told) { page.slides?.end(); step = kinds().length - 1; draw(); } },
    a: (back) => { question = (question + (back ? questions.length - 1 : 1)) % questions.length; again(1, back ? -1 : 1); },
  };
  const whose = () => stop().farm ? "An invented farm with invented weather." : "A field of whoever made this pack.";

  const scene = () => {
    const s = stop(), kind = kinds()[step], list = reasons(), state = stateOf(at);
    if (kind === "meet") {
      return [el("h2", asTyped("title"), s.title), state?.holds === false ? para("room-sum", place ? "In your own place this lesson does not hold, so it is left out." : "With this version this lesson no longer holds, so it is left out.") : "",
        told ? el("ul", { class: "room-facts" }, ...told.facts.map(([words, label]) => el("li", {}, el("b", {}, words), " ", label))) : para("room-text", problems[0] ?? waiting), para("help", place && s.farm ? `An invented farm, set in another place. ${place}` : whose()), place ? "" : para("help", "N goes to the next farm, P to the one before, A to another question, L to the lesson."),
        el("div", { class: "room-doing" }, s.farm ? el("a", { href: `${base}/handout/${s.farm}`, target: "_blank" }, "Handout") : "",
          press("room-place", "In our own place", () => { mode = "place"; draw(); }), press("room-pack", "Make a pack", () => { mode = "pack"; draw(); }), press("room-speaker", "Speaker’s window", speaker))];
    }
    if (!told) return [el("h2", asTyped("title"), s.title), para("room-text", problems[0] ?? waiting)];
    if (kind === "guess") {
      const all = hands();
      return [el("div", { class: "room-head" }, el("div", {}, el("h2", {}, questions[question][1]), para("room-text", !told.options.length ? `${told.name}. ${told.text}` : all ? `${handsOf(all)}. Tap for each, hold for ten.` : asks() === "day" ? "Show of hands: the nearest day counts. Tap for each, hold for ten." : "Show of hands: tap for each, hold for ten.")),
        all ? press("room-less", "One less", () => vote(last, -1)) : "", told.options.length ? code() : ""), told.options.length ? ballots(false) : ""];
    }
    if (kind === "answer") {
      const all = hands(), mine = votes[told.options.findIndex((o) => o.key === told.key)] ?? 0;
      return [el("h2", {}, questions[question][1]), el("p", { class: "room-answer", id: "room-answer" }, `${told.name}.`), para("room-dates", told.dates), all && asks() === "day" ? "" : para("room-text", why(told)), para("help", asks() === "verdict" ? told.gates[0]?.source : ""),
        all ? para("room-sum", !mine ? asks() === "day" ? "None of you came nearest." : "None of you said so." : asks() === "day" ? `${mine} of ${all} of you came nearest.` : `${mine} of ${all} of you said so.`) : "", told.options.length ? el("div", { class: "room-open" }, ballots(true)) : ""];
    }
    if (typeof kind === "number") {
      const r = list[kind], raced = r.of && !r.head && asks() !== "day" ? race(kind + 1, list) : null;
      const text = r.who ? [el("span", {}, r.who), el("span", {}, ": "), el("span", {}, r.text)] : [r.text]; // said one by one
      return [el("h2", {}, r.head ?? r.rule), para("room-sum", raced ? `${kind + 1} of ${list.length}: what counts most comes first.` : ""), el("p", { class: "room-answer room-why", id: "room-answer" }, ...text), raced ? para("room-text", raced.says) : "", raced?.chart ?? (asks() === "day" ? el("div", { class: "room-open" }, ballots(true)) : ""), para("help", raced ? "" : r.source)];
    }
    if (kind !== "lesson") return page.slides?.[kind]() ?? [el("h2", asTyped("title"), s.title), para("room-text", "Being fetched …")];
    return [el("h2", {}, "The lesson"), el("p", { class: "room-answer room-lesson", id: "room-answer", ...asTyped("lesson") }, s.lesson ?? `${told.name}.`), page.slides?.proof() ?? "", para("help", whose())];
  };
  const waiting = "Working out the soil’s warmth of this farm …";

  // --- The room's own place -------------------------------------------------------------
  // settle puts all fields into a place that was found, leave takes them back.
  const settle = async (i) => {
    place = "";
    [place, far = ""] = table(await work(() => call("take", "", i)))[0];
    known.clear();
    check();
    again(0);
    mode = "place";
    draw();
  };
  const talk = () => { mode = "talk"; meet(stops().findIndex((_, i) => !out(i))); };
  const leave = () => {
    place = "";
    known.clear();
    checks = [];
    if (pack !== ours) check();
    mode = "talk";
    meet(at);
  };
  const placePanel = () => {
    if (page.place) return page.place();
    part({{.Place}});
    return [el("h2", {}, "In our own place")];
  };

  // --- Packs ------------------------------------------------------------------------------
  // open takes a pack only where the engine's own reader finds nothing wrong with it.
  const open = async (text, from) => {
    const wrong = await work(() => call("read", text));
    if (wrong) {
      problems = wrong.split("\n");
      mode = "pack";
      return draw();
    }
    problems = [];
    pack = JSON.parse(text);
    mode = "talk";
    place = "";
    known.clear();
    check();
    meet(0);
  };
  // What comes late is fetched when it is wanted: the form in which a pack is made (pack.js),
  // the bed and the slider (slides.js).
  const wanted = new Set();
  const part = (src) => {
    if (wanted.has(src)) return;
    wanted.add(src);
    page.tools ??= { questions, el, press, pick, para, work, call, table, input, ask, askRaw, whole, stop, numberOf, fieldOf, open, draw, ours, ground, sayDay, why, number, lineOf, stops, stateOf, asTyped, settle, talk, leave, pack: () => pack, problems: () => problems, door: (...args) => door(...args),
      state: () => ({ told, question, votes, metric, place, far, room, kind: mode === "talk" ? kinds()[step] : mode }) };
    document.head.append(el("script", { src, onload: () => { if (mode !== "talk" || ["bed", "turn"].includes(kinds()[step]) || asks() === "day") draw(); }, onerror: () => wanted.delete(src) }));
  };
  const desk = () => {
    if (page.desk) return page.desk();
    part({{.Desk}});
    return [el("h2", {}, "Make a pack")];
  };

  // --- The speaker's window -----------------------------------------------------------
  const channel = typeof BroadcastChannel === "function" ? new BroadcastChannel("film-furrow-room") : null;
  const speaker = () => window.open(`${base}/speaker`, "film-furrow-speaker", "width=900,height=700");
  const post = () => {
    if (!channel || !pack) return;
    const all = kinds(), next = all[step + 1], s = stop(), list = reasons();
    const names = { guess: questions[question][1], answer: told ? `${told.name}.` : "", bed: "The bed we would make", turn: "Turn one thing", lesson: "The lesson" };
    const after = next === undefined && pack.stops[at + 1];
    channel.postMessage({ typed: { head: typed("title"), notes: typed("notes"), lesson: typed("lesson"), next: after && typed("title", after) }, shown: { head: s.title, step: `${step + 1} of ${all.length}`, notes: s.notes ?? "", lesson: s.lesson ?? "", next: next === undefined ? stops()[at + 1]?.title ?? "" : typeof next === "number" ? list[next].rule : names[next] } });
  };
  if (channel) channel.onmessage = ({ data }) => {
    if (!room || !pack) return;
    if (data.ask) post();
    if (data.by) move(data.by);
  };

  // --- All of it ----------------------------------------------------------------------------
  const draw = () => {
    if (!room) return;
    const focus = document.activeElement?.id, panel = mode !== "talk";
    const inside = mode === "place" ? placePanel() : mode === "pack" ? desk() : scene();
    const kind = kinds()[step];
    const main = el("main", { id: "main", tabindex: -1, class: `room-main ${panel ? `in-${mode}` : `step-${typeof kind === "number" ? "reason" : kind}`}`, "aria-live": panel ? "off" : "polite" }, ...inside);
    room.classList.toggle("making", mode === "pack");
    // Who changes places with whom is seen, unless the reader wants no motion.
    const places = () => [...room.querySelectorAll(".race [data-key]")].map((e) => [e, e.dataset.key, e.getBoundingClientRect().left]);
    const before = new Map(places().map(([, key, left]) => [key, left]));
    room.querySelector("main").replaceWith(main);
    room.querySelector("header")?.remove();
    room.querySelector("footer")?.remove();
    const names = stops().map((s, i) => `${out(i) ? "Left out: " : ""}${i + 1}. ${s.title}`);
    main.before(el("header", {}, el("h1", { class: "for-readers" }, "Film & Furrow in a workshop"), el("div", { class: "room-top" }, pick("room-farm", "Farm", names, at, meet),
      pick("room-question", "Question", questions.map(([, words]) => words), question, (q) => { question = q; again(1); }))));
    [...document.getElementById("room-farm").options].forEach((option, i) => { option.translate = !typed("title", pack.stops[i]); });
    main.after(el("footer", { class: "room-foot" }, press("room-back", "Back", () => move(-1)), el("span", { id: "room-step" }, `${step + 1} of ${kinds().length}`),
      el("a", { class: "room-leave", id: "room-leave", href: `${base}/` }, "Leave"), press("room-next", "Next", () => move(1))));
    if (!matchMedia("(prefers-reduced-motion: reduce)").matches) for (const [e, key, left] of places()) {
      if (before.has(key) && before.get(key) !== left) e.animate([{ transform: `translateX(${before.get(key) - left}px)` }, { transform: "none" }], { duration: 700, easing: "ease-in-out" });
    }
    floor.disconnect();
    for (const name of main.querySelectorAll(".ballot-name, .room-now, .room-now > *")) floor.observe(name);
    if (step > 0) part({{.Slides}});
    page.slides?.paint();
    post();
    if (focus) document.getElementById(focus)?.focus({ preventScroll: true });
  };

  // The ground is as high as the longest name on it, in whatever language it is said.
  // What is said beside the slider is left out rather than cut off.
  const floor = new ResizeObserver(() => {
    const now = room?.querySelector(".room-now");
    if (now) {
      now.lastChild.hidden = false;
      now.lastChild.hidden = now.scrollHeight > now.clientHeight + 1;
    }
    for (const list of document.querySelectorAll(".ballots")) list.style.setProperty("--ground", `${100 * (Math.max(...[...list.querySelectorAll(".ballot-name")].map((n) => n.offsetHeight)) + 4) / innerWidth}vw`);
  });
  addEventListener("keydown", (event) => {
    if (!room || !pack || event.ctrlKey || event.metaKey || event.altKey) return;
    const { key } = event, on = event.target.closest?.("input, select, textarea") ? "field" : event.target.closest?.("button, a") ? "button" : "";
    const typed = on === "field" && event.target.type !== "range"; // a slider takes arrows, no letters
    const look = { b: "black-on-white", w: "white-on-black" }[key.toLowerCase()];
    let by = 0;
    if (key === "PageDown" || on !== "field" && (key === "ArrowRight" || key === "ArrowDown")) by = 1;
    else if (key === "PageUp" || on !== "field" && (key === "ArrowLeft" || key === "ArrowUp") || key === " " && on !== "field" && event.shiftKey) by = -1;
    else if (key === " " && on === "") by = 1;
    else if (key === "Escape") {
      if (wide || mode !== "talk") { wide = false; mode = "talk"; draw(); }
      else document.getElementById("room-leave").click();
      return;
    } else if (!typed && look) {
      const root = document.documentElement, is = !root.classList.contains(look);
      root.classList.remove("black-on-white", "white-on-black");
      return root.classList.toggle(look, is);
    } else if (!typed && kinds()[step] === "turn" && { "+": 1, "-": 1, t: 1 }[key]) return page.slides?.key(key);
    else if (!typed && mode === "talk" && ways[key.toLowerCase()]) return ways[key.toLowerCase()](event.shiftKey);
    else if (!typed && mode === "talk" && kinds()[step] === "guess" && /^(\d|Backspace)$/.test(key)) return key === "Backspace" ? vote(last, -1) : count(key, event.repeat);
    else if (!typed && key === "s") return speaker();
    else if (!typed && key === "q" && kinds()[step] === "guess") { wide = !wide; return draw(); }
    else return;
    if (mode === "pack") return; // a form, which its own keys go through
    event.preventDefault();
    move(by);
  });

  // Units are those that were chosen on this device, else those of the reader's country.
  const metricUnits = () => {
    try {
      const kept = JSON.parse(localStorage.getItem("film-furrow/field"));
      if (kept) return kept.system === 0;
    } catch { /* nothing kept, or nothing that can be read */ }
    return page.metric;
  };

  const start = async () => {
    const is = page.status.room === true;
    if (is === (room !== null)) return;
    document.body.classList.toggle("in-room", is);
    if (!is) { room = null; return; }
    door = page.door;
    room = document.querySelector(".room");
    place = "";
    metric = metricUnits();
    if (metric) door("metric", "");
    pack = ours = await (await fetch({{.Pack}})).json();
    const sealed = location.hash.startsWith("#p=") ? location.hash.slice(3) : "";
    meet(0);
    if (!sealed) return;
    const text = door("unseal", sealed);
    if (text) open(text);
    else {
      problems = ["The link was cut or mistyped."];
      mode = "pack";
      draw();
    }
  };
  document.addEventListener("filmfurrow", start);
})();
