// words.js says the page, or a part of it, in another language. It is loaded only where
// one is read: the catalogue pairs each English sentence with its twin, "{}" marks what is put in,
// and what is put in is said by the same catalogue. wasm/tongue does the same for the
// command line; a test holds the two to one another.
(() => {
  "use strict";
  const page = window.filmfurrow ??= {}; // a page without a program has none
  const DEEPEST = 4, LONGEST = 120, AHEAD = 8; // as in wasm/tongue
  const SLICE = 8; // ms, less than a frame
  const ends = (text) => text.split(". ").length - 1;

  // --- The catalogue -----------------------------------------------------------
  const places = (text) => {
    const parts = text.split(/\{([^}]*)\}/);
    return { texts: parts.filter((_, i) => i % 2 === 0), marks: parts.filter((_, i) => i % 2) };
  };
  const firstWord = (text) => text.includes(" ") ? text.slice(0, text.indexOf(" ")) : "";

  const wordOf = (texts) => texts.flatMap((part, i) => part.split(" ").slice(1, i < texts.length - 1 ? -1 : undefined)).reduce((a, b) => b.length > a.length ? b : a, "");
  const nothingSaid = () => Array.from({ length: DEEPEST + 1 }, () => new Map());

  // A catalogue comes in parts; each is added to what is there.
  const catalogue = () => {
    const c = { exact: new Map(), by: new Map(), open: new Map(), said: nothingSaid() };
    const begin = []; // those that begin with a place
    c.add = (text) => {
      const touched = new Set();
      let english = "";
      for (const line of text.split("\n")) {
        if (!line.startsWith("= ")) {
          if (line !== "" && !line.startsWith("# ")) english = line;
          continue;
        }
        if (!english.includes("{")) { // most have no place
          c.exact.set(english, line.slice(2));
          continue;
        }
        const { texts, marks } = places(english), twin = places(line.slice(2));
        const word = firstWord(texts[0]);
        if (word !== "" && !c.by.has(word)) c.by.set(word, []);
        const list = word === "" ? begin : c.by.get(word);
        touched.add(list);
        list.push({ english, texts, marks, fixed: texts.join("").length + marks.join("").length, any: marks.includes("*"), ends: ends(texts.join("")), least: texts[0].length + texts.at(-1).length + marks.length, twin: twin.texts, order: twin.marks.map((m, i) => /^\d+$/.test(m) ? m - 1 : i) });
      }
      for (const list of touched) list.sort((a, b) => b.fixed - a.fixed || (a.english < b.english ? -1 : 1)); // the fullest is tried first
      // Those that begin with a place are found by their longest word, or always tried.
      c.open = new Map([["", []]]);
      for (const [rank, s] of begin.entries()) {
        const word = wordOf(s.texts);
        if (!c.open.has(word)) c.open.set(word, []);
        c.open.get(word).push(Object.assign(s, { rank }));
      }
      c.said = nothingSaid();
    };
    c.opening = (text) => {
      let found = c.open.get("");
      for (const word of text.split(" ")) {
        const list = word !== "" && c.open.get(word);
        if (list) found = found.concat(list);
      }
      return found === c.open.get("") ? found : found.sort((a, b) => a.rank - b.rank);
    };
    return c;
  };

  const encoder = new TextEncoder();
  const over = (text, most) => text.length > most || 3 * text.length > most && encoder.encode(text).length > most;

  const isNumber = (text) => !text.includes(", ") && !".,:".includes(text.at(-1)) && /[0-9]/.test(text) && /^[ .,:+\-–−±×/%°$½¼¾⅛⅜⅝⅞0-9]+$/.test(text);

  const speaker = (text) => {
    const c = catalogue();
    c.add(text);

    const put = (text, mark, depth) => {
      if (mark === "year" && !/^[0-9]{4}$/.test(text) || mark === "number" && !isNumber(text)) return "";
      if (isNumber(text)) return text;
      if (mark !== "*" && depth > 0 && (mark !== "sentence" && over(text, LONGEST) || text.includes(". "))) return "";
      return whole(text, depth) || (mark === "*" ? text : "");
    };

    const fill = (s, puts, place, rest, depth) => {
      const next = s.texts[place + 1];
      if (place === puts.length - 1) {
        const end = rest.length - next.length;
        if (end < 1 || rest.slice(end) !== next) return false;
        puts[place] = put(rest.slice(0, end), s.marks[place], depth + 1);
        return puts[place] !== "";
      }
      for (let end = 1; end + next.length <= rest.length; end++) {
        if (!rest.startsWith(next, end)) continue;
        puts[place] = put(rest.slice(0, end), s.marks[place], depth + 1);
        if (puts[place] !== "" && fill(s, puts, place + 1, rest.slice(end + next.length), depth)) return true;
      }
      return false;
    };

    const fits = (s, text, depth, within) => {
      const n = s.texts.length - 1;
      if (!s.any && s.ends !== within || text.length < s.least || !text.startsWith(s.texts[0]) || !text.endsWith(s.texts[n])) return "";
      for (let i = 1; i < n; i++) if (!text.includes(s.texts[i])) return "";
      const puts = new Array(n);
      if (!fill(s, puts, 0, text.slice(s.texts[0].length), depth)) return "";
      return s.order.map((place, i) => s.twin[i] + puts[place]).join("") + s.twin[n];
    };

    const oneOf = (list, text, depth) => {
      const within = ends(text);
      for (const s of list ?? []) {
        const twin = fits(s, text, depth, within);
        if (twin !== "") return twin;
      }
      return "";
    };
    const begun = (text, depth) => oneOf(c.by.get(firstWord(text)), text, depth);
    const open = (text, depth) => oneOf(c.opening(text), text, depth);

    const same = (text, depth) => c.exact.get(text) ?? (begun(text, depth) || open(text, depth));

    const headed = (text, turn) => text.replace(/[\p{L}\p{Nd}]/u, turn);
    const small = (r) => r.toLowerCase(), large = (r) => r.toUpperCase();
    const head = (text, depth) => {
      const twin = c.exact.get(text);
      if (twin !== undefined) return twin;
      const known = begun(text, depth);
      if (known !== "") return known;
      const first = String.fromCodePoint(text.codePointAt(0)), rest = text.slice(first.length);
      if (small(first) !== first) {
        const twin = same(small(first) + rest, depth);
        if (twin !== "") return headed(twin, large);
      }
      return open(text, depth) || (large(first) !== first ? headed(same(large(first) + rest, depth), small) : "");
    };

    // pair looks up a text without places, its first letter of either size.
    const pair = (text) => {
      const twin = c.exact.get(text);
      if (twin !== undefined) return twin;
      const first = String.fromCodePoint(text.codePointAt(0)), rest = text.slice(first.length);
      if (small(first) !== first) return headed(c.exact.get(small(first) + rest) ?? "", large);
      return large(first) !== first ? headed(c.exact.get(large(first) + rest) ?? "", small) : "";
    };

    const whole = (text, depth) => {
      if (depth > DEEPEST) return "";
      const known = c.said[depth].get(text);
      if (known !== undefined) return known;
      const cut = text.length > 1 && ".:,;".includes(text.at(-1));
      const bare = cut ? text.slice(0, -1) : text, end = cut ? text.at(-1) : "";
      const ended = (twin) => twin && twin + end;
      let twin = pair(text) || ended(pair(bare)) || head(text, depth);
      if (twin === "") twin = cut ? ended(head(bare, depth)) : head(text + ".", depth).replace(/\.$/, "");
      c.said[depth].set(text, twin);
      return twin;
    };

    const stopsOf = (text, most) => {
      const stops = [];
      for (let i = 1; i < text.length; i++) {
        if (stops.length === most) return stops;
        if (text[i] === " " && (".?!:;,)".includes(text[i - 1]) || text[i + 1] === "(")) stops.push(i);
      }
      stops.push(text.length);
      return stops;
    };

    const sentences = (text) => {
      let said = "", all = true;
      while (text !== "") {
        const stops = stopsOf(text, AHEAD);
        let twin = "", taken = 0;
        for (const within of [false, true]) { // those that end where a sentence does come first
          for (let i = stops.length - 1; i >= 0 && twin === ""; i--) {
            taken = stops[i];
            if (within === (taken < text.length && !".?!".includes(text[taken - 1]))) twin = put(text.slice(0, taken), "", 0);
          }
        }
        if (twin === "") [taken, twin, all] = [stops[0], text.slice(0, stops[0]), false];
        const rest = text.slice(taken).replace(/^ +/, "");
        said += twin + text.slice(taken, text.length - rest.length);
        text = rest;
      }
      return [said, all];
    };

    // say gives the twin of a text, and whether all of it has one.
    const say = (text) => {
      if (text.includes("\u00a0")) { // a figure and its unit are held together on a line
        const [said, all] = say(text.replaceAll("\u00a0", " "));
        return [said.replaceAll(" °", "\u00a0°"), all];
      }
      const inner = text.trim();
      if (inner === "" || isNumber(inner) || inner.includes("://") && !inner.includes(" ")) return [text, true];
      const twin = over(inner, 4 * LONGEST) ? "" : whole(inner, 0);
      const [said, all] = twin !== "" ? [twin, true] : sentences(inner);
      return [text.replace(inner, () => said), all];
    };
    return Object.assign(say, { add: c.add });
  };

  // --- The page ------------------------------------------------------------------
  // What stands on the page is said again as it comes; the English is remembered, so
  // that the reader can go back to it.
  const ATTRIBUTES = ["aria-label", "title", "placeholder", "alt", "aria-valuetext", "content"];
  const english = new WeakMap(); // of a text node, or of an element's attributes
  const speakers = new Map(); // by language
  const root = document.documentElement;

  // The page's language, or that of the part around an element; English has no speaker.
  const speakerOf = (element) => speakers.get(element.closest("[data-say]")?.dataset.say ?? root.lang);

  // What is in another language already, what the reader typed, and what is no text.
  const foreign = (own) => own !== root && !own.hasAttribute("data-say");
  const kept = (element) => !element.isConnected || element.closest("script, style, noscript, textarea, code, pre") !== null || element.closest("[translate]")?.translate === false || foreign(element.closest("[lang]"));

  // Figures are written as the reader's country writes them, as in wasm/tongue.
  const NUMBER = /(^|[^\d.,\p{L}])(\d{1,3}(?:,\d{3})+|\d+)(?:\.(\d+))?((?:[.,/]?\d)*\/?)/gu;
  const asTheyAre = (text) => text;
  let figures = asTheyAre, worth = /\p{L}/u; // what a text holds that may be said otherwise
  const marksOf = (locale) => {
    const format = (options) => new Intl.NumberFormat(locale, { numberingSystem: "latn", ...options });
    const mark = (type) => format().formatToParts(1234567.5).find((part) => part.type === type)?.value ?? "";
    return { group: mark("group"), decimal: mark("decimal"), atFour: format().formatToParts(1234).length > 1 };
  };

  // A text that the parts of a catalogue that are here cannot say whole waits for the rest.
  const twinOf = (source, element) => {
    const say = speakerOf(element), of = element.dataset.of;
    if (!say) return figures(source);
    const [said, all] = say(of ?? source);
    if (!all && say.more) return figures(source);
    return of ? said.match(/\p{L}\p{M}*/u)[0].toUpperCase() : figures(said); // a word's first letter stands for it
  };

  const sayText = (node) => {
    const had = english.get(node);
    const source = had && had.said === node.nodeValue ? had.source : node.nodeValue;
    if (!worth.test(source) || !node.parentElement || kept(node.parentElement)) return;
    const said = twinOf(source, node.parentElement);
    english.set(node, { source, said });
    if (node.nodeValue !== said) node.nodeValue = said;
  };

  const sayAttribute = (element, name) => {
    const now = element.getAttribute(name);
    if (now === null || name === "content" && element.name !== "description" || kept(element)) return;
    const all = english.get(element) ?? {};
    const source = all[name] && all[name].said === now ? all[name].source : now;
    const said = twinOf(source, element);
    all[name] = { source, said };
    english.set(element, all);
    if (now !== said) element.setAttribute(name, said);
  };

  const sayNode = (node) => {
    if (node.nodeType === Node.TEXT_NODE) sayText(node);
    else for (const name of ATTRIBUTES) if (node.hasAttribute(name)) sayAttribute(node, name);
  };
  const walkFrom = (node) => document.createTreeWalker(node, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);

  const sayAll = (root) => {
    if (root.nodeType === Node.TEXT_NODE) return sayText(root);
    if (root.nodeType !== Node.ELEMENT_NODE) return;
    const walk = walkFrom(root);
    for (let node = root; node; node = walk.nextNode()) sayNode(node);
  };

  const watch = new MutationObserver((changes) => {
    for (const change of changes) {
      if (change.type === "childList") change.addedNodes.forEach(sayAll);
      else if (change.type === "attributes") sayAttribute(change.target, change.attributeName);
      else sayText(change.target);
    }
  });

  const observe = () => {
    if (speakers.has(root.lang) || figures !== asTheyAre || document.querySelector("[data-say]")) watch.observe(root, { subtree: true, childList: true, characterData: true, attributes: true, attributeFilter: ATTRIBUTES });
  };

  const turn = (element, name) => {
    element.lang = name;
    watch.disconnect();
    sayAll(element);
    observe();
  };

  // What the reader sees is said at once. An element that lies out of sight is passed over with all
  // that is in it; all is measured before anything is said, so the page is laid out once.
  const sayWhatIsSeen = () => {
    const seen = [], walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT, (node) => {
      if (node.nodeType === Node.TEXT_NODE) return NodeFilter.FILTER_ACCEPT;
      const box = node.getBoundingClientRect();
      const near = box.width > 0 || box.height > 0 ? box.bottom > 0 && box.top < innerHeight
        : node.localName === "option" || node.checkVisibility() || getComputedStyle(node).display === "contents"; // what has no box of its own
      return near ? NodeFilter.FILTER_ACCEPT : NodeFilter.FILTER_REJECT;
    });
    while (walk.nextNode()) seen.push(walk.currentNode);
    seen.forEach(sayNode);
    sayAll(document.head); // the title
  };

  // again says all that stands there once more, some at a time, when more of a language is
  // known. What another call has said meanwhile stays as it is.
  const again = () => new Promise((done) => {
    const walk = walkFrom(root);
    const some = () => {
      if (!walk.currentNode.isConnected) walk.currentNode = root; // it was drawn anew meanwhile
      const until = performance.now() + SLICE;
      for (let node = walk.currentNode; node; node = walk.nextNode()) {
        sayNode(node);
        if (performance.now() > until) {
          watch.takeRecords(); // what has just been said is not to be said again
          setTimeout(some);
          return;
        }
      }
      watch.takeRecords();
      done();
    };
    some();
  });

  let passes = 0; // over what stands there, that have not come to their end
  const sayTheRest = async () => {
    passes++;
    await again();
    passes--;
  };

  page.words = {
    parse: speaker,
    // learn takes a part of a language's catalogue; English needs none. It tells by "more"
    // whether another part follows; with the last one all is said that had to wait.
    learn(name, text, more = false) {
      const known = speakers.get(name);
      if (known) known.add(text);
      else speakers.set(name, page.words.parse(text));
      const say = speakers.get(name);
      say.more = more;
      if (more) return;
      if (known) sayTheRest().then(() => { say.done = true; });
      else say.done = true;
    },
    // speak puts the page into a language, with figures as a country writes them: es-AR. What lies
    // out of sight follows, some at a time.
    speak(name, locale = name) {
      const { group, decimal, atFour } = marksOf(locale);
      figures = group === "," && decimal === "." ? asTheyAre : (text) => text.replace(NUMBER, (all, before, whole, part, after) =>
        after !== "" ? all : before + (whole.length === 5 && !atFour ? whole.replace(",", "") : whole.replaceAll(",", group)) + (part ? decimal + part : ""));
      worth = figures === asTheyAre ? /\p{L}/u : /[\p{L}\d]/u;
      if (name === "en") return turn(root, name);
      root.lang = name;
      watch.disconnect();
      sayWhatIsSeen();
      observe();
      sayTheRest();
    },
    // say says a text as the page would.
    say: (text) => figures(speakers.get(root.lang)?.(text)[0] ?? text),
    // speakIn puts a part of the page into a language of its own.
    speakIn(element, name) {
      element.dataset.say = name;
      turn(element, name);
    },
    // whole tells whether all of a language is here, and said.
    whole: (name) => name === "en" || passes === 0 && speakers.get(name)?.done === true,
  };
})();
