// The strip diagram says what the bench says: nothing more, nothing less, and nothing twice.

import { expect, test } from "vitest";
import { linesOf } from "../../../language/outputs/lines/groups.ts";
import { stripOf } from "../../../language/outputs/draw/draw.ts";
import { mostOnASheet, sheetsOf, stripNodes, type StripNode } from "../../../language/outputs/draw/strip-graph.ts";
import { drawn } from "../../../language/outputs/pdf/pieces.ts";
import { wordings } from "../../../language/outputs/wording/languages.ts";
import { pageOf } from "../../../language/outputs/pdf/paper.ts";
import { roomOf } from "../../../language/outputs/pdf/print.ts";
import { compiledExample, compiledText, options } from "../outputs-of.ts";

const performances = [
  ["dairy-pump/pump.strip"],
  ["mooring-winch/strip.strip", "mooring-winch/insulation.strip"],
  ["valve-actuator/actuator.strip"],
]
  .flatMap((paths) => compiledExample(...paths).performances)
  .map((performance) => [performance.procedure.id, performance] as const);

/** All that comes before, by any way. */
function closure(after: ReadonlyMap<number, readonly number[]>): Map<number, Set<number>> {
  const all = new Map<number, Set<number>>();
  for (const number of [...after.keys()].sort((a, b) => a - b))
    all.set(number, new Set(after.get(number)!.flatMap((each) => [each, ...(all.get(each) ?? [])])));
  return all;
}

test.each(performances)(
  "%s: what the arrows say together is what the events need, and no arrow follows from others",
  (_, performance) => {
    const nodes = stripNodes(performance, linesOf(performance, options)),
      drawn = closure(new Map(nodes.map((node) => [node.number, node.after])));
    for (const node of nodes)
      for (const each of node.after) {
        expect(each).toBeLessThan(node.number);
        for (const other of node.after)
          if (other !== each)
            expect(drawn.get(other)!.has(each), `${each} before ${node.number} follows from ${other}`).toBe(false);
      }
    // Every part and fastener that came off stands in it, in the order of coming off.
    const off = performance.events
      .filter(({ kind }) => kind === "off")
      .map(({ things }) => things.map((thing) => performance.model.things[thing]!.id).join());
    expect(nodes.filter(({ is }) => is === "part").map(({ things }) => things.join())).toEqual(off);
    // Needs between fasteners and parts are all there.
    const isPassing = (thing: number): boolean => {
      const tie = performance.model.things[thing];
      return tie?.is === "tie" && tie.passing;
    };
    const kept = performance.events.filter(
      ({ kind, thing, act }) =>
        kind === "off" || kind === "slack" || (kind === "out" && (!isPassing(thing) || act.verb === "undo")),
    );
    const inGraph = nodes.filter(({ is }) => is === "part" || is === "fastener" || is === "joint");
    expect(inGraph).toHaveLength(kept.length);
    const numberOf = new Map(kept.map((event, i) => [event.index, inGraph[i]!.number]));
    for (const event of performance.events)
      for (const need of event.needs) {
        const to = numberOf.get(event.index),
          from = numberOf.get(need);
        if (to !== undefined && from !== undefined && from < to)
          expect(drawn.get(to)!.has(from), `${need} before ${event.index}`).toBe(true);
      }
  },
);

test("a chain through three is two arrows, not three", () => {
  const [performance] = compiledText(`
unit u "Unit" { base a  part a "A"  part b "B"  part c "C" { behind b }  fastener f screw "F" { count 2 joins b to a }  fastener g screw "G" { joins c to a  behind b } }
procedure p "P" for u { aim b, c off  step "S" { undo f  remove b  undo g  remove c } }`).performances;
  const nodes = stripNodes(performance!, linesOf(performance!, options));
  expect(nodes.map(({ label, line, after }) => [label, line, after])).toEqual([
    ["F (2)", "1.1", []],
    ["B", "1.2", [1]],
    ["G", "1.3", [2]],
    ["C", "1.4", [3]],
  ]);
});

test("a gasket is bare only when what it lies between is apart", () => {
  const [performance] = compiledExample("dairy-pump/pump.strip").performances,
    nodes = stripNodes(performance!, linesOf(performance!, options));
  const ring = nodes.find(({ things }) => things.includes("ring"))!;
  expect(ring.after.map((each) => nodes[each - 1]!.label)).toEqual(["Pump casing"]);
});

test("no box is lost, and what lies on another sheet is named by its line and its sheet", () => {
  const performance = performances.find(([id]) => id === "winch-strip")![1],
    lines = linesOf(performance, options),
    nodes = stripNodes(performance, lines),
    drawings = stripOf(performance, lines),
    text = drawings.map(({ body }) => body.source.replace(/<[^>]*>/g, " ").replace(/\s+/g, " "));
  expect(nodes.length).toBeGreaterThan(mostOnASheet);
  expect(drawings.map(({ title }) => title.slice(title.lastIndexOf(", ")))).toEqual(
    drawings.map((_, i) => `, sheet ${i + 1} of ${drawings.length}`),
  );
  // In the words of each drawing stand its own boxes, by which it is known what lies where.
  const said = drawings.map(({ description }) => description),
    on = nodes.map((node) => said.findIndex((words) => words.includes(` ${node.line} ${node.label}`)));
  expect(on.filter((sheet) => sheet < 0)).toEqual([]);
  nodes.forEach((node, i) => {
    expect(text[on[i]!], node.label).toContain(node.line);
  });
  let named = 0;
  nodes.forEach((node, i) => {
    for (const each of node.after) {
      const other = on[each - 1]!;
      if (other >= on[i]!) continue;
      named++;
      expect(text[on[i]!]).toMatch(
        new RegExp(
          `after [\\d., b]*\\b${nodes[each - 1]!.line.replace(".", "\\.")}\\b[\\d., b]*, sheet ${other + 1}\\b`,
        ),
      );
    }
  });
  expect(named).toBeGreaterThan(10);
});

