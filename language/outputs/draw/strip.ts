// The strip diagram: boxes for what is undone, removed, drained and put in place, with arrows from what comes before to what comes
// after. Shapes of the boxes tell their sorts; no colour does.

import type { Wording } from "../wording/wording.ts";
import { html, type Markup, type Value } from "../text/markup.ts";
import { n, text, lines as textBlock, type Drawing } from "./drawing.ts";
import { layered, type Box, type Layout } from "./layers.ts";
import { sheetsOf, type StripBox, type StripNode } from "./strip-graph.ts";
import { textLines, textWidth } from "./text-box.ts";

const size = 12,
  /** What stands beside the labels: the smallest text there is. */
  small = size - 1,
  leading = size * 1.2,
  most = 140,
  padX = 9,
  padY = 6;

/**
 * What fits a page under a heading so that the smallest text is 8 pt: at 8 / 11 pt for one unit of ours A4 takes 650 across (167 mm) and
 * Letter 720 down (186 mm).
 */
const page = { width: 650, height: 720 };

interface Drawn extends Box {
  readonly node: StripNode;
  readonly head: string;
  readonly lines: readonly string[];
  readonly outer: readonly string[];
}

/** One drawing, or several where there are too many boxes for a sheet. */
export function stripDrawings(
  nodes: readonly StripNode[],
  name: { readonly id: string; readonly title: string },
  wording: Wording,
): readonly Drawing[] {
  const { draw } = wording,
    byNumber = new Map(nodes.map((node) => [node.number, node]));
  /** With the number of the sheet for what comes before on another one. */
  const drawing = (sheet: readonly StripNode[], sheetOf: (number: number) => number): LaidOut => {
    const own = new Set(sheet.map(({ number }) => number)),
      outer = (node: StripNode): string[] =>
        // Those of one sheet in one note, by their lines: the boxes there have the same numbers.
        [
          ...Map.groupBy(
            node.after.filter((each) => !own.has(each)),
            sheetOf,
          ),
        ].map(([on, numbers]) =>
          draw.outer(
            [...new Set(numbers.map((each) => byNumber.get(each)!).map(({ line, label }) => line || label))].join(", "),
            on,
          ),
        );
    return laidOut(
      sheet.map((node) => drawn(node, outer(node), wording)),
      wording,
    );
  };
  const steps = new Map(nodes.map(({ number, step }) => [number, step])),
    firstOf = new Map([...nodes].reverse().map(({ number, step }) => [step, number]));
  const sheets = sheetsOf(nodes, (sheet) => {
      // Steps lie on a sheet each as far as is known yet.
      const { width, height } = drawing(sheet, (number) => firstOf.get(steps.get(number)!)!);
      return width <= page.width && height <= page.height;
    }),
    sheetOf = new Map(sheets.flatMap((sheet, i) => sheet.map(({ number }) => [number, i + 1] as const)));
  return sheets.map((sheet, i) => {
    const title = sheets.length === 1 ? name.title : draw.sheet(name.title, i + 1, sheets.length),
      { width, height, body } = drawing(sheet, (number) => sheetOf.get(number)!);
    return {
      width,
      height,
      body: body(),
      id: sheets.length === 1 ? name.id : `${name.id}-${i + 1}`,
      title,
      description: [
        draw.stripAbout,
        ...sheet.map((node) =>
          draw.relation(
            node.assumed ? draw.assumed(labelOf(node)) : labelOf(node),
            node.after.map((each) => labelOf(byNumber.get(each)!)),
          ),
        ),
      ].join(" "),
    };
  });
}

const labelOf = ({ line, label }: StripNode): string => (line === "" ? label : `${line} ${label}`);

