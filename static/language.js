// language.js chooses the language that the page is read in: the reader's choice, else
// the browser's. English is in the page; what says another is fetched when it is wanted.
(() => {
  "use strict";
  const catalogues = {{.Catalogues}}, script = {{.Words}}, key = "film-furrow/language";
  const chosen = () => {
    try {
      return localStorage.getItem(key);
    } catch { /* no storage: the browser's language */ }
  };
  const first = () => chosen() ?? (navigator.languages ?? []).map((name) => name.split("-")[0]).find((name) => name === "en" || name in catalogues) ?? "en";

  let loaded = null;
  const words = () => loaded ??= new Promise((done, failed) => {
    const tag = document.createElement("script");
    tag.src = script;
    tag.onload = done;
    tag.onerror = () => { loaded = null; failed(); };
    document.head.append(tag);
  });
  const speak = async (name) => {
    const root = document.documentElement;
    if (name in catalogues) {
      // A device without a network and without the catalogue stays with English.
      try {
        const [text] = await Promise.all([fetch(catalogues[name]).then((reply) => reply.ok ? reply.text() : Promise.reject()), words()]);
        window.filmfurrow.words.speak(name, text);
      } catch { return; }
    } else {
      window.filmfurrow?.words?.speak("en");
    }
    for (const button of document.querySelectorAll("[data-language]")) button.setAttribute("aria-pressed", button.dataset.language === root.lang);
    document.dispatchEvent(new CustomEvent("filmfurrow-language", { detail: root.lang }));
  };
  addEventListener("click", (event) => {
    const button = event.target.closest?.("[data-language]");
    if (!button) return;
    try {
      localStorage.setItem(key, button.dataset.language);
    } catch { /* for this page, then */ }
    speak(button.dataset.language);
  });
  // The menu is drawn anew now and then, and does not know.
  addEventListener("toggle", (event) => {
    for (const button of event.target.querySelectorAll?.("[data-language]") ?? []) button.setAttribute("aria-pressed", button.dataset.language === document.documentElement.lang);
  }, true);
  if (first() !== "en") speak(first());
})();
