// boot.js runs before anything else on the page, while the HTML is still being
// read. It mends what would otherwise stop the program before it starts, and
// keeps what is typed until the program is there to take it.
(() => {
  "use strict";
  const root = document.documentElement;

  // What the page knows about itself. Other scripts and the program read it as
  // window.filmfurrow; each change is told with the event "filmfurrow".
  const status = { start: "waking", whole: true, offline: "unknown", storage: "device", update: false };
  const tell = (change) => {
    Object.assign(status, change);
    for (const key of ["start", "offline", "storage"]) root.dataset[key] = status[key];
    root.dataset.update = status.update ? "ready" : "none";
    document.dispatchEvent(new CustomEvent("filmfurrow", { detail: { ...status } }));
  };
  window.filmfurrow = { status, tell };
  tell({});

  // --- The address -----------------------------------------------------------
  // Go refuses an address with a broken percent escape and the framework then
  // stops. A percent sign that starts no escape is written as %25. An address
  // that names the file ("/index.html", "/card.html") becomes the page's own.
  const mend = () => {
    const { pathname, search, hash } = location;
    const whole = (s) => s.replace(/%(?![0-9A-Fa-f]{2})/g, "%25");
    const path = whole(pathname).replace(/\/index\.html$/, "/").replace(/\.html$/, "");
    if (path !== pathname || whole(search) !== search || whole(hash) !== hash) {
      history.replaceState(history.state, "", path + whole(search) + whole(hash));
    }
  };
  mend();
  addEventListener("popstate", mend);
  addEventListener("hashchange", mend);

  // --- The program ------------------------------------------------------------
  // take asks for the program and compiles it while it comes. The reply is
  // passed on under its right content type, so a host that sends a wrong one does not
  // keep the program from starting. page.said hears how many bytes have come.
  const page = window.filmfurrow;
  page.said = () => {};
  page.got = 0;
  page.take = async (address, options) => {
    page.got = 0;
    const reply = await fetch(address, options).catch(() => ({ status: 0 }));
    if (!reply.ok) throw Object.assign(new Error("not given"), { status: reply.status });
    const counter = new TransformStream({
      transform(chunk, out) {
        page.said(page.got += chunk.byteLength);
        out.enqueue(chunk);
      },
    });
    const source = new Response(reply.body.pipeThrough(counter), { headers: { "Content-Type": "application/wasm" } });
    return WebAssembly.compileStreaming ? WebAssembly.compileStreaming(source) : WebAssembly.compile(await source.arrayBuffer());
  };
  // Whose country has other units than the page's, unless they are chosen, sees metric ones
  // (only the United States, Liberia and Myanmar have not gone over to them).
  page.metric = /-(?!US|LR|MM)[A-Z]{2}$/.test(navigator.language);
  // It is asked for at once: its first bytes come when the style sheet, which was asked for
  // before it, is there. start.js may run seconds later on a slow device.
  // Search engines read the text; "?wasm=false" shows a reader the text alone.
  page.textOnly = /bot|crawler|spider|crawling/i.test(navigator.userAgent) || new URLSearchParams(location.search).get("wasm") === "false";
  // A browser is new enough if it runs a module that uses what ours does (counts cut
  // off at the ends of their range, signs extended, memory filled at once), under our
  // policy: one that does not know 'wasm-unsafe-eval' runs none (WebKit still compiles it).
  try {
    new WebAssembly.Instance(new WebAssembly.Module(Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 1, 124, 0, 3, 2, 1, 0, 5, 3, 1, 0, 0, 10, 19, 1, 17, 0, 32, 0, 252, 6, 194, 26, 65, 0, 65, 0, 65, 0, 252, 11, 0, 11)));
    page.able = "pipeThrough" in ReadableStream.prototype && typeof TransformStream === "function";
  } catch { /* old.js says so */ }
  if (!page.textOnly && page.able) {
    const address = document.currentScript.dataset.program;
    page.program = page.take(address, { priority: "low" });
    page.program.catch(() => { /* said where it is waited for */ });
  }

  // --- Storage ---------------------------------------------------------------
  // Where the browser refuses storage (a sandboxed frame, a strict setting),
  // reading it throws. A stand-in in memory lets the page work for this visit.
  const standIn = () => {
    const kept = new Map();
    return {
      get length() { return kept.size; },
      key: (i) => [...kept.keys()][i] ?? null,
      getItem: (k) => kept.get(String(k)) ?? null,
      setItem: (k, v) => { kept.set(String(k), String(v)); },
      removeItem: (k) => { kept.delete(String(k)); },
      clear: () => { kept.clear(); },
    };
  };
  for (const name of ["localStorage", "sessionStorage"]) {
    try {
      window[name].getItem("film-furrow");
    } catch {
      Object.defineProperty(window, name, { value: standIn(), configurable: true });
      if (name === "localStorage") tell({ storage: "memory" });
    }
  }

  // --- What is typed before the program runs -----------------------------------
  // The framework replaces the prerendered page with its own copy, so each
  // change and the focus are remembered here and given to that copy.
  const typed = new Map();
  const opened = new Map();
  let handedOver = false;
  const nameOf = (el) => {
    if (el.type === "radio") return el.name && `input[type=radio][name="${CSS.escape(el.name)}"][value="${CSS.escape(el.value)}"]`;
    if (el.id) return `#${CSS.escape(el.id)}`;
    if (el.tagName === "SUMMARY" && el.parentElement.id) return `#${CSS.escape(el.parentElement.id)} > summary`;
    return el.name && `[name="${CSS.escape(el.name)}"]`;
  };
  const remember = (event) => {
    const el = event.target;
    if (handedOver || !event.isTrusted || !("value" in el) || el.type === "file") return;
    const key = nameOf(el);
    if (key) typed.set(el.type === "radio" ? `radio ${el.name}` : key, { key, value: el.value, checked: el.checked });
  };
  // What lies below the form is replaced part by part, until all is drawn.
  const settled = () => handedOver && status.whole;
  const rememberOpen = (event) => {
    if (!settled() && event.target.id) opened.set(event.target.id, event.target.open);
  };
  let moved = false;
  for (const kind of ["wheel", "touchmove", "keydown", "pointerdown"]) addEventListener(kind, () => { moved = true; }, { capture: true, passive: true, once: true });
  addEventListener("input", remember, true);
  addEventListener("change", remember, true);
  addEventListener("toggle", rememberOpen, true);

  const give = (el, { value, checked }) => {
    const before = el.type === "checkbox" || el.type === "radio" ? el.checked : el.value;
    if (el.type === "checkbox" || el.type === "radio") el.checked = checked;
    else el.value = value;
    if (before === (el.type === "checkbox" || el.type === "radio" ? el.checked : el.value)) return;
    el.dispatchEvent(new Event("input", { bubbles: true }));
    el.dispatchEvent(new Event("change", { bubbles: true }));
  };
  const handOver = (focused) => {
    for (const kept of typed.values()) {
      const el = document.querySelector(kept.key);
      if (el) give(el, kept);
    }
    unfold();
    refocus(focused);
  };
  const unfold = () => {
    for (const [id, open] of opened) {
      const el = document.getElementById(id);
      if (el && el.open !== open) el.open = open;
    }
  };
  const refocus = (focused) => {
    const el = focused && document.querySelector(focused.key);
    if (el && el !== document.activeElement) {
      el.focus({ preventScroll: true });
      try { el.setSelectionRange(focused.from, focused.to); } catch { /* this control has no caret */ }
    }
  };

  // The framework starts by replacing the first element of the body. start.js calls
  // this, before it lets the program run.
  page.watchForStart = () => {
    const first = document.body.firstElementChild;
    let focused = null;
    addEventListener("focusin", (event) => {
      const key = !settled() && nameOf(event.target);
      if (key) focused = { el: event.target, key };
    }, true);
    addEventListener("focusout", (event) => {
      // Only the reader going elsewhere counts, not the page being replaced.
      const el = event.target;
      setTimeout(() => { if (focused?.el === el && el.isConnected && document.activeElement !== el) focused = null; });
    }, true);
    document.addEventListener("selectionchange", () => {
      const el = document.activeElement;
      if (settled() || !focused || !el) return;
      try { focused.from = el.selectionStart; focused.to = el.selectionEnd; } catch { /* no caret */ }
    });
    new MutationObserver((_, observer) => {
      if (document.body.firstElementChild === first) return;
      observer.disconnect();
      const hadFocus = focused;
      handedOver = true;
      handOver(hadFocus);
      tell({ start: "ready" });
    }).observe(document.body, { childList: true });
    document.addEventListener("filmfurrow", function whole() {
      if (!settled() || status.start !== "ready") return;
      document.removeEventListener("filmfurrow", whole);
      unfold();
      if (document.activeElement === document.body) refocus(focused);
      // What an address names has moved down while the parts above it were drawn.
      if (location.hash && !moved) document.getElementById(location.hash.slice(1))?.scrollIntoView();
    });
  };
})();