function drawn(node: StripNode, outer: readonly string[], { draw }: Wording): Drawn {
  const label = textLines(node.assumed ? draw.assumed(node.label) : node.label, size, most),
    beside = outer.flatMap((each) => textLines(each, small, most));
  const head = node.line,
    rows = label.length + (head === "" ? 0 : 1);
  const width =
    Math.max(
      64,
      textWidth(head, size),
      ...label.map((line) => textWidth(line, size)),
      ...beside.map((line) => textWidth(line, small)),
    ) +
    2 * padX +
    (node.is === "fluid" ? lean : 0);
  return {
    node,
    head,
    lines: label,
    outer: beside,
    width,
    height: rows * leading + beside.length * small * 1.25 + 2 * padY,
  };
}

interface LaidOut extends Pick<Drawing, "width" | "height"> {
  /** Drawn when it is wanted: of most sheets that are tried only the size is. */
  readonly body: () => Markup;
}

function laidOut(drawnBoxes: readonly Drawn[], wording: Wording): LaidOut {
  const inside = new Map(drawnBoxes.map(({ node }, i) => [node.number, i])),
    links = drawnBoxes.flatMap(({ node }, to) =>
      node.after.flatMap((each) => {
        const from = inside.get(each);
        return from === undefined ? [] : [[from, to] as const];
      }),
    );
  const linked = new Set(links.flat()),
    bound = drawnBoxes.flatMap((_, i) => (linked.has(i) ? [i] : [])),
    free = drawnBoxes.filter((_, i) => !linked.has(i));
  const parts: (() => Value)[] = [];
  let x = 0,
    y = 0,
    height = 0,
    width = 0;
  for (const group of groupsOf(bound, links)) {
    const place = new Map(group.map((box, i) => [box, i])),
      own = links.filter(([from]) => place.has(from));
    const layout = layered(
      group.map((box) => drawnBoxes[box]!),
      own.map(([from, to]) => [place.get(from)!, place.get(to)!] as const),
      { rowWidth: page.width - 4, gap: 14, rowGap: 30 },
    );
    if (x > 0 && x + layout.width > page.width - 4) {
      x = 0;
      y += height + 40;
      height = 0;
    }
    const [left, top] = [x, y];
    parts.push(
      () => html`<g transform="translate(${n(left)} ${n(top)})">${layout.routes.map(arrow)}${group.map((box, i) => boxAt(drawnBoxes[box]!, layout.boxes[i]!))}</g>
`,
    );
    width = Math.max(width, x + layout.width);
    x += layout.width + 30;
    height = Math.max(height, layout.height);
  }
  y += height;
  if (free.length > 0) {
    const head = wording.draw.free(bound.length === 0);
    y += bound.length > 0 ? 44 : 14;
    const line = y;
    parts.push(() => text(0, line, size, head, { bold: true }));
    width = Math.max(width, textWidth(head, size));
    y += 10;
    for (let i = 0; i < free.length;) {
      let x = 0,
        height = 0;
      for (; i < free.length && (x === 0 || x + free[i]!.width <= page.width - 4); i++) {
        const box = free[i]!,
          at = { x: x + box.width / 2, y };
        parts.push(() => boxAt(box, at));
        width = Math.max(width, x + free[i]!.width);
        x += free[i]!.width + 18;
        height = Math.max(height, free[i]!.height);
      }
      y += height + 14;
    }
    y -= 14;
  }
  const legend = legendOf([...new Set(drawnBoxes.map(({ node }) => node.is))], y + 30, Math.max(width, 480), wording);
  return {
    width: Math.max(width, legend.width) + 4,
    height: y + 30 + legend.height + 4,
    body: () => html`<g transform="translate(2 2)">${parts.map((part) => part())}${legend.body}</g>`,
  };
}

/** What hangs together by any way, each in a drawing of its own beside the others: in the order of the work. */
function groupsOf(bound: readonly number[], links: readonly (readonly [number, number])[]): number[][] {
  const of = new Map(bound.map((box) => [box, box]));
  const rootOf = (box: number): number => {
    let root = box;
    while (of.get(root) !== root) root = of.get(root)!;
    return root;
  };
  for (const [a, b] of links) {
    const [low, high] = [rootOf(a), rootOf(b)].sort((one, other) => one - other);
    of.set(high!, low!);
  }
  return [...Map.groupBy(bound, rootOf).values()];
}

