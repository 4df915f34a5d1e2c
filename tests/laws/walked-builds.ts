// Strips that nobody wrote, of the machines that published manuals speak of: left and right of one kind, units inside units, variants and
// options, matched parts, tags and marks. An entry is taken where no build refuses it.

import { walk, aroundOf } from "../../language/bench/walk.ts";
import { benchOf, type Bench } from "../../language/bench/bench.ts";
import { linesIn } from "../../language/model/cursor.ts";
import type { Entry } from "../../language/model/model.ts";
import { readEntries } from "../../language/model/read-entries.ts";
import { parse } from "../../language/syntax/index.ts";
import { DRAINED } from "../../language/bench/state.ts";
import { at } from "../../language/bench/vector.ts";
import { check } from "../bench/refit/stage.ts";
import { chance, pick, upTo, walkedOf, type Die } from "./walked.ts";

/** Something that a line may name, and the condition without which it is not there. */
interface Named {
  readonly name: string;
  readonly given: string;
  readonly pieces: boolean;
}
interface Wide {
  readonly facts: readonly string[];
  readonly parts: readonly Named[];
  readonly ties: readonly Named[];
  /** Parts that are units of the inner kind. */
  readonly units: readonly Named[];
  readonly fluid: boolean;
  readonly hazard: boolean;
}

const conditions = ["if opt", "unless opt", "if va", "if vb"];
const sides = "left, right";

function machine(die: Die, inner: readonly string[]): Wide {
  const facts = ["variants va, vb", 'option opt "opt"'],
    parts: Named[] = [],
    ties: Named[] = [],
    units: Named[] = [],
    solid: { readonly name: string; readonly pieces: boolean }[] = [{ name: "b", pieces: false }];
  const count = 2 + upTo(die, 5);
  for (let i = 1; i <= count; i++) {
    const host = pick(die, solid),
      pieces = host.pieces || chance(die, 0.3),
      given = chance(die, 0.25) ? pick(die, conditions) : "",
      isUnit = given === "" && inner.length > 0 && chance(die, 0.3),
      own: Named = { name: `p${i}`, given, pieces },
      tie: Named = { name: `t${i}`, given, pieces },
      always = [...parts, ...ties].filter((one) => one.given === ""),
      hider = always.length > 0 && chance(die, 0.3) ? pick(die, always).name : "",
      inside = units.length > 0 && chance(die, 0.15) ? `${pick(die, units).name}.${pick(die, inner)}` : "",
      behind = [hider, inside].filter(Boolean).join(", "),
      by = pick(die, ["screw", "screw", "nut", "captive-screw", "press-fit", "slide", "rests"] as const),
      // What lies on, or in, a part of the same kind of pieces may be matched with it.
      matched =
        given === "" &&
        host.name !== "b" &&
        host.pieces === pieces &&
        (by === "slide" || by === "rests") &&
        chance(die, 0.6),
      many = pieces ? `pieces ${sides} ` : "",
      sits = by === "slide" ? ` fits ${host.name} by slide-fit` : by === "rests" ? ` rests on ${host.name}` : "";
    const lines = [
      `part p${i} "p${i}" { ${many}${isUnit ? "is unit v" : ""}${sits}${matched ? ` matched with ${host.name}` : ""}${behind === "" ? "" : ` behind ${behind}`} }`,
    ];
    if (by === "press-fit") lines.push(`joint t${i} press-fit "t${i}" { ${many}joins p${i} to ${host.name} }`);
    else if (by !== "slide" && by !== "rests")
      lines.push(`fastener t${i} ${by} "t${i}" { ${many}count ${2 * upTo(die, 2)} joins p${i} to ${host.name} }`);
    if (by !== "slide" && by !== "rests") ties.push(tie);
    if (chance(die, 0.15)) {
      lines.push(`part r${i} o-ring "r${i}" { ${many}between p${i} and ${host.name} renew when worn }`);
      parts.push({ name: `r${i}`, given, pieces });
    }
    facts.push(given === "" ? lines.join("\n") : `${given} {\n${lines.join("\n")}\n}`);
    parts.push(own);
    if (isUnit) units.push(own);
    if (given === "" && !isUnit) solid.push(own);
  }
  const always = parts.filter(({ given }) => given === "").map(({ name }) => name),
    fluid = always.length > 0 && chance(die, 0.3),
    hazard = always.length > 0 && chance(die, 0.3);
  if (fluid)
    facts.push(
      `fastener plug plug "plug" { into b }\nfluid oil oil "oil" { volume 1 L drains at plug fills at plug path ${pick(die, always)} }`,
    );
  if (hazard)
    facts.push(
      `hazard h rotating danger "h" { on ${pick(die, always)} precaution isolate "i" back "j" precaution lock-out "l" back "m" precaution try-start "t" }`,
    );
  return { facts, parts, ties, units, fluid, hazard };
}

