// TM 9-2320-272-23-3, work package 0482: the facts of tests/reference/procedures/rear-hub.json reproduced.

import { expect, test } from "vitest";
import { placementOf } from "../../language/bench/placement.ts";
import { usesOf } from "../../language/bill/uses.ts";
import { testPublished } from "./common.ts";
import { dropped, inRefit, lineOf, moved, put, step, swapped, thingIn } from "./published.ts";

const at = testPublished({
  name: "rear-hub",
  shownOtherwise: {
    // The sealant has no line of its own in the computed refit: it is put on with the part whose joint it seals.
    "silicone-adhesive < axle-shaft": ({ apart }) =>
      usesOf(apart, 0).some(({ id, on }) => id === "silicone-adhesive" && on.length > 0),
  },
  tools: {
    "seal inserter": "seal-inserter",
    "torque wrench to 400 lb-ft": "torque-large",
    "torque wrench for 50-100 lb-ft": "torque-medium",
  },
  faults: {
    f1: {
      edit: () => ({ strip: (text) => swapped(text, "outer-nut-off", "adjusting-nut-off") }),
      finds:
        /sequence\/blocked: Bearing adjusting nut with locking pin cannot be undone: Outer bearing nut is in front of it$/,
    },
    f2: {
      edit: () => ({ strip: (text) => put(text, "undo shaft-screws", "undo 9 of shaft-screws") }),
      finds: /sequence\/still-held: Axle shaft cannot come off: still held by 1 of 10 Axle shaft screws$/,
    },
    f3: {
      edit: () => ({ strip: (text) => dropped(text, step(text, "adjusting-nut-off")) }),
      finds:
        /^strip:\d+ sequence\/still-held: Hub cannot come off: still held by Bearing adjusting nut with locking pin$/,
    },
    f4: {
      edit: () => ({ refit: (text) => dropped(text, step(text, '"Second air seal"')) }),
      finds: /^strip:\d+ refit\/missing: Air seals, double lip 2 came off here and is not back on at the end$/,
    },
    f5: {
      edit: () => ({ refit: (text) => put(text, "renew shaft-lockwasher", "reuse shaft-lockwasher") }),
      finds: /^refit:\d+ fastener\/one-time-reused: Lock washers under the axle shaft screws are to be new every time$/,
    },
    f6: {
      edit: () => ({ refit: (text) => moved(text, '"Axle shaft"', '"Outer nut"') }),
      finds:
        /^refit:\d+ refit\/impossible: Outer bearing nut cannot go on: Outer bearing nut belongs behind Axle shaft, which is on already$/,
    },
    f7: {
      edit: () => ({
        strip: (text) => put(text, "torque 250..400 lb-ft (339..542 N·m)", "torque 250..400 N·m (339..542 N·m)"),
      }),
      finds: /figure\/pair-disagrees/,
    },
  },
  defects: [
    { literally: () => ({ strip: (text) => put(text, "{ rests on hub }", "{ }") }), finds: /names\/part-unattached/ },
    {
      literally: () => ({
        strip: (text) => text.replaceAll("  renew always", ""),
        refit: (text) => text.replaceAll(/ {4}renew .*/g, ""),
      }),
      finds: /refit\/seal-reused: Nothing says whether Hub oil seal goes back new or used/,
    },
    {
      cannot:
        "where the source prints its note on an assistant is no part of the text; the text asks for two people at the head and at the act",
    },
  ],
});

const hub = (): number => thingIn(at.apart, "hub")[0]!;

test("the caution about the threads stands before the hub comes off and before it goes on, and nowhere else", () => {
  const placement = placementOf(at.apart),
    about = (list: typeof placement.strip): number[] =>
      list.flatMap((before, i) => (before.messages.some(({ things }) => things.includes(hub())) ? [i] : []));
  expect(about(placement.strip).map((i) => at.apart.strip[i]!.act.verb)).toEqual(["remove"]);
  expect(about(placement.refit).map((i) => at.apart.refit[i]!.op.things)).toEqual([[hub()]]);
});

test("the caution about matching bearings and cups stands in the refit before the inner bearing", () => {
  const line = at.apart.refit.map(({ op }) => op),
    caution = line.findIndex(({ act }) => act?.verb === "caution"),
    bearing = line.findIndex((op) => op.things.includes(thingIn(at.apart, "inner-bearing")[0]!) && op.verb === "fit");
  expect(caution).toBeGreaterThanOrEqual(0);
  expect(caution).toBeLessThan(bearing);
});

test("two equal seals go in opposite ways round, the strip takes both in one act", () => {
  expect(inRefit(at.apart, "air-seal").map(({ act }) => act?.facing)).toEqual(["out", "in"]);
  expect(lineOf(at.texts.strip, "remove air-seal")).toBeGreaterThan(0);
});
