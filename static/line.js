// line.js puts the ballots of days on a line, each where its day is in the season, and opens
// the answer on it: from when the bed under the film is ready, and bare ground. It is fetched
// by room.js, whose ballots it takes, when a room asks for a day.
(() => {
  "use strict";
  const page = window.filmfurrow, { el, sayDay, number } = page.tools;
  const beyond = 6; // days that a line goes on at each end
  const percent = (n) => `${Math.round(100 * n) / 100}%`;
  page.line = (list, told, open) => {
    const days = told.options.map((o) => number(o.day));
    if (!days.length) return list;
    const from = days[0] - beyond, all = days.at(-1) + beyond - from, at = (day) => 100 * (day - from) / all;
    list.classList.add("on-line");
    [...list.children].forEach((ballot, i) => { ballot.style.left = percent(at(days[i])); });
    const ticks = Array.from({ length: all - 1 }, (_, n) => `<rect x="${percent(at(from + n + 1))}" width="2" height="${[1, 10, 20].includes(new Date((from + n + 1) * 86400000).getUTCDate()) ? "100%" : "45%"}"/>`).join("");
    const rule = el("div", { class: "day-rule", html: `<svg aria-hidden="true">${ticks}</svg>` });
    const strip = (film, name, iso) => {
      const share = Math.min(100, Math.max(0, at(number(iso)))), left = share > 45;
      const words = el("span", { class: "day-name" }, el("span", {}, name), el("span", {}, ": "), el("b", {}, sayDay(iso)));
      if (left) words.style.right = percent(100 - share); // in what is not open yet, where that has room
      else words.style.left = percent(share);
      return el("div", { class: "day-strip" }, el("span", { html: `<svg class="room-band" aria-hidden="true"><rect class="${film}" x="${percent(share)}" width="${percent(100 - share)}" height="100%"/></svg>` }), words);
    };
    const opened = open ? [strip(`m-film m-${told.film}`, told.cover, told.day), strip("d-soil", "Bare ground", told.bare)] : [];
    return el("div", { class: "day-line" }, list, rule, ...opened);
  };
})();
