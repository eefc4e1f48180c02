// old.js is written in the JavaScript of 2009, so that a browser which cannot even read
// the other scripts says so, rather than leave its reader waiting. What the program needs
// came with Safari 16, Chrome 97 and Firefox 102: a content policy that lets WebAssembly
// run and nothing else (MDN browser compatibility data, script-src, wasm-unsafe-eval);
// the rest is older.
(function () {
  "use strict";
  var page = window.filmfurrow, strip = document.getElementById("strip"), words = document.getElementById("strip-words");
  if (!strip || page && (page.textOnly || page.able && window.goappNav)) return;
  // Whoever has this function reads our scripts: then one of them did not come.
  words.textContent = [].at && (!page || page.able)
    ? "Part of this page did not arrive. Load it again. The worked example can be read meanwhile."
    : "This browser is too old; it needs Safari 16, Chrome 97 or Firefox 102 or later, with WebAssembly allowed. The worked example on this page can be read in full.";
  strip.className += " strip-urgent";
  strip.removeAttribute("hidden");
  if (page) page.tell({ start: "failed" });
})();
