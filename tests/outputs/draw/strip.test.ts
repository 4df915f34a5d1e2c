// The strip diagram says what the bench says: nothing more, nothing less, and nothing twice.

import { expect, test } from "vitest";
import { linesOf } from "../../../language/outputs/lines/groups.ts";
import { stripOf } from "../../../language/outputs/draw/draw.ts";
import { mostOnASheet, sheetsOf, stripNodes, type StripNode } from "../../../language/outputs/draw/strip-graph.ts";
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

test("no sheet holds more than sixty boxes, none is lost, and what lies on another sheet is named", () => {
  const performance = performances.find(([id]) => id === "winch-strip")![1],
    lines = linesOf(performance, options),
    nodes = stripNodes(performance, lines),
    sheets = sheetsOf(nodes);
  expect(nodes.length).toBeGreaterThan(mostOnASheet);
  expect(sheets.flat()).toEqual(nodes);
  for (const sheet of sheets) expect(sheet.length).toBeLessThanOrEqual(mostOnASheet);
  const drawings = stripOf(performance, lines),
    text = drawings.map(({ body }) => body.source.replace(/<[^>]*>/g, " ").replace(/\s+/g, " "));
  expect(drawings.map(({ title }) => title.slice(-12))).toEqual(["sheet 1 of 3", "sheet 2 of 3", "sheet 3 of 3"]);
  const outer = sheets.flatMap((sheet, i) =>
    sheet.flatMap((node) =>
      node.after
        .filter((each) => !sheet.some(({ number }) => number === each))
        .map((each) => [i, nodes[each - 1]!] as const),
    ),
  );
  expect(outer.length).toBeGreaterThan(10);
  for (const [sheet, node] of outer) expect(text[sheet]).toContain(`after ${node.line} ${node.label.split(" ")[0]}`);
});

test("a step of more than sixty boxes is broken, and a sheet of few goes with its neighbour", () => {
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
  expect(sheetsOf(Array.from({ length: 150 }, (_, i) => node(i + 1, "one"))).map(({ length }) => length)).toEqual([
    60, 60, 30,
  ]);
  expect(
    sheetsOf(Array.from({ length: 80 }, (_, i) => node(i + 1, `step ${Math.floor(i / 10)}`))).map(
      ({ length }) => length,
    ),
  ).toEqual([40, 40]);
  expect(sheetsOf([])).toEqual([]);
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
