// speaker.js is the speaker's window: the room tells what it shows over a channel between
// windows of one browser, and hears whether to go on. No server takes part.
(() => {
  "use strict";
  const byID = (id) => document.getElementById(id);
  const began = Date.now();
  const tick = () => {
    const two = (n) => String(n).padStart(2, "0"), now = new Date(), run = Math.floor((Date.now() - began) / 1000);
    byID("speaker-clock").textContent = `${two(now.getHours())}:${two(now.getMinutes())} · ${two(Math.floor(run / 60))}:${two(run % 60)}`;
  };
  tick();
  setInterval(tick, 1000);
  if (typeof BroadcastChannel !== "function") return;
  const channel = new BroadcastChannel("film-furrow-room");
  channel.onmessage = ({ data }) => {
    if (!data.shown) return;
    for (const [name, text] of Object.entries(data.shown)) {
      const el = byID("speaker-" + name);
      if (!el) continue;
      el.translate = !data.typed[name]; // what somebody typed is never said in another language
      if (el.textContent !== text) el.textContent = text;
    }
  };
  const go = (by) => channel.postMessage({ by });
  byID("speaker-back").addEventListener("click", () => go(-1));
  byID("speaker-go").addEventListener("click", () => go(1));
  addEventListener("keydown", (event) => {
    const by = { PageDown: 1, ArrowRight: 1, ArrowDown: 1, PageUp: -1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (!by || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    go(by);
  });
  channel.postMessage({ ask: true });
})();