// Common practice for printed instructions: text of at least 8 pt; ISO/IEC 82079-1 asks for a legible size and gives none (from memory).
test.each(performances)("%s: on A4 and on Letter no text of a sheet is smaller than 8 pt", (_, performance) => {
  for (const drawing of stripOf(performance, linesOf(performance, options)))
    for (const paper of ["a4", "letter"] as const) {
      const { width } = drawn(drawing, roomOf(pageOf({ ...options, paper }, "book"))),
        sizes = [...drawing.body.source.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size));
      expect(sizes.length).toBeGreaterThan(0);
      expect((Math.min(...sizes) * width) / drawing.width, drawing.title).toBeGreaterThanOrEqual(8);
    }
});

test("a step of more than a sheet holds is broken, a sheet takes as many steps as fit", () => {
  const node = (number: number, step: string): StripNode => ({
    number,
    is: "part",
    things: [],
    label: "",
    line: "",
    step,
    after: [],
    assumed: false,
  });
  const sizes = (count: number, ofStep: number, most = mostOnASheet, mayFit = most): number[] =>
    sheetsOf(
      Array.from({ length: count }, (_, i) => node(i + 1, `step ${Math.floor(i / ofStep)}`)),
      (sheet) => ({ mayFit: sheet.length <= mayFit, laid: (must) => must || sheet.length <= most || undefined }),
    ).map((sheet) => sheet.nodes.length);
  expect(sizes(150, 150)).toEqual([60, 60, 30]);
  expect(sizes(80, 10)).toEqual([60, 20]);
  expect(sizes(80, 10, 25)).toEqual([20, 20, 20, 20]);
  // What is known before may be wrong either way.
  expect(sizes(80, 10, 25, 70)).toEqual([20, 20, 20, 20]);
  expect(sizes(40, 40, 25, 30)).toEqual([25, 15]);
  expect(sizes(80, 10, 25, 10)).toEqual([10, 10, 10, 10, 10, 10, 10, 10]);
  expect(sizes(3, 1, 0)).toEqual([1, 1, 1]);
  expect(sizes(0, 1)).toEqual([]);
});

test("the description says in words what the arrows show", () => {
  const [performance] = compiledExample("dairy-pump/pump.strip").performances,
    [drawing] = stripOf(performance!, linesOf(performance!, options));
  expect(drawing!.description).toContain(
    "3.2 Impeller nut, after 1.2 Try to start: motor can start and 2.6 Pump casing.",
  );
  expect(drawing!.description).toMatch(
    /^What must come before what, as far as the machine is described\..* It is no work instruction/,
  );
});

test("what the bench refused is marked", () => {
  const [performance] = compiledText(`
unit u "Unit" { base a  part a "A"  part b "B"  fastener f screw "F" { count 2 joins b to a } }
procedure p "P" for u { aim b off  step "S" { remove b } }`).performances;
  expect(stripOf(performance!, linesOf(performance!, options))[0]!.description).toContain(
    "refused by the bench: see the findings",
  );
});

test.each(Object.entries(wordings))(
  "%s: words stand inside the inner frame of their box, and a head inside its drawing",
  (_, wording) => {
    let frames = 0,
      heads = 0;
    for (const [, performance] of performances)
      for (const { body, width } of stripOf(performance, linesOf(performance, { ...options, wording }))) {
        // The inner frame of a precaution, and what is said up to the next frame.
        const boxes = body.source.matchAll(
          /<rect x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)"\/>((?:<text .*?<\/text>\s*)+)/gs,
        );
        for (const [, x, y, wide, high, texts] of boxes)
          for (const [, at, base, size] of texts!.matchAll(/<text x="([\d.]+)" y="([\d.]+)" font-size="([\d.]+)"/g)) {
            if (Number(high) < 16) continue; // of the legend
            frames++;
            expect(Number(base) - 0.75 * Number(size)).toBeGreaterThan(Number(y));
            expect(Number(base) + 0.25 * Number(size)).toBeLessThan(Number(y) + Number(high));
            expect(Number(at)).toBeCloseTo(Number(x) + Number(wide) / 2, 1);
          }
        // In DejaVu Sans Bold, the widest of the common fonts, a sign of a sentence takes 0.6 of the size and more.
        for (const [, says] of body.source.matchAll(/<text x="0" [^>]*font-weight="700">([^<]*)<\/text>/g)) {
          heads++;
          expect(says!.replaceAll("&#39;", "'").length * 12 * 0.6, says).toBeLessThan(width);
        }
      }
    expect(frames).toBeGreaterThan(20);
    expect(heads).toBeGreaterThan(1);
  },
);
