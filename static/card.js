// card.js tells the page around a framed card how tall the card is: a number of
// CSS pixels and nothing else.
(() => {
  "use strict";
  if (parent === window) return;
  let last = 0;
  const tell = () => {
    const card = document.querySelector(".card");
    const height = card ? Math.ceil(card.getBoundingClientRect().bottom + scrollY) : 0;
    // Until the answers are there it is a line or nothing: no frame is to shrink to that.
    if (height >= 200 && height !== last) parent.postMessage(last = height, "*");
  };
  const start = () => {
    new ResizeObserver(tell).observe(document.body);
    tell();
  };
  if (document.body) start();
  else addEventListener("DOMContentLoaded", start);
})();