function boxAt({ node, head, lines, outer, width, height }: Drawn, { x, y }: Layout["boxes"][number]): Markup {
  const top = y + padY + size * 0.95,
    label = top + (head === "" ? 0 : leading);
  return html`${frame(node.is, x - width / 2, y, width, height)}${head !== "" && text(x, top, size, head, { anchor: "middle", bold: true })}${textBlock(
    x,
    label,
    size,
    lines,
    { anchor: "middle" },
  )}${textBlock(x, label + lines.length * leading, small, outer, { anchor: "middle" })}
`;
}

/** How far the frame of a fluid leans, inside its box. */
const lean = 12;

/** A frame for each sort: part plain and heavy, fastener with round ends, joint with cut corners, fluid leaning, precaution double, what holds broken. */
function frame(is: StripBox, x: number, y: number, width: number, height: number): Markup {
  const rect = (inset: number, more: Value): Markup =>
    html`<rect x="${n(x + inset)}" y="${n(y + inset)}" width="${n(width - 2 * inset)}" height="${n(height - 2 * inset)}"${more}/>`;
  switch (is) {
    case "part":
      return rect(0, html` stroke-width="2.4"`);
    case "fastener":
      return rect(0, html` rx="${n(Math.min(18, height / 2))}"`);
    case "joint": {
      const c = 8;
      return html`<path d="M${n(x + c)} ${n(y)}H${n(x + width - c)}L${n(x + width)} ${n(y + c)}V${n(y + height - c)}L${n(x + width - c)} ${n(y + height)}H${n(x + c)}L${n(x)} ${n(y + height - c)}V${n(y + c)}Z"/>`;
    }
    case "fluid":
      return html`<path d="M${n(x + lean)} ${n(y)}H${n(x + width)}L${n(x + width - lean)} ${n(y + height)}H${n(x)}Z"/>`;
    case "precaution":
      return html`${rect(0, "")}${rect(4, "")}`;
    case "hold":
      return rect(0, html` stroke-dasharray="7 3"`);
    case "aside":
      return rect(0, html` stroke-dasharray="2 3"`);
  }
}

/** Smooth between the rows, straight past the boxes of a row. */
function arrow(points: Layout["routes"][number]): Markup {
  let path = `M${n(points[0]!.x)} ${n(points[0]!.y)}`;
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!,
      isLast = i === points.length - 1,
      b = isLast ? { x: points[i]!.x, y: points[i]!.y - 6 } : points[i]!,
      bend = (b.y - a.y) / 2;
    path +=
      Math.abs(a.x - b.x) < 0.5
        ? `L${n(b.x)} ${n(b.y)}`
        : `C${n(a.x)} ${n(a.y + bend)} ${n(b.x)} ${n(b.y - bend)} ${n(b.x)} ${n(b.y)}`;
  }
  const { x, y } = points[points.length - 1]!;
  return html`<path d="${path}"/><path d="M${n(x)} ${n(y)}l-4 -8h8z" fill="currentColor" stroke="none"/>`;
}

function legendOf(
  sorts: readonly StripBox[],
  top: number,
  width: number,
  { draw }: Wording,
): { readonly width: number; readonly height: number; readonly body: Value } {
  const order: readonly StripBox[] = ["part", "fastener", "joint", "fluid", "precaution", "hold", "aside"],
    parts: Value[] = [];
  let x = 0,
    y = top,
    widest = 0;
  for (const sort of order.filter((each) => sorts.includes(each))) {
    const says = draw.sorts[sort],
      wide = 44 + textWidth(says, small) + 18;
    if (x > 0 && x + wide > width) {
      x = 0;
      y += 26;
    }
    parts.push(frame(sort, x + 7, y, 28, 16), text(x + 44, y + 12, small, says));
    x += wide;
    widest = Math.max(widest, x);
  }
  return { width: widest, height: y - top + 18, body: parts };
}
