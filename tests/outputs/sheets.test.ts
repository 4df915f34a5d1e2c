// The one-page sheets: every precaution, load, new part and step is there, in order, and nothing on them lets somebody go on who should not.

import { expect, test } from "vitest";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { batchSheet } from "../../language/outputs/sheet/batch.ts";
import { handoverSheet } from "../../language/outputs/sheet/handover.ts";
import { isolationSheet } from "../../language/outputs/sheet/isolation.ts";
import { liftingSheet } from "../../language/outputs/sheet/lifting.ts";
import { preparationSheet } from "../../language/outputs/sheet/preparation.ts";
import { actionsIn } from "../../language/outputs/sheet/actions.ts";
import type { SheetTable } from "../../language/outputs/sheet/sheet-data.ts";
import { waitingSheet } from "../../language/outputs/sheet/waiting.ts";
import { wasteSheet } from "../../language/outputs/sheet/waste.ts";
import { write, type Output, type OutputInput } from "../../language/outputs/output.ts";
import { compiledExample, compiledText, options } from "./outputs-of.ts";

const winch = compiledExample("mooring-winch/strip.strip"),
  strip = { ...winch, performances: winch.performances.filter(({ procedure }) => procedure.id === "winch-strip") },
  [performance] = strip.performances,
  lines = linesOf(performance!, options);
const tablesOf = (of: Output<unknown>, input: OutputInput = strip, more = {}): readonly SheetTable[] =>
  (of.data(input, { ...options, ...more }) as { procedures: { tables: readonly SheetTable[] }[] }).procedures[0]!
    .tables;

test("isolation: every precaution that the strip takes stands there in its order, and every one that is taken back", () => {
  const [take, back] = tablesOf(isolationSheet),
    stands = performance!.events.filter(({ kind, assumed }) => kind === "stands" && !assumed),
    lifts = performance!.refit.filter(({ op }) => op.verb === "lift");
  const inStrip = take!.rows.filter(([line]) => !line!.startsWith("F"));
  expect(inStrip).toHaveLength(stands.length);
  expect(inStrip.map(([line]) => line)).toEqual(
    actionsIn(lines.strip)
      .filter(
        ({ items, verb }) => items.some(({ is }) => is === "hazard") && stands.some(({ act }) => act.verb === verb),
      )
      .map(({ id }) => id),
  );
  expect(back!.rows.length).toBeGreaterThan(5);
  expect(back!.rows.filter(([line]) => !line!.startsWith("F")).length).toBeLessThanOrEqual(lifts.length);
  const discharge = take!.rows.find(([, , act]) => act === "Discharge")!;
  expect(discharge.join(" | ")).toMatch(/780 V dc.*wait 10 min at least/);
  expect(take!.blank).toEqual(["Lock no.", "Reading", "Who", "When"]);
});

test("isolation: a procedure without a precaution is not cleared by that", () => {
  const bare = compiledText(
    'unit u "Unit" { base a  part a "A"  part b "B"  fastener f screw "F" { joins b to a } }\nprocedure p "P" for u { aim b off  step "S" { undo f  remove b } }',
  );
  expect(write(isolationSheet, "text", bare, options)).toContain(
    "The procedure takes no precaution. That says nothing about the machine.",
  );
});

test("lifting: every lift and support with its mass as it hangs, unknown masses told", () => {
  const [table] = tablesOf(liftingSheet),
    lifts = performance!.strip.filter(
      ({ act }) => act.verb === "lift" || act.verb === "support" || (act.verb === "remove" && act.people !== undefined),
    );
  expect(table!.rows.filter(([line]) => !line!.startsWith("R"))).toHaveLength(lifts.length);
  const back = performance!.refit.filter(({ op }) => op.event?.act.verb === "lift" && op.verb === "fit");
  expect(back.length).toBeGreaterThan(3);
  for (const { op } of back)
    expect(
      table!.rows.some(
        ([line, load]) => line!.startsWith("R") && load!.includes(performance!.model.things[op.things[0]!]!.name),
      ),
    ).toBe(true);
  for (const [, , mass] of table!.rows) expect(mass).toMatch(/\d kg|not given/);
  expect(table!.rows.some(([, , mass]) => /mass not given/.test(mass!))).toBe(true);
});

