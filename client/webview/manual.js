// In the page of the manual: goes to a line when asked, tells which one is in sight, and which was chosen. It loads nothing.
"use strict";
(() => {
  const host = acquireVsCodeApi();
  let ids = [],
    quiet = 0,
    timer;
  const calm = () => window.matchMedia("(prefers-reduced-motion: reduce)").matches;

  window.addEventListener("message", ({ data }) => {
    if (data.kind === "marks") {
      ids = data.ids;
      mark();
    } else if (data.kind === "body") {
      // The same line stays where it was.
      const held = firstInSight(),
        before = held && document.getElementById(held)?.getBoundingClientRect().top;
      const script = document.querySelector("body > script"),
        parsed = new DOMParser().parseFromString(data.body, "text/html");
      document.body.replaceChildren(...parsed.body.childNodes, ...(script ? [script] : []));
      const after = held && document.getElementById(held)?.getBoundingClientRect().top;
      if (before !== undefined && after !== undefined && before !== "" && after !== "") {
        quiet = Date.now() + 400;
        window.scrollBy(0, after - before);
      }
      mark();
      countPictures();
    } else if (data.kind === "show") show(data.id);
  });

  /** Which pictures came, and which did not. */
  function countPictures() {
    let loaded = 0,
      failed = 0;
    const tell = () => host.postMessage({ kind: "pictures", loaded, failed });
    for (const element of document.querySelectorAll("img, svg image")) {
      const probe = new Image();
      probe.onload = () => (loaded++, tell());
      probe.onerror = () => (failed++, tell());
      probe.src = element.getAttribute("src") ?? element.getAttribute("href") ?? "";
    }
    tell();
  }
  function mark() {
    for (const id of ids) {
      const element = document.getElementById(id);
      if (element) element.dataset.source = id;
    }
  }
  function show(id) {
    const element = document.getElementById(id);
    document.querySelector("[data-here]")?.removeAttribute("data-here");
    if (!element) return;
    element.setAttribute("data-here", "");
    const { top, bottom } = element.getBoundingClientRect();
    const inSight = top >= 0 && bottom <= window.innerHeight,
      isFar = Math.abs(top) > 2 * window.innerHeight;
    if (!inSight) {
      quiet = Date.now() + 600;
      // A long way is jumped: a slow one is broken off by the next question and ends anywhere.
      element.scrollIntoView({ block: "center", behavior: calm() || isFar ? "auto" : "smooth" });
    }
    tellShown(id, 20);
  }
  /** Tells the editor once the line is in sight; a taller one is when any of it is. */
  function tellShown(id, tries) {
    const box = document.getElementById(id)?.getBoundingClientRect();
    if (box && box.bottom > 0 && box.top < window.innerHeight) host.postMessage({ kind: "shown", id });
    else if (tries > 0) setTimeout(() => tellShown(id, tries - 1), 50);
  }
  const firstInSight = () =>
    ids.find((id) => {
      const box = document.getElementById(id)?.getBoundingClientRect();
      return box && box.bottom > 0 && box.top < window.innerHeight;
    });

  window.addEventListener(
    "scroll",
    () => {
      clearTimeout(timer);
      if (Date.now() < quiet) return;
      timer = setTimeout(() => {
        const id = firstInSight();
        if (id) host.postMessage({ kind: "sees", id });
      }, 80);
    },
    { passive: true },
  );
  host.postMessage({ kind: "ready" });
  countPictures();
  // Without a mouse: Tab goes from box to box, Enter in one goes to the text of its line.
  document.addEventListener("keydown", (event) => {
    const line = event.key === "Enter" && event.target instanceof Element && event.target.closest("[data-source]");
    if (!line || event.target.closest("a, textarea, select")) return;
    event.preventDefault();
    host.postMessage({ kind: "open", id: line.dataset.source });
  });
  document.addEventListener("click", ({ target }) => {
    if (!(target instanceof Element) || target.closest("input, a")) return;
    const line = target.closest("[data-source]");
    if (line) host.postMessage({ kind: "open", id: line.dataset.source });
  });
})();
