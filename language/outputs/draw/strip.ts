// The strip diagram: boxes for what is undone, removed, drained and put in place, with arrows from what comes before to what comes
// after. Shapes of the boxes tell their sorts; no colour does.

import type { Wording } from "../wording/wording.ts";
import { html, type Markup, type Value } from "../text/markup.ts";
import { lineHeight, n, text, lines as textBlock, type Drawing } from "./drawing.ts";
import { rowsOf, type Box, type Layout } from "./layers.ts";
import { sheetsOf, type SheetOf, type StripBox, type StripNode, type Trial } from "./strip-graph.ts";
import { boldWidth, textLines, textWidth } from "./text-box.ts";

const size = 12,
  /** What stands beside the labels: the smallest text there is. */
  small = size - 1,
  leading = size * lineHeight,
  most = 140,
  padX = 9;

/** Above and below the words: a frame in a frame leaves them less. */
const padY = (is: StripBox): number => (is === "precaution" ? 9 : 6);

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
    byNumber = new Map(nodes.map((node) => [node.number, node])),
    label = once((node: StripNode) => textLines(node.assumed ? draw.assumed(node.label) : node.label, size, most)),
    beside = once((note: string) => textLines(note, small, most));
  /** With the number of the sheet for what comes before on another one: those of one sheet in one note, by their lines as they stand there. */
  const notes = (node: StripNode, first: StripNode, sheetOf: SheetOf): string[] => {
    const others = node.after.filter((each) => each < first.number);
    return others.length === 0
      ? []
      : [...Map.groupBy(others, (each) => sheetOf.get(each)!)].map(([on, numbers]) =>
          draw.outer(
            [...new Set(numbers.map((each) => byNumber.get(each)!).map(({ line, label }) => line || label))].join(", "),
            on,
          ),
        );
  };
  // What comes before a box lies on its sheet from the sheet's first box on: how far the sheet goes changes no box of it.
  const boxesFrom = once((first: StripNode) => {
    const made = new Map<StripNode, Drawn>();
    return (node: StripNode, sheetOf: SheetOf): Drawn => {
      const box = made.get(node) ?? drawn(node, label(node), notes(node, first, sheetOf).flatMap(beside));
      made.set(node, box);
      return box;
    };
  });
  const sheets = sheetsOf(nodes, (sheet, sheetOf) => {
    const boxOf = boxesFrom(sheet[0]!);
    return arranged(
      sheet.map((node) => boxOf(node, sheetOf)),
      wording,
    );
  });
  return sheets.map(({ nodes: sheet, laid: { width, height, body } }, i) => {
    const title = sheets.length === 1 ? name.title : draw.sheet(name.title, i + 1, sheets.length);
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

/** The same question is asked for each sheet that is tried. */
function once<Of, Answer>(ask: (of: Of) => Answer): (of: Of) => Answer {
  const had = new Map<Of, Answer>();
  return (of) => {
    const found = had.get(of) ?? ask(of);
    had.set(of, found);
    return found;
  };
}

const labelOf = ({ line, label }: StripNode): string => (line === "" ? label : `${line} ${label}`);

function drawn(node: StripNode, label: readonly string[], beside: readonly string[]): Drawn {
  const head = node.line,
    rows = label.length + (head === "" ? 0 : 1);
  const width =
    Math.max(
      64,
      boldWidth(head, size),
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
    height: rows * leading + beside.length * small * lineHeight + 2 * padY(node.is),
  };
}

interface Extent {
  readonly width: number;
  readonly height: number;
}

interface LaidOut extends Extent {
  readonly body: () => Markup;
}

/** Around what is drawn: arrows and frames have their width. */
const edge = 2;

const fits = ({ width, height }: Extent): boolean => width <= page.width && height <= page.height;

function arranged(drawnBoxes: readonly Drawn[], wording: Wording): Trial<LaidOut> {
  const inside = new Map(drawnBoxes.map(({ node }, i) => [node.number, i])),
    links = drawnBoxes.flatMap(({ node }, to) =>
      node.after.flatMap((each) => {
        const from = inside.get(each);
        return from === undefined ? [] : [[from, to] as const];
      }),
    );
  const linked = new Set(links.flat()),
    bound = drawnBoxes.flatMap((_, i) => (linked.has(i) ? [i] : []));
  const free = freeBoxes(
      drawnBoxes.filter((_, i) => !linked.has(i)),
      bound.length === 0,
      wording,
    ),
    sorts = new Set(drawnBoxes.map(({ node }) => node.is));
  const groups = groupsOf(bound, links).map((group) => {
    const place = new Map(group.map((box, i) => [box, i])),
      boxes = group.map((box) => drawnBoxes[box]!);
    return {
      boxes,
      rows: rowsOf(
        boxes,
        links.flatMap(([from, to]) => (place.has(from) ? [[place.get(from)!, place.get(to)!] as const] : [])),
        { rowWidth: page.width - 2 * edge, gap: 14, rowGap: 30 },
      ),
    };
  });
  const around = (of: readonly Extent[]): LaidOut & { readonly places: ReturnType<typeof packed>["places"] } => {
    const { places, width, height } = packed(of),
      across = Math.max(width, free.width),
      legend = legendOf(sorts, Math.max(across, 480), wording),
      top = height + free.height + legendGap;
    return {
      places,
      width: Math.max(across, legend.width) + 2 * edge,
      height: top + legend.height + 2 * edge,
      body: () => html`${free.body(height)}${legend.body(top)}`,
    };
  };
  return {
    mayFit: fits(around(groups.map(({ rows }) => ({ width: rows.least, height: rows.height })))),
    laid: (must) => {
      const layouts: Layout[] = [];
      for (const { rows } of groups) {
        const layout = rows.placed();
        if (!must && layout.width + 2 * edge > page.width) return undefined;
        layouts.push(layout);
      }
      const { places, width, height, body } = around(layouts);
      if (!must && !fits({ width, height })) return undefined;
      return {
        width,
        height,
        body: () =>
          html`<g transform="translate(${edge} ${edge})">${groups.map(
            (
              { boxes },
              i,
            ) => html`<g transform="translate(${n(places[i]!.x)} ${n(places[i]!.y)})">${layouts[i]!.routes.map(arrow)}${boxes.map((box, k) => boxAt(box, layouts[i]!.boxes[k]!))}</g>
`,
          )}${body()}</g>`,
      };
    },
  };
}

/** Beside each other as far as a page is wide, then under one another. */
function packed(
  of: readonly Extent[],
): Extent & { readonly places: readonly { readonly x: number; readonly y: number }[] } {
  let x = 0,
    y = 0,
    width = 0,
    height = 0;
  const places = of.map((each) => {
    if (x > 0 && x + each.width > page.width - 2 * edge) {
      x = 0;
      y += height + 40;
      height = 0;
    }
    const place = { x, y };
    width = Math.max(width, x + each.width);
    x += each.width + 30;
    height = Math.max(height, each.height);
    return place;
  });
  return { places, width, height: y + height };
}

/** What nothing comes before and that comes before nothing, in rows under a line that says so. */
function freeBoxes(
  boxes: readonly Drawn[],
  isAlone: boolean,
  { draw }: Wording,
): Extent & { readonly body: (top: number) => Value } {
  if (boxes.length === 0) return { width: 0, height: 0, body: () => "" };
  const head = draw.free(isAlone),
    line = isAlone ? 14 : 44,
    places: Layout["boxes"][number][] = [];
  let width = boldWidth(head, size),
    y = line + 10;
  for (let i = 0; i < boxes.length;) {
    let x = 0,
      height = 0;
    for (; i < boxes.length && (x === 0 || x + boxes[i]!.width <= page.width - 2 * edge); i++) {
      const box = boxes[i]!;
      places.push({ x: x + box.width / 2, y });
      width = Math.max(width, x + box.width);
      x += box.width + 18;
      height = Math.max(height, box.height);
    }
    y += height + 14;
  }
  return {
    width,
    height: y - 14,
    body: (top) => [
      text(0, top + line, size, head, { bold: true }),
      ...boxes.map((box, i) => boxAt(box, { x: places[i]!.x, y: top + places[i]!.y })),
    ],
  };
}

/** What hangs together by any way, each in a drawing of its own beside the others: in the order of the work. */
function groupsOf(bound: readonly number[], links: readonly (readonly [number, number])[]): number[][] {
  const of = Int32Array.from({ length: (bound[bound.length - 1] ?? -1) + 1 }, (_, box) => box);
  const rootOf = (box: number): number => {
    let root = box;
    while (of[root] !== root) root = of[root]!;
    return root;
  };
  for (const [a, b] of links) {
    const one = rootOf(a),
      other = rootOf(b);
    of[Math.max(one, other)] = Math.min(one, other);
  }
  return [...Map.groupBy(bound, rootOf).values()];
}

function boxAt({ node, head, lines, outer, width, height }: Drawn, { x, y }: Layout["boxes"][number]): Markup {
  const top = y + padY(node.is) + size * 0.95,
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

const legendGap = 30;

function legendOf(
  sorts: ReadonlySet<StripBox>,
  width: number,
  { draw }: Wording,
): Extent & { readonly body: (top: number) => Value } {
  const order: readonly StripBox[] = ["part", "fastener", "joint", "fluid", "precaution", "hold", "aside"],
    placed: { readonly sort: StripBox; readonly x: number; readonly y: number }[] = [];
  let x = 0,
    y = 0,
    widest = 0;
  for (const sort of order.filter((each) => sorts.has(each))) {
    const wide = 44 + textWidth(draw.sorts[sort], small) + 18;
    if (x > 0 && x + wide > width) {
      x = 0;
      y += 26;
    }
    placed.push({ sort, x, y });
    x += wide;
    widest = Math.max(widest, x);
  }
  return {
    width: widest,
    height: y + 18,
    body: (top) =>
      placed.flatMap((each) => [
        frame(each.sort, each.x + 7, top + each.y, 28, 16),
        text(each.x + 44, top + each.y + 12, small, draw.sorts[each.sort]),
      ]),
  };
}