// Common practice: a lift is planned for the load as it hangs, on the way up and on the way down (LOLER 1998, regulation 8; from memory).
test("lifting: what was lifted off hangs again on the way back, with all that came off with it, and what is fitted with gear", () => {
  const parts = `part a "A"  part b "Housing" { mass 40 kg }  part c "Shaft" { mass 9 kg  fits b by press-fit }
    part d "Cover" { mass 12 kg  lift by 2 people }
    fastener f bolt "Bolts" { count 4  joins b to a }  fastener g screw "Screws" { count 3  joins d to b }`;
  const text = (head: string, more = ""): string =>
    `tool hoist "Hoist" { capacity 100 kg }
unit u "Unit" { base a  ${parts} }
procedure p "P" for u { aim b, d off ${head}
  step one "One" { undo g  remove d  undo f  lift b with hoist } }
${more}`;
  const [computed] = tablesOf(liftingSheet, compiledText(text("")));
  const cover = ["Cover", "12 kg", "", "2"],
    housing = ["Housing", "49 kg", "Hoist", ""],
    loads = (table: SheetTable | undefined): string[][] =>
      table!.rows.map(([, load, mass, gear, , people]) => [load!, mass!, gear!, people!]);
  expect(loads(computed)).toEqual([cover, housing, housing, cover]);
  expect(computed!.rows.map(([line]) => line![0])).toEqual(["1", "1", "R", "R"]);
  const [written] = tablesOf(
    liftingSheet,
    compiledText(
      text(
        "refit by q",
        `procedure q "Q" for u { base a aim all in step two "Two" { fit b with hoist  fit f  fit d  fit g } }`,
      ),
    ),
  );
  expect(loads(written)).toEqual([cover, housing, housing, cover]);
});

test("handover: a step after which a load is held says not to stop there; what is off grows, and lies where its line put it", () => {
  const input = compiledText(`
unit u "Unit" { base a  part a "A"  part b "B" { mass 40 kg }  part c "C"
  fastener f bolt "Bolts" { count 4  joins b to a }  fastener g screw "Screws" { count 3  joins c to a } }
tool hoist "Hoist" { capacity 100 kg }
procedure p "P" for u { aim b, c off
  step one "One" { undo 2 of g into tray A  support b with hoist }
  step two "Two" { undo rest of g into tray A  remove c into bag 2  undo f  lift b with hoist } }`);
  const [one, two] = tablesOf(handoverSheet, input),
    row = (table: SheetTable | undefined, fact: string): string =>
      table!.rows.find(([head]) => head === fact)?.[1] ?? "";
  expect(row(two, "Off, and where it lies").split("(into tray A)")).toHaveLength(2);
  expect(row(one, "Held: do not leave it so")).toBe("B. A load is held: do not stop here.");
  expect(row(one, "Loose or partly out")).toBe("Screws: 1 of 3 still in");
  expect(row(two, "Off, and where it lies")).toMatch(/C \(into bag 2\).*Screws \(into tray A\)/);
  expect(row(two, "Held: do not leave it so")).toBe("");
  expect(row(two, "Lifted off: is it set down, and does it stand by itself?")).toBe("B");
  expect(write(handoverSheet, "text", input, options)).toContain("On resuming every proof is void");
});

test("waiting: every line either waits or can go on; no precaution is taken back while a part is missing", () => {
  const [table] = tablesOf(waitingSheet),
    refit = actionsIn(lines.refit),
    back = refit.filter(({ verb }) => verb === "lift").map(({ id }) => id);
  expect(table!.rows.length).toBeGreaterThan(5);
  const expand = (text: string): string[] =>
    text
      .replace(/^\d+ lines?:? ?/, "")
      .split(", ")
      .filter(Boolean)
      .flatMap((range) => {
        const [from = "", to = from] = range.split(" – "),
          a = refit.findIndex(({ id }) => id === from),
          b = refit.findIndex(({ id }) => id === to);
        return refit.slice(a, b + 1).map(({ id }) => id);
      });
  for (const [part, first, waits, goesOn] of table!.rows) {
    const late = expand(waits!),
      free = expand(goesOn!);
    expect([...late, ...free].sort(), part).toEqual(refit.map(({ id }) => id).sort());
    expect(late, part).toContain(first);
    for (const id of back) expect(free, part).not.toContain(id);
  }
});

