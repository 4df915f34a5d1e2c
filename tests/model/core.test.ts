// The Core example of the language builds a model with all of its facts.

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { built } from "./build.ts";

const text = readFileSync(new URL("../syntax/core.strip", import.meta.url), "utf8").replace(/^use .*$/m, "");
const { model, builds, part, tie, ids } = built(text, "pump");

test("one build without a name; parts, ties, fluids and hazards share one numbering", () => {
  expect(builds.map((build) => build.name)).toEqual([""]);
  expect(model.things.map((thing) => thing.index)).toEqual(model.things.map((_, i) => i));
  expect(model.things.map((thing) => thing.id)).toEqual([
    "bracket",
    "guard",
    "casing",
    "ring",
    "impeller",
    "key",
    "face-seal",
    "drain-washer",
    "guard-screws",
    "casing-nuts",
    "impeller-nut",
    "drain-plug",
    "water",
    "start",
  ]);
});

test("the unit", () => {
  expect([model.title, ids(model.base), model.positions]).toEqual(["Dairy pump DP-2", ["bracket"], ["on-feet"]]);
  expect(model.dismissed.get("pressure")?.why).toBe("Pipework off, casing open to air.");
});

test("parts", () => {
  expect(part("bracket").mass).toMatchObject({ low: 22, unit: "kg" });
  expect(part("bracket").about).toBe("Carries the shaft; the motor drives it through the coupling.");
  expect(part("ring").between?.map(ids)).toEqual([["casing"], ["bracket"]]);
  expect(part("ring").size).toMatchObject([
    { low: 183.82, unit: "mm" },
    { low: 2.62, unit: "mm" },
  ]);
  expect([ids(part("key").hosts), ids(part("key").behind), part("key").kind]).toEqual([
    ["bracket"],
    ["impeller"],
    "key",
  ]);
  expect(
    ["ring", "face-seal", "drain-washer", "casing"].map(
      (id) => part(id).renew && { when: part(id).renew!.when, said: part(id).renew!.said },
    ),
  ).toEqual([
    { when: "always", said: false },
    { when: "always", said: false },
    { when: "always", said: false },
    undefined,
  ]);
});

test("fasteners", () => {
  const nuts = tie("casing-nuts");
  expect(nuts).toMatchObject({
    kind: "nut",
    fastener: true,
    count: 8,
    propertyClass: "A2-70",
    passes: { count: 3 },
    sequence: { kind: "star" },
    pattern: { is: "circle" },
  });
  expect([ids(nuts.lowers), ids(nuts.uppers), nuts.seat]).toEqual([["casing"], ["bracket"], part("casing").index]);
  expect(nuts.torques).toMatchObject([{ is: "value", value: { low: 30, unit: "N·m" } }]);
  expect(nuts.drive).toMatchObject({ kind: "hex", size: { low: 16, unit: "mm" } });
  expect(tie("impeller-nut").size).toMatchObject({ designation: "M16x1.5", leftHand: true });
  expect(ids(tie("impeller-nut").behind)).toEqual(["casing"]);
  const plug = tie("drain-plug");
  expect([plug.lowers, plug.into, plug.seat, plug.washers]).toEqual([
    [],
    part("casing").index,
    part("casing").index,
    [{ part: part("drain-washer").index, count: 1 }],
  ]);
});

test("fluid and hazard", () => {
  const [water] = model.fluids,
    [start] = model.hazards;
  expect([ids(water!.drainsAt), water!.volume?.low, water!.filled, water!.recover]).toEqual([
    ["drain-plug"],
    0.8,
    false,
    false,
  ]);
  expect([start!.kind, start!.signal, ids(start!.on)]).toEqual(["rotating", "danger", ["guard", "impeller-nut"]]);
  expect(start!.precautions.map(({ number, kind, text: says, back }) => [number, kind, says, back])).toEqual([
    [0, "lock-out", "Open the isolator, lock it, tag it.", "Take off your own lock and tag."],
    [1, "try-start", "Press start: nothing may turn.", ""],
  ]);
});

test("the procedure", () => {
  const procedure = model.procedures.get("seal-change")!;
  expect(procedure).toMatchObject({
    title: "Change the shaft seal",
    unit: "pump",
    crew: undefined,
    aims: [{ is: "off", names: [{ text: "face-seal" }] }],
  });
  expect(procedure.body.map((entry) => entry.is === "block" && [entry.kind, entry.title, entry.body.length])).toEqual([
    ["step", "Make sure that the motor cannot start", 2],
    ["step", "Open the pump", 7],
    ["step", "Take the impeller and the seal off", 8],
  ]);
  const acts = procedure.body
    .flatMap((entry) => (entry.is === "block" ? entry.body : []))
    .flatMap((entry) => (entry.is === "act" ? [entry.act] : []));
  const act = (verb: string): (typeof acts)[number] => acts.find((one) => one.verb === verb)!;
  expect(act("drain").into).toEqual({ kind: "container", label: "bucket" });
  expect(act("undo").into).toEqual({ kind: "tray", label: "A" });
  expect(acts.filter((one) => one.verb === "undo")[1]!.passes).toBe(2);
  expect([act("mark").names.map((name) => name.text), act("mark").labels, act("mark").text]).toEqual([
    ["casing", "bracket"],
    ["casing-mark"],
    "One punch mark across the joint.",
  ]);
  expect([act("photo").text, act("photo").text2]).toEqual(["photos/impeller.jpg", "Casing off, impeller in view"]);
  expect(act("measure")).toMatchObject({
    id: { text: "shaft-wear" },
    limits: { atLeast: { low: 24.95 } },
    tools: [{ text: "micrometer" }],
  });
  expect([act("video").from, act("video").to]).toEqual([724, 760]);
  expect(procedure.finish).toMatchObject([{ act: { verb: "test", text: "Turn the shaft by hand: no rubbing" } }]);
});
