// TM 9-2815-237-34, paragraphs 2-15 v, 2-27 and 2-41 d: the facts of tests/reference/procedures/oil-pump.json reproduced.

import { expect, test } from "vitest";
import { testPublished } from "./common.ts";
import { dropped, put, swapped, thingIn } from "./published.ts";

const at = testPublished({
  name: "oil-pump",
  tools: {
    "soft-head hammer": "soft-hammer",
    "vise with soft jaws": "soft-vise",
    "torque wrench in the inch-pound range": "torque-in-lb",
    "torque wrench for 12-74 lb-ft": "torque-ft-lb",
  },
  faults: {
    f1: {
      edit: () => ({
        strip: (text) =>
          dropped(
            dropped(
              dropped(text, "    loosen bracket-capscrew  # stays in: the bracket slides off the stud\n"),
              '    slide bracket "Off the stud."\n',
            ),
            '      slide bracket back "Onto the stud."\n',
          ),
      }),
      finds: /^strip:\d+ sequence\/blocked: Pump stud cannot be undone: Pickup tube bracket is in front of it$/,
    },
    f2: {
      edit: () => ({ strip: (text) => put(text, "undo cover-capscrews", "undo 3 of cover-capscrews") }),
      finds: /^strip:60 sequence\/still-held: Pump cover cannot come off: still held by 1 of 4 Cover capscrews$/,
    },
    f3: {
      edit: () => ({ strip: (text) => swapped(text, "cover-off", "gears-out") }),
      finds: /sequence\/blocked: Drive gear cannot be marked: Pump cover is in front of it/,
    },
    f4: {
      edit: () => ({ strip: (text) => put(text, "120 lb-in (14 N·m)", "120 lb-ft (14 N·m)") }),
      finds: /^strip:33 figure\/pair-disagrees/,
    },
    f5: {
      edit: () => ({
        refit: (text) => dropped(text, "    tighten bracket-capscrew  # 12 lb-ft (16 N·m)\n"),
      }),
      finds: /refit\/missing: Bracket capscrew is left (?:loose|finger-tight) at the end/,
    },
    f6: {
      edit: () => ({
        strip: (text) =>
          dropped(text, '    mark drive-gear, idler-gear as gear-mark "Mark them so that they mesh as before."\n'),
      }),
      finds: /refit\/mark-unmade: Gear-mark was never marked/,
    },
  },
  defects: [
    { cannot: "one part under two names in two paragraphs: a transcription settles on one" },
    {
      cannot:
        "the source declares no hazard, and the spring gives no force: the summary lists spring as not considered",
    },
    { cannot: "callout numbers of two figures of the source are no part of the text" },
    { cannot: "a tool list that names no torque wrench at all is taken for a text without tools" },
  ],
});

test("the spring-loaded valve has no caution: the summary says that springs were not considered", () => {
  expect(at.checked.units[0]!.notConsidered).toContain("spring");
});

test("what the inspection finds decides whether bracket and screen come off: every combination is performed", () => {
  const builds = at.checked.performances
    .filter(({ procedure }) => procedure.id === "off-and-apart")
    .map(({ model }) => model.build);
  expect(builds).toHaveLength(4);
});

test("where the screen was changed, its capscrew goes in finger-tight and gets its torque after the nut on the engine", () => {
  const changed = at.checked.performances.find(
    ({ procedure, model }) => procedure.id === "off-and-apart" && model.chosen.has("screen-state fails"),
  )!;
  const [screw] = thingIn(changed, "bracket-capscrew"),
    [nut] = thingIn(changed, "bracket-nut"),
    [body] = thingIn(changed, "pump-body"),
    line = changed.refit.map(({ op }) => op);
  const place = (verb: string, thing: number | undefined): number =>
    line.findIndex((op) => op.verb === verb && op.things.includes(thing!));
  const places = [
    place("finger-tighten", screw),
    place("fit", body),
    place("fit", nut),
    line.findLastIndex((op) => op.verb === "tighten" && op.things.includes(screw!)),
  ];
  expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
  expect(places.toSorted((a, b) => a - b)).toEqual(places);
});