test("waste: what is let out, what is not kept, what the authors name", () => {
  const rows = tablesOf(wasteSheet)[0]!.rows;
  expect(rows).toContainEqual(["Gear oil", "4.2 L", "Waste oil"]);
  expect(rows.map(([what]) => what)).toContain("Friction discs and their dust");
  expect(rows.filter(([, amount]) => amount!.includes("old one")).length).toBeGreaterThan(5);
});

test("waste: a washer that comes away with its plug is left over too, as many as go in new", () => {
  const [table] = tablesOf(wasteSheet, compiledExample("dairy-pump/pump.strip"));
  expect(table!.rows).toContainEqual(["Drain washer", "1, old one, not kept", "find out, by local rules"]);
});

test("waste: what an author says of a fluid by its name is where that fluid goes, in one row", () => {
  const [table] = tablesOf(wasteSheet, compiledExample("pressure-vessel-inspection/receiver.strip"));
  expect(table!.rows.filter(([what]) => what === "Oily condensate")).toEqual([
    ["Oily condensate", "3 L", "Waste oil drum, never the drain"],
  ]);
});

test("isolation: what is locked again for the tests at the end stands there as well, and what the test ends; a tool by its name", () => {
  const input = compiledText(`
tool padlock "Padlock"
unit u "Unit" { base a  part a "A"  part b guard "B"  fastener f screw "F" { joins b to a }
  hazard start rotating danger "It can start" { on b, f
    precaution lock-out "Lock it." with padlock back "Own lock off."  precaution try-start "Press start: nothing may turn." } }
procedure p "P" for u { aim b off  step "S" { lock-out start  try-start start  undo f  remove b }
  finish { lock-out start  try-start start  restore start  test "It runs" } }`);
  const [take, back] = tablesOf(isolationSheet, input);
  expect(take!.rows.map(([line, , act, , tool]) => [line, act, tool])).toEqual([
    ["1.1", "Lock out", "Padlock"],
    ["1.2", "Try to start", ""],
    ["F.1", "Lock out", "Padlock"],
    ["F.2", "Try to start", ""],
  ]);
  expect(back!.rows.map(([line, , , how]) => [line!.slice(0, 1), how])).toEqual([
    ["R", "Own lock off."],
    ["F", "Own lock off."],
  ]);
});

test("batch: a column for each unit, on a second table after twelve", () => {
  const tables = tablesOf(batchSheet, strip, { units: 14 });
  expect(tables.map(({ blank }) => blank.length)).toEqual([12, 2]);
  const readings = actionsIn([...lines.strip, ...lines.refit, ...lines.finish]).flatMap((line) => line.readings);
  expect(tables[0]!.rows.filter(([what]) => /^[RF]?\d*[a-z]?\.\d+ /.test(what!)).length).toBeGreaterThanOrEqual(
    readings.length,
  );
});

test("preparation: people, gear, supplies, and the hazards that nobody has answered for", () => {
  const text = write(preparationSheet, "text", strip, options);
  expect(text).toMatch(/At least 2 people\./);
  expect(text).toContain("Who is called if somebody is hurt");
  expect(text).toMatch(/Torque wrench|torque wrench/);
});

test("sheets with amounts say for how many units they are, where several are asked for", () => {
  const said = (of: typeof preparationSheet, units?: number): readonly string[] =>
    of.data(compiledExample("dairy-pump/pump.strip"), { ...options, ...(units === undefined ? {} : { units }) })
      .procedures[0]!.notes;
  expect(said(preparationSheet, 4)).toEqual(["For 4 units."]);
  expect(said(wasteSheet, 4)).toEqual(["For 1 unit."]);
  expect([said(preparationSheet), said(wasteSheet, 1)]).toEqual([[], []]);
});