const one = (die: Die, { name, pieces }: Named): string =>
  pieces && chance(die, 0.5) ? `${name}.${pick(die, ["left", "right"])}` : name;

/** One entry of a step, with the condition under which what it names is there. */
function drawn(die: Die, made: Wide, inner: readonly string[], label: number): string {
  const under = (of: readonly Named[], text: string): string => {
    const given = [...new Set(of.map((each) => each.given).filter(Boolean))];
    const wrapped = given.reduce((body, condition) => `${condition} { ${body} }`, text);
    return given.length === 0 && chance(die, 0.05) ? `${pick(die, conditions)} { ${wrapped} }` : wrapped;
  };
  const part = pick(die, made.parts),
    other = pick(die, made.parts),
    tie = made.ties.length > 0 ? pick(die, made.ties) : part;
  return pick<() => string>(die, [
    ...Array.from({ length: 3 }, () => () => under([part], `remove ${one(die, part)}`)),
    ...Array.from({ length: 3 }, () => () => under([tie], `undo ${one(die, tie)}`)),
    () => under([tie], `undo ${upTo(die, 3)} of ${one(die, tie)}`),
    () => under([tie], `loosen ${one(die, tie)}`),
    () => under([tie], `back-out ${one(die, tie)}`),
    () => under([part], `slide ${one(die, part)}`),
    () => under([part], `support ${one(die, part)} with jack`),
    () => under([part, other], `remove ${one(die, part)}, ${one(die, other)} together`),
    ...made.ties
      .filter(({ pieces }) => pieces)
      .flatMap((each) => [
        () => under([each], `repeat for ${sides} { undo ${each.name} remove ${each.name.replace("t", "p")} }`),
        () => under([each, part], `repeat for right, left { loosen ${each.name} remove ${part.name} }`),
      ]),
    () => under([tie], `tag ${one(die, tie)} as L${label}`),
    () => under([part, other], `mark ${one(die, part)}, ${one(die, other)} as m${label} "One line."`),
    () => `if ${part.name} removed { ${under([tie], `undo ${one(die, tie)}`)} }`,
    ...made.units.flatMap((unit) => [
      () => `do q on ${one(die, unit)}`,
      () => (unit.pieces ? `repeat for ${sides} { do q on ${unit.name} }` : `do q on ${unit.name}`),
      () => `remove ${one(die, unit)}.${pick(die, inner)}`,
      () => `undo ${one(die, unit)}.${pick(die, inner)}`,
    ]),
    ...(made.fluid ? [() => "drain oil"] : []),
    ...(made.hazard ? ["isolate h", "lock-out h", "try-start h", "restore h"].map((line) => () => line) : []),
  ])();
}

function entriesOf(line: string): Entry[] | undefined {
  const text = `procedure a for b {\n step { ${line} }\n}\n`,
    tree = parse(text),
    [step] = tree.items[0]?.block?.items ?? [];
  if (tree.errors.length > 0 || !step?.block) return undefined;
  const source = { path: "", text, tree, uses: [], declarations: [], branches: false };
  return readEntries(linesIn({ item: step, source }));
}

