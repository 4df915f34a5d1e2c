// Every part in its place before what hides it, and before what ties it, whatever line of the way back is taken: on the smallest strips
// in which one of many lines went wrong.

import { expect, test } from "vitest";
import { maySwap, mustFollow } from "../../../language/bench/refit/freedom.ts";
import { codes, findings, firstRefusedLine, nameOf, perform, refit, stage } from "./stage.ts";

/** The printed way back of a strip in which nothing is refused; any line of it can be performed. */
function wayBack(facts: string, acts: string): string[] {
  const text = stage(
    facts,
    acts
      .split("; ")
      .map((act) => `step { ${act} }`)
      .join(" "),
    "aim none",
  );
  expect(
    codes(text).filter((code) => code !== "removal/left-loose"),
    acts,
  ).toEqual([]);
  expect(firstRefusedLine(perform(text), 300), acts).toBeUndefined();
  return refit(text);
}
const screwed = (part: string, to: string, more = ""): string =>
  `part ${part} "${part}"\n fastener ${part}-screws screw "${part} screws" { count 2 joins ${part} to ${to} ${more} }\n`;

test("what rides on a sub-assembly is in its place before the screws in front of it are in", () => {
  const facts = `${screwed("bracket", "b")}${screwed("rail", "b")}${screwed("deck", "bracket")}
    part cable "cable" { behind rail-screws }\n fastener clamp screw "clamp" { joins cable to deck }`;
  const line = wayBack(facts, "undo rail-screws; undo deck-screws; undo bracket-screws; remove deck; remove bracket");
  expect(line.indexOf("fitting rail screws")).toBeGreaterThan(line.indexOf("fitting bracket"));
  expect(line.indexOf("fitting rail screws")).toBeGreaterThan(line.indexOf("fitting deck"));
});

test("screws that left with what they tie uncover what was behind them", () => {
  const facts = `part frame "frame" { rests on b }\n${screwed("box", "frame")}part cable "cable" { behind box-screws }\n fastener clamp screw "clamp" { joins cable to b }`;
  expect(wayBack(facts, "remove frame; undo clamp; remove cable")).toEqual([
    "fitting cable",
    "fitting clamp",
    "fitting frame",
  ]);
});

test("what was done past screws that were backed out, and taken out later, is done before they are in at all", () => {
  const facts = `${screwed("strap", "b")}part cell "cell" { rests on b behind strap-screws }`;
  for (const out of ["undo strap-screws", "undo 1 of strap-screws; undo rest of strap-screws"]) {
    const line = wayBack(facts, `back-out strap-screws; remove cell; ${out}`);
    expect(line[0], out).toBe("fitting cell");
    expect(line.at(-1), out).toBe("tightening strap screws");
  }
  // Some taken out of the part that is off, and the rest turned out further: all are tightened when it is on.
  expect(
    wayBack(screwed("lid", "b"), "back-out lid-screws; remove lid; undo 1 of lid-screws; back-out lid-screws")[0],
  ).toBe("fitting lid");
  // The part that they hold is on before they go in.
  expect(wayBack(screwed("lid", "b"), "back-out lid-screws; remove lid; undo lid-screws")).toEqual([
    "fitting lid",
    "fitting finger-tight lid screws",
    "tightening lid screws",
  ]);
});

test("what comes off past a thing that is aside is in its place, by all meetings on its way, before that is moved back", () => {
  const facts = `part core "core" { fits b by slide-fit }\n${screwed("holder", "core")}part insert "insert" { fits holder by slide-fit }
    part pad "pad" { rests on insert behind loom }\n part loom "loom"`;
  const line = wayBack(facts, "undo holder-screws; slide loom; remove pad; remove holder");
  expect(line.indexOf("putting back loom")).toBeGreaterThan(line.indexOf("fitting holder"));
});

test("slid further aside it is moved back once, after all that was done meanwhile", () => {
  const facts = `${screwed("cover", "b")}part cell "cell" { rests on b behind cover }`;
  expect(wayBack(facts, "loosen cover-screws; slide cover; remove cell; slide cover")).toEqual([
    "fitting cell",
    "putting back cover",
    "tightening cover screws",
  ]);
});

