// start.js brings the program in: it fetches the WebAssembly file, says in plain
// words how far it is, and starts it. Then it looks after the worker that keeps
// the site on the device, and says when a new version is waiting.
(() => {
  "use strict";
  const site = {{.Site}};
  const page = window.filmfurrow;
  page.watchForStart();
  const byID = (id) => document.getElementById(id);

  // --- The status strip ------------------------------------------------------
  // One strip at the foot of the page. It sticks to the window's edge only while
  // it has something to say that matters now.
  const strip = byID("strip"), words = byID("strip-words"), percent = byID("strip-percent"), acts = byID("strip-acts");
  const show = (text, { urgent = false, actions = [] } = {}) => {
    strip.hidden = false;
    strip.classList.toggle("strip-urgent", urgent);
    document.documentElement.classList.toggle("urgent", urgent); // nothing hides behind it
    if (words.textContent !== text) words.textContent = text;
    percent.textContent = "";
    acts.replaceChildren(...actions.map(([label, act]) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = label;
      button.addEventListener("click", act);
      return button;
    }));
  };

  // --- What the framework asks of the page -------------------------------------
  let installPrompt = null;
  const installed = () => matchMedia("(display-mode: standalone)").matches || navigator.standalone === true;
  Object.assign(window, {
    goappNav() {},
    goappOnUpdate() {},
    goappOnAppInstallChange() {},
    goappGetenv: (name) => site.env[name],
    goappIsAppInstalled: installed,
    goappIsAppInstallable: () => !installed() && installPrompt !== null,
    goappShowInstallPrompt: async () => {
      if (!installPrompt) return;
      installPrompt.prompt();
      await installPrompt.userChoice;
      installPrompt = null;
      window.goappOnAppInstallChange();
      quiet();
    },
    goappKeepBodyClean: () => () => {},
  });
  // The browser's own banner would come at a time of its choosing, so the offer
  // stands in the strip instead, once the site is kept on the device.
  addEventListener("beforeinstallprompt", (event) => {
    event.preventDefault();
    installPrompt = event;
    window.goappOnAppInstallChange();
    quiet();
  });
  addEventListener("appinstalled", () => {
    installPrompt = null;
    window.goappOnAppInstallChange();
    quiet();
  });

  // The framework takes every click on a link of this site for a change of page.
  // It may have those that are; files, new tabs and downloads are the browser's.
  document.addEventListener("click", (event) => {
    const link = event.target.closest?.("a[href]");
    if (!link) return;
    const elsewhere = link.target && link.target !== "_self";
    // A place on this very page is the browser's too: it moves the focus there.
    const within = link.hash && link.pathname === location.pathname && link.search === location.search;
    if (within || elsewhere || event.shiftKey || event.altKey || !site.pages.includes(link.pathname)) event.stopPropagation();
  });

  // A section that comes into sight is laid out only then, and what is drawn above may
  // grow: whoever goes by keys must still see where they are (WCAG 2.2, 2.4.11).
  let following = 0;
  const keepInSight = (times) => {
    clearTimeout(following);
    if (times) following = setTimeout(() => {
      const at = document.activeElement, { top, bottom } = at.getBoundingClientRect();
      if (at !== document.body && (bottom <= 0 || top >= innerHeight)) at.scrollIntoView({ block: "center" });
      keepInSight(times - 1);
    }, 100);
  };
  addEventListener("keydown", (event) => keepInSight(event.key === "Tab" ? 20 : 0), true);
  for (const kind of ["wheel", "touchmove", "pointerdown"]) addEventListener(kind, () => keepInSight(0), { capture: true, passive: true });

  // Where a browser does not hold what is looked at in its place while parts above it are
  // still drawn, what a link led to is brought back for three seconds.
  if (!CSS.supports("overflow-anchor", "auto")) {
    let held = 0;
    const hold = (times) => {
      clearTimeout(held);
      const to = byID(location.hash.slice(1));
      if (times && to) held = setTimeout(() => {
        to.scrollIntoView();
        hold(times - 1);
      }, 200);
    };
    addEventListener("hashchange", () => hold(15));
    for (const kind of ["wheel", "touchmove", "pointerdown", "keydown"]) addEventListener(kind, () => hold(0), { capture: true, passive: true });
  }

  // A list is as wide as its longest choice where a browser cannot fit it to the chosen
  // one, and the sentence then runs over twice as many lines.
  if (!CSS.supports("field-sizing", "content")) {
    const ruler = document.createElement("canvas").getContext("2d");
    let due = 0;
    const fit = () => {
      due = 0;
      for (const list of document.querySelectorAll(".sentence select")) {
        ruler.font = getComputedStyle(list).font;
        list.style.width = `${Math.ceil(ruler.measureText(list.selectedOptions[0]?.text ?? "").width) + 42}px`;
      }
    };
    new MutationObserver(() => { due ||= requestAnimationFrame(fit); }).observe(document.body, { childList: true, subtree: true, characterData: true });
    fit();
  }

  // The framework changes pages by replacing the body's first element, which leaves
  // the focus nowhere; it goes to the new page's beginning.
  document.addEventListener("filmfurrow", function started() {
    if (page.status.start !== "ready") return;
    document.removeEventListener("filmfurrow", started);
    new MutationObserver((changes) => {
      if (changes.some((c) => [...c.addedNodes].includes(document.body.firstElementChild))) document.querySelector("main")?.focus();
    }).observe(document.body, { childList: true });
  });

  // The menu lies over the page, so it closes as soon as the reader is elsewhere.
  const leaveMenu = (event) => {
    const menu = byID("menu");
    if (menu?.open && (event.key === "Escape" || event.type !== "keydown" && !menu.contains(event.target))) menu.open = false;
  };
  for (const kind of ["focusin", "pointerdown", "keydown"]) addEventListener(kind, leaveMenu);

  // --- When the program stops --------------------------------------------------
  const mine = () => {
    const kept = {};
    for (let i = 0; i < localStorage.length; i++) {
      const key = localStorage.key(i);
      if (key.startsWith("film-furrow")) kept[key] = localStorage.getItem(key);
    }
    return kept;
  };
  const save = () => {
    const link = document.createElement("a");
    // What was typed after the stop stands in the boxes alone.
    const typed = {};
    for (const el of document.querySelectorAll("input[id], select[id], textarea[id]")) typed[el.id] = el.type === "checkbox" ? el.checked : el.value;
    link.href = URL.createObjectURL(new Blob([JSON.stringify({ address: location.href, kept: mine(), typed }, null, 1)], { type: "application/json" }));
    link.download = "film-and-furrow-kept.json";
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  };
  const startFresh = () => {
    for (const key of Object.keys(mine())) localStorage.removeItem(key);
    location.replace(site.base + "/");
  };
  let stopped = false;
  const stop = () => {
    if (stopped) return;
    stopped = true;
    page.tell({ start: "stopped" });
    show("The calculator stopped because of a fault of ours. What you typed is kept on this device. Load the page again; if it stops again, save what you typed as a file and start fresh.", {
      urgent: true,
      actions: [["Load again", () => location.reload()], ["Save what I typed", save], ["Start fresh", startFresh]],
    });
  };

  // --- Bringing the program in ---------------------------------------------------
  const fail = (text) => {
    page.tell({ start: "failed" });
    show(`${text} The worked example on this page can be read meanwhile.`, { urgent: true, actions: [["Try again", bringIn]] });
  };
  const progress = (got) => {
    const part = Math.min(100, Math.floor((got * 100) / site.wasmBytes));
    percent.textContent = part < 100 ? ` ${part} %` : " 100 %, starting";
  };
  async function bringIn() {
    page.tell({ start: "waking" });
    show("The calculator is waking up. You can type already: it is kept.", { urgent: true });
    const taken = page.program ?? page.take(site.wasm, { cache: "reload" });
    page.program = null; // it is used once
    progress(page.got);
    page.said = progress;
    const go = new Go();
    let program;
    try {
      const whole = await taken.finally(() => { page.said = () => {}; });
      await new Promise((rest) => setTimeout(rest)); // the reader may have touched something meanwhile
      program = await WebAssembly.instantiate(whole, go.importObject);
    } catch (err) {
      if (err.status) {
        return fail(`The calculator could not be fetched: the site answered ${err.status}. It may have been renewed just now; load the page again.`);
      }
      if (err.status === 0) {
        return fail("The calculator could not be fetched: there is no connection to the site.");
      }
      if (err instanceof WebAssembly.CompileError || err instanceof WebAssembly.LinkError) {
        return fail("The calculator arrived damaged.");
      }
      return fail("The calculator did not arrive whole: the connection broke off.");
    }
    percent.textContent = "";
    page.memory = () => program.exports.mem.buffer.byteLength;
    go.exit = (code) => { if (code !== 0) stop(); };
    go.run(program).then(stop, stop);
  }
  // A call into a program that has stopped says so itself.
  addEventListener("error", (event) => {
    if (/Go program has already exited/.test(event.message)) stop();
  });

  // --- Kept on the device ----------------------------------------------------------
  const quiet = () => {
    if (stopped || page.status.start !== "ready" || page.status.update) return;
    const lines = [];
    if (page.status.storage === "memory") lines.push("This browser lets the page keep nothing: what you type is gone when you close it. Save your case as a link or a file.");
    if (page.status.offline === "ready") {
      lines.push("Ready for the field: the whole site is kept on this device and opens without a network.");
      if (page.status.lasting === "no" && page.status.storage === "device" && !installed() && (engine === "WebKit" || own())) lines.push(passing());
    }
    else if (page.status.offline === "partly") lines.push("Not ready for the field yet: part of the site is missing on this device. Open it once more with a network.");
    else if (page.status.offline === "failed") lines.push("This device could not keep the site: there is no room for it, or the connection broke off. It is tried again the next time you open it.");
    else if (page.status.offline === "no") lines.push("This browser cannot keep the site: it needs a network each time.");
    const actions = window.goappIsAppInstallable() && page.status.offline === "ready" ? [["Install it on this device", window.goappShowInstallPrompt]] : [];
    if (lines.length) show(lines.join(" "), { actions });
    else {
      strip.hidden = true;
      document.documentElement.classList.remove("urgent");
    }
  };
  document.addEventListener("filmfurrow", quiet);

  const ask = (worker, question) => new Promise((answer) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = (event) => answer(event.data);
    setTimeout(() => answer(null), 15000);
    worker.postMessage(question, [channel.port2]);
  });
  // Every file is looked up in the cache, one by one, before the page says that
  // it is ready.
  const check = async () => {
    const worker = navigator.serviceWorker?.controller;
    if (!worker) return page.status.offline;
    const answer = await ask(worker, { ask: "complete" });
    if (answer) page.tell({ offline: answer.missing.length === 0 ? "ready" : "partly" });
    return page.status.offline;
  };
  page.check = check;

  let takingOver = false;
  const offer = (worker) => {
    page.tell({ update: true });
    window.goappOnUpdate();
    show("A new version is here. What you typed is kept. Nothing changes until you say so.", {
      urgent: true,
      actions: [["Use the new version", () => { takingOver = true; worker.postMessage({ ask: "take over" }); }], ["Later", () => { page.tell({ update: false }); quiet(); }]],
    });
  };
  const watch = (registration) => {
    const follow = (worker) => worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && registration.active && registration.active !== worker) offer(worker);
      if (worker.state === "redundant" && !registration.active) page.tell({ offline: "failed" });
    });
    registration.addEventListener("updatefound", () => follow(registration.installing));
    follow(registration.installing);
    // It may have been installed before anyone listened.
    if (registration.waiting && registration.active) offer(registration.waiting);
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState !== "visible") return;
      registration.update().catch(() => { /* no network: the kept version goes on */ });
      check();
    });
  };
  const keep = async () => {
    if (!("serviceWorker" in navigator)) return page.tell({ offline: "no" });
    try {
      const had = navigator.serviceWorker.controller;
      navigator.serviceWorker.addEventListener("controllerchange", () => {
        if (takingOver) location.reload();
        else if (had) show("The page was renewed in another tab. Load it again when you are ready; what you typed is kept.", { urgent: true, actions: [["Load again", () => location.reload()]] });
        else check();
      });
      watch(await navigator.serviceWorker.register(site.worker, { scope: site.base + "/", updateViaCache: "none" }));
      await check();
    } catch {
      page.tell({ offline: "no" });
    }
  };
  addEventListener("online", check);

  // --- For how long -----------------------------------------------------------------
  // What a site keeps is the browser's to delete, unless it is asked to let it last.
  // WebKit deletes it after seven days of use without a visit, but not on the home screen
  // (webkit.org/blog/10218); the others when the device runs full (WHATWG Storage, § 5).
  const engine = /Firefox\//.test(navigator.userAgent) ? "Firefox" : /Chrom|Edg/.test(navigator.userAgent) ? "Chromium" : "WebKit";
  const kept = (name) => localStorage.getItem("film-furrow/" + name) ?? "";
  const own = () => kept("fields") !== "" || kept("field").includes('"example":false');
  const passing = () => {
    const days = kept("saved") && Math.round((Date.now() - kept("saved")) / 86400000);
    const since = days === "" ? "" : days < 1 ? ", last saved today" : `, last saved ${days} ${days > 1 ? "days" : "day"} ago`;
    return {
      WebKit: "This browser deletes it after seven days of use without a visit",
      Firefox: "This browser may delete it when the device runs full, and a private window forgets it",
      Chromium: "This browser may delete it when the device runs full",
    }[engine] + `: put the page on the home screen, or save your fields as a file under “Your fields”${since}.`;
  };
  const last = async () => {
    const storage = navigator.storage;
    const lasting = await storage?.persisted?.() || await storage?.persist?.() || false;
    page.tell({ lasting: lasting ? "yes" : "no" });
  };
  // Firefox puts the question to its reader, so there it waits until something is theirs.
  if (engine === "Firefox") addEventListener("change", (event) => { if (event.isTrusted) last(); }, { once: true });
  addEventListener("click", (event) => {
    if (event.target.id === "fields-save") try { localStorage.setItem("film-furrow/saved", Date.now()); } catch { /* full: said elsewhere */ }
  });

  if (page.textOnly) {
    page.tell({ start: "text" });
  } else if (page.able) {
    // The program comes first; the copy for the field follows when the line is free.
    const here = bringIn();
    if (navigator.serviceWorker?.controller) keep();
    else here.then(keep, keep);
    if (engine !== "Firefox") last();
  }
})();