function copyOf(bench: Bench): Bench {
  const next = benchOf(bench.model, bench.state);
  next.events.push(...bench.events);
  next.performed.push(...bench.performed);
  next.notes.push(...bench.notes);
  for (const call of bench.calls) next.calls.add(call);
  for (const [label, at] of bench.marksAt) next.marksAt.set(label, at);
  return next;
}

/** The text of procedure p, of a unit u, and of q that it does on the units inside; undefined where the machine contradicts itself. */
export function walkedInBuilds(die: Die, most = 14): string | undefined {
  const inner = chance(die, 0.6) ? walkedOf(die, 0, 6, { unit: "v", procedure: "q", part: "k", tie: "n" }) : undefined,
    names = inner ? [...new Set(inner.match(/\b[kn]\d\b/g))] : [],
    made = machine(die, names),
    head = `${inner ?? ""}unit u "u" {\n base b\n part b "b"\n${made.facts.join("\n")}\n}\n`,
    procedure = (steps: readonly string[], leaves = ""): string =>
      `procedure p "p" for u {\n aim none\n ${leaves}\n${steps.map((step) => ` step { ${step} }`).join("\n")}\n}\n`,
    checked = check(head + procedure(['note "x"'])),
    starts = checked.performances.filter(({ procedure: { id } }) => id === "p");
  if (starts.length === 0 || checked.findings.some(({ severity }) => severity === "error")) return undefined;
  const around = aroundOf(starts[0]!.procedure),
    lines: string[] = [];
  let benches = starts.map(({ model, stripEnd }) => benchOf(model, stripEnd));
  for (const bench of benches) bench.calling = ["p"];
  for (let tries = most * 6; tries > 0 && lines.length < most; tries--) {
    const line = drawn(die, made, names, lines.length + 1),
      entries = entriesOf(line);
    if (!entries) continue;
    const next = benches.map((bench) => {
      const copy = copyOf(bench);
      copy.calling = ["p"];
      walk(copy, entries, around);
      return copy;
    });
    if (next.some(({ problems }) => problems.length > 0)) continue;
    if (next.every(({ state }, i) => state === benches[i]!.state) && !line.includes("tag ")) continue;
    benches = next;
    lines.push(line);
  }
  const perStep = upTo(die, 4),
    leaves = chance(die, 0.4) ? promised(die, made, benches) : "";
  return (
    head +
    procedure(
      lines.flatMap((_, i) => (i % perStep === 0 ? [lines.slice(i, i + perStep).join(" ")] : [])),
      leaves,
    )
  );
}

/** What the procedure says it leaves, of what is so in every build at the end of the strip. */
function promised(die: Die, made: Wide, benches: readonly Bench[]): string {
  const always = (one: Named): boolean => one.given === "",
    each = (name: string, is: (bench: Bench, thing: number, all: readonly number[]) => boolean): boolean =>
      benches.every((bench) => {
        const things = bench.model.scopes.get("")?.get(name) ?? [];
        return things.length > 0 && things.every((thing) => is(bench, thing, things));
      });
  const can = [
    ...made.parts
      .filter(always)
      // What came off together with others is left off with them, or not at all.
      .filter(({ name }) =>
        each(
          name,
          ({ state, events }, thing, all) =>
            at(state.lump, thing) > 0 &&
            events[at(state.offBy, thing)]?.things.every((other) => all.includes(other)) === true,
        ),
      )
      .map(({ name }) => `leaves off ${name}`),
    ...made.ties
      .filter(always)
      .flatMap(({ name }) => [
        ...(each(name, ({ state }, thing) => at(state.out, thing) > 0) ? [`leaves out 1 of ${name}`] : []),
        ...(each(name, ({ state }, thing) => at(state.out, thing) > 0 || at(state.slack, thing) > 0)
          ? [`leaves finger-tight ${name}`]
          : []),
      ]),
    ...(made.fluid && each("oil", ({ state }, thing) => (at(state.flags, thing) & DRAINED) !== 0)
      ? ["leaves drained oil"]
      : []),
  ];
  return can.length > 0 ? pick(die, can) : "";
}
