// In the page of the diagram: draws nodes in rows and lines between them. Every node is a button; texts are texts.
"use strict";
(() => {
  const host = acquireVsCodeApi(),
    space = "http://www.w3.org/2000/svg",
    width = 172,
    height = 62,
    gapX = 22,
    gapY = 58,
    margin = 16;
  const words = { off: "comes off", out: "undone", drained: "drained", stands: "precaution", other: "moved" };
  const svgElement = (name, attributes) => {
    const element = document.createElementNS(space, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
    return element;
  };

  /** A name on at most two lines of so many signs; only what is longer than both is cut, and stands whole in the tip. */
  function linesOf(name, most = 25) {
    const cut = (text) => (text.length > most ? `${text.slice(0, most - 1)}…` : text);
    if (name.length <= most) return [name];
    const at = name.lastIndexOf(" ", most);
    return at <= 0 ? [cut(name)] : [name.slice(0, at), cut(name.slice(at + 1))];
  }

  let told = { title: "", nodes: [] };
  const around = document.getElementById("around");
  around.addEventListener("change", () => draw());
  window.addEventListener("message", ({ data }) => {
    if (data.kind === "draw") {
      told = data;
      draw();
    }
  });

  /** The nodes at the cursor with all that comes before them and all that waits for them; rows closed up. */
  function nearby(nodes) {
    const here = nodes.filter((node) => node.here);
    if (!around.checked || here.length === 0) return nodes;
    const by = new Map(nodes.map((node) => [node.number, node])),
      kept = new Set(here.map((node) => node.number)),
      before = [...kept];
    for (const number of before)
      for (const n of by.get(number)?.after ?? [])
        if (!kept.has(n)) {
          kept.add(n);
          before.push(n);
        }
    const waits = here.map((node) => node.number);
    for (const number of waits)
      for (const node of nodes)
        if (node.after.includes(number) && !waits.includes(node.number)) {
          waits.push(node.number);
          kept.add(node.number);
        }
    const left = nodes.filter((node) => kept.has(node.number)),
      rows = [...new Set(left.map((node) => node.row))].sort((a, b) => a - b);
    return left.map((node) => ({ ...node, row: rows.indexOf(node.row), after: node.after.filter((n) => kept.has(n)) }));
  }

  host.postMessage({ kind: "ready" });

  /** Into the middle, so that what it waits for and what waits for it is in sight too; what is in sight already stays where it is. */
  function bringIntoSight(node) {
    if (!node) return;
    const { top, bottom, left, right } = node.getBoundingClientRect();
    if (top < 0 || left < 0 || bottom > window.innerHeight || right > window.innerWidth)
      node.scrollIntoView({ block: "center", inline: "center" });
  }
  function draw() {
    const { title } = told,
      nodes = nearby(told.nodes);
    const focused = document.activeElement?.getAttribute("data-number"),
      drawing = document.getElementById("drawing");
    document.getElementById("title").textContent = title;
    const rows = [],
      at = new Map();
    for (const node of nodes) (rows[node.row] ??= []).push(node);
    // Each row is laid near the middle of what it hangs from, which keeps the lines short.
    rows.forEach((row, y) => {
      const wish = (node) =>
        node.after.length === 0 ? 0 : node.after.reduce((sum, n) => sum + (at.get(n)?.x ?? 0), 0) / node.after.length;
      row
        .map((node) => [wish(node), node])
        .sort((a, b) => a[0] - b[0] || a[1].number - b[1].number)
        .forEach(([, node], i) =>
          at.set(node.number, { x: margin + i * (width + gapX), y: margin + y * (height + gapY) }),
        );
    });
    const most = Math.max(1, ...rows.map((row) => row.length)),
      svg = svgElement("svg", {
        width: margin * 2 + most * (width + gapX),
        height: margin * 2 + rows.length * (height + gapY),
        role: "presentation",
      });
    for (const node of nodes)
      for (const before of node.after) {
        const a = at.get(before),
          b = at.get(node.number);
        if (!a || !b) continue;
        const [x1, y1, x2, y2] = [a.x + width / 2, a.y + height, b.x + width / 2, b.y];
        svg.append(
          svgElement("path", {
            class: node.here ? "line here" : "line",
            d: `M${x1} ${y1}C${x1} ${y1 + gapY / 2} ${x2} ${y2 - gapY / 2} ${x2} ${y2}`,
          }),
        );
      }
    const names = new Map(nodes.map((node) => [node.number, node.name]));
    for (const node of nodes) {
      const { x, y } = at.get(node.number),
        after = node.after.map((n) => names.get(n)).join(", ");
      const group = svgElement("g", {
        class: `node ${node.is}${node.here ? " here" : ""}`,
        transform: `translate(${x} ${y})`,
        tabindex: 0,
        role: "button",
        "data-number": node.number,
        "aria-label": `${node.name}, ${words[node.is]}${node.step ? `, ${node.step}` : ""}${after ? `, after ${after}` : ""}`,
      });
      const said = linesOf(node.name),
        label = svgElement("text", {}),
        what = svgElement("text", { x: 10, y: said.length > 1 ? 53 : 44, class: "what" }),
        tip = svgElement("title", {});
      said.forEach((line, i) => {
        const span = svgElement("tspan", { x: 10, y: (said.length > 1 ? 19 : 26) + i * 16 });
        span.textContent = line;
        label.append(span);
      });
      what.textContent = words[node.is];
      tip.textContent = `${node.name}${node.step ? ` (${node.step})` : ""}${after ? `\nafter ${after}` : ""}`;
      group.append(svgElement("rect", { width, height }), label, what, tip);
      const go = () => host.postMessage({ kind: "open", number: node.number });
      group.addEventListener("click", go);
      group.addEventListener("keydown", (event) => {
        if (event.key === "Enter" || event.key === " ") {
          event.preventDefault();
          go();
        }
      });
      svg.append(group);
    }
    drawing.replaceChildren(svg);
    if (focused) drawing.querySelector(`[data-number="${focused}"]`)?.focus();
    else bringIntoSight(drawing.querySelector(".node.here"));
  }
})();