test("what its host had left before goes back to where it lay, and the host to it", () => {
  // A shaft is drawn out of a wheel, and the wheel lifted out after that, past a cover.
  const facts = `${screwed("cover", "b")}part shaft "shaft" { fits b by slide-fit }\n part wheel "wheel" { behind cover }\n fastener key-screw screw "key screw" { joins wheel to shaft }`;
  expect(wayBack(facts, "undo key-screw; undo cover-screws; remove shaft; remove cover; remove wheel")).toEqual([
    "fitting wheel",
    "fitting cover",
    "fitting shaft",
    "fitting cover screws",
    "fitting key screw",
  ]);
});

test("of a group that hangs on nothing left the part that the others hang on is what is fitted", () => {
  const facts = `${screwed("arm", "b")}${screwed("hand", "arm")}part tip "tip"\n fastener tip-screws captive-screw "tip screws" { joins tip to hand }`;
  expect(
    wayBack(facts, "undo arm-screws; undo hand-screws; remove arm; remove hand, tip together").slice(0, 2),
  ).toEqual(["fitting hand, tip", "fitting arm"]);
  // Freed by its own nuts it hangs on nothing: the arm goes back, with the cap and the pin that hang on it.
  const freed = `${screwed("post", "b")}${screwed("arm", "post")}part cap "cap"\n joint press press-fit "press" { joins cap to arm }
    part pin "pin" { rests on arm behind cap }`;
  expect(
    wayBack(
      freed,
      "undo arm-screws; undo post-screws; undo press; remove post; remove arm, cap together; remove cap; remove pin",
    ),
  ).toEqual([
    "fitting pin",
    "fitting cap",
    "fitting arm, cap",
    "fitting post",
    "fitting press",
    "fitting post screws",
    "fitting arm screws",
  ]);
});

test("what left before its host came back to it goes where it lay with that on it, whichever of the two is first", () => {
  // The hub leaves by itself; the plate on it is bolted to the casing and leaves with that, afterwards.
  const facts = `part casing "casing" { fits b by slide-fit }\n part hub "hub" { fits casing by slide-fit }\n part plate "plate" { fits hub by slide-fit }
    part cap "cap"\n fastener cap-screws screw "cap screws" { count 2 joins cap to plate, casing }`;
  expect(wayBack(facts, "remove hub; remove plate; undo cap-screws; remove cap").slice(-2)).toEqual([
    "fitting plate",
    "fitting hub",
  ]);
});

test("what came off together goes back to where any of it was, as one side", () => {
  // The ring of the group lay on the arm, which is off when the group goes on.
  const facts = `${screwed("post", "b")}${screwed("arm", "post")}part ring o-ring "ring" { between arm and post renew when worn }`;
  expect(
    wayBack(facts, "undo post-screws; undo arm-screws; remove post, ring together; remove arm; remove post"),
  ).toContain("fitting post, ring");
  // The ring lay against the seat, which is in front of the wedge; the slide that it went off with carries the wedge.
  const wedged = `part slide "slide"\n joint ts press-fit "ts" { joins slide to b }\n part seat "seat" { behind slide }
    joint tb press-fit "tb" { joins seat to b }\n part ring o-ring "ring" { between seat and b renew when worn }
    part wedge "wedge" { behind seat }\n fastener tw screw "tw" { count 2 joins wedge to slide behind ring }`;
  expect(
    wayBack(wedged, "undo ts; undo tb; remove ring, slide together; remove ring; undo tw; remove seat; remove wedge"),
  ).toEqual([
    "fitting wedge",
    "fitting seat",
    "fitting tw",
    "fitting ring",
    "fitting ring, slide",
    "fitting tb",
    "fitting ts",
  ]);
});

test("of what came off together the part that carries the rest is what comes back before what hides another of them", () => {
  const facts = `part frame "frame"\n fastener frame-screw captive-screw "frame screw" { joins frame to b }\n part slide "slide" { fits frame by slide-fit }
    part hood "hood" { fits b by slide-fit }\n part knob "knob" { fits slide by slide-fit behind hood }`;
  const line = wayBack(
    facts,
    "back-out frame-screw; remove hood; remove knob, frame together; remove knob; remove slide",
  );
  expect(line.at(-2)).toBe("fitting hood");
});

test("what lay between two that have left one another is beside both before what hides it", () => {
  const facts = `part frame "frame"\n fastener frame-screw captive-screw "frame screw" { joins frame to b }\n part slide "slide" { fits frame by slide-fit }
    part ring o-ring "ring" { between slide and frame renew when worn }\n part plate "plate" { behind ring }\n fastener plate-screw captive-screw "plate screw" { joins plate to slide }`;
  const line = wayBack(
    facts,
    "remove ring; back-out frame-screw; remove frame; back-out plate-screw; remove plate; remove slide",
  );
  expect(line.indexOf("fitting ring")).toBeGreaterThan(line.indexOf("fitting slide"));
});

