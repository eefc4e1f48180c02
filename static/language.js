// language.js chooses the language that the page is read in: the reader's choice, else
// the browser's. English is in the page; what says another is fetched when it is wanted.
(() => {
  "use strict";
  const catalogues = {{.Catalogues}}, script = {{.Words}}, key = "film-furrow/language";
  const sheetKey = "film-furrow/sheet-language";
  const chosen = (what) => {
    try {
      return localStorage.getItem(what);
    } catch { /* no storage: the browser's language */ }
  };
  const keep = (what, name) => {
    try {
      if (name) localStorage.setItem(what, name);
    } catch { /* for this page, then */ }
  };
  const first = () => chosen(key) ?? (navigator.languages ?? []).map((name) => name.split("-")[0]).find((name) => name === "en" || name in catalogues) ?? "en";

  let loaded = null;
  const words = () => loaded ??= new Promise((done, failed) => {
    const tag = document.createElement("script");
    tag.src = script;
    tag.onload = done;
    tag.onerror = () => { loaded = null; failed(); };
    document.head.append(tag);
  });
  const known = { en: Promise.resolve() };
  const textOf = (address) => fetch(address).then((reply) => reply.ok ? reply.text() : Promise.reject());
  // The first part of a language says what most readers see first; the rest follows.
  const rest = async (name, parts) => {
    try {
      while (parts.length > 0) {
        const text = await textOf(parts[0]);
        await new Promise((go) => setTimeout(go)); // what was said is painted first
        parts.shift();
        window.filmfurrow.words.learn(name, text, parts.length > 0);
      }
    } catch {
      addEventListener("online", () => rest(name, parts), { once: true });
    }
  };
  const learn = (name) => {
    const [first, ...others] = catalogues[name] ?? [];
    return known[name] ??= Promise.all([textOf(first), words()]).then(([text]) => {
      window.filmfurrow.words.learn(name, text, others.length > 0);
      rest(name, others);
    }).catch((failure) => { delete known[name]; throw failure; });
  };

  // How the reader's country writes figures: that of the language in the browser's list, else
  // the browser's own.
  const locale = (name) => (navigator.languages ?? []).find((tag) => tag.split("-")[0] === name) ?? navigator.language;
  const otherwise = (name) => new Intl.NumberFormat(locale(name)).format(1.5) !== "1.5";

  const root = document.documentElement;
  const press = (list, what, name) => { for (const button of list) button.setAttribute("aria-pressed", button.dataset[what] === name); };
  const pressMenu = (within) => press(within.querySelectorAll?.("[data-language]") ?? [], "language", root.lang);

  // The laying sheet may be wanted in another language than the page, for the crew.
  let wanted = null, sheet = null;
  const wantSheet = (name) => learn(name).then(() => { wanted = name; turnSheet(); }, () => {});
  const turnSheet = () => {
    const section = sheet?.closest("section");
    if (!section) return;
    if (wanted !== null) window.filmfurrow.words?.speakIn(section, wanted);
    press(section.querySelectorAll("[data-sheet]"), "sheet", wanted ?? root.lang);
  };
  new MutationObserver(() => { // it is drawn anew now and then, and does not know
    const now = document.getElementById("sheet-en");
    if (now === sheet) return;
    sheet = now;
    turnSheet();
  }).observe(root, { subtree: true, childList: true });

  const speak = async (name) => {
    // A device without a network and without the catalogue stays with what it has.
    try {
      await (name === "en" && otherwise(name) ? words() : learn(name));
    } catch { return; }
    window.filmfurrow?.words?.speak(name, locale(name));
    pressMenu(document);
    turnSheet();
    document.dispatchEvent(new CustomEvent("filmfurrow-language", { detail: root.lang }));
  };
  addEventListener("click", (event) => {
    const { language, sheet: crew } = event.target.closest?.("[data-language], [data-sheet]")?.dataset ?? {};
    keep(crew ? sheetKey : key, crew ?? language);
    if (crew) wantSheet(crew);
    else if (language) speak(language);
  });
  // The menu is drawn anew now and then, and does not know.
  addEventListener("toggle", (event) => pressMenu(event.target), true);
  if (first() !== "en" || otherwise("en")) speak(first());
  const crew = chosen(sheetKey);
  if (crew === "en" || crew in catalogues) wantSheet(crew);
})();