test("of several that what came off together hangs on, those of the one that carries it come first", () => {
  const facts = `part sledge "sledge" { fits b by slide-fit }\n part block "block" { rests on sledge }\n part arm "arm" { rests on block }
    part rod "rod"\n fastener rod-screw screw "rod screw" { joins rod to arm }\n part clip "clip" { rests on rod }`;
  const line = wayBack(facts, "undo rod-screw; remove clip, block together; remove rod; remove sledge");
  expect(line.indexOf("fitting rod screw")).toBeGreaterThan(line.indexOf("fitting sledge"));
});

test("what lies in a joint is in before it is closed, by captive screws as by others", () => {
  for (const [kind, undo] of [
    ["captive-screw", "back-out"],
    ["screw", "undo"],
  ]) {
    const facts = `part lid "lid"\n fastener ls ${kind} "ls" { joins lid to b }\n part ring o-ring "ring" { between lid and b renew when worn }`,
      acts = `${undo} ls; remove lid; remove ring`;
    expect(wayBack(facts, acts).slice(0, 2), kind).toEqual(["fitting ring", "fitting lid"]);
    const performance = perform(stage(facts, `step { ${acts.replaceAll(";", "")} }`, "aim none")),
      { ops } = performance.order!,
      number = (name: string): number => ops.find((op) => nameOf(performance, op).endsWith(name))!.number,
      following = mustFollow(performance.order!);
    expect(maySwap(following, number("ring"), number("ls")), kind).toBe(false);
  }
});

test("where what was done cannot be undone in any order no act is lost, and what stands against it is told", () => {
  // The filler can be reached on the bench alone, and is filled at on the machine.
  const facts = `${screwed("hood", "b")}${screwed("lid", "b")}fastener plug plug "plug" { into b }\n fastener filler plug "filler" { into lid behind hood }\n fluid oil oil "oil" { volume 1 L drains at plug fills at filler }`,
    text = stage(facts, "step { drain oil undo lid-screws remove lid undo filler }", "aim none");
  expect(refit(text)).toHaveLength(5);
  expect(findings(text).map(({ says }) => says)).toEqual(["Oil cannot be filled: hood is in front of filler"]);
});

test("what a refit block works on or sets is in reach: before what covers it goes on, and never behind that", () => {
  const facts = `${screwed("guard", "b")}part belt belt "belt" { rests on b  behind guard }`,
    text = (act: string, where: string): string =>
      stage(
        facts,
        `step { undo guard-screws remove guard refit { ${where === "ahead" ? act : ""} reverse ${where === "last" ? act : ""} } }
         step { remove belt refit { ${where === "own" ? `reverse ${act}` : ""} } }`,
        "aim belt off",
      );
  for (const act of ['work belt "Feel."', 'set belt "Tension" at least 40 Hz']) {
    for (const where of ["ahead", "own"]) {
      expect(codes(text(act, where)), `${act} ${where}`).toEqual([]);
      expect(firstRefusedLine(perform(text(act, where)), 200), `${act} ${where}`).toBeUndefined();
    }
    const found = findings(text(act, "last"));
    expect(found, act).toHaveLength(1);
    expect(text(act, "last").slice(found[0]!.at.start), act).toMatch(/^(?:work|set) belt/);
  }
  // Cleaning and reading are done past an edge or through a bore.
  expect(codes(text('measure on belt "Gap" at most 1 mm', "last"))).toEqual([]);
});

test("a new part takes the place of the old one before anything goes on it", () => {
  const facts = `${screwed("end", "b")}part key key "key" { fits end }`,
    text = (late: string, early: string): string =>
      stage(
        facts,
        `step { undo end-screws remove end refit { ${late} reverse } }\n step { remove key refit { ${early} reverse } }`,
        "aim key off",
      );
  expect(codes(text("", ""))).toEqual([]);
  expect(codes(text("", "renew end"))).toEqual([]);
  const found = findings(text("renew end", ""));
  expect(found.map(({ says }) => says)).toEqual([
    "Key goes on the old end before this: renew belongs to the step in which that goes back, before reverse",
  ]);
  expect(text("renew end", "").slice(found[0]!.at.start)).toMatch(/^renew end/);
});
