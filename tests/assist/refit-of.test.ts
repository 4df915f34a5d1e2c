// What undoes a step, as the editor shows it beside the strip.

import { expect, test } from "vitest";
import { stepRefits, wordingFor } from "../../language/index.ts";
import { perform, stage } from "../bench/refit/stage.ts";

const cover = `part lid "Lid"\n fastener screws screw "Screws" { count 4  joins lid to b }`;

// NIST SP 811, B.8: degrees Fahrenheit are 1.8 times degrees Celsius and 32 more.
test("it speaks the language and the units that are asked for now, not those that were asked for first", () => {
  const performance = perform(stage(cover, "step { undo screws remove lid refit { heat lid to 80 °C } }", "aim none")),
    said = (system: "metric" | "us", tag: string): string | undefined =>
      stepRefits(performance, { system, wording: wordingFor(tag)! })
        .flatMap(({ lines }) => lines.map(({ says }) => says))
        .find((says) => says.includes("°"));
  const metric = said("metric", "en-GB");
  expect(metric).toMatch(/80 °C/);
  expect(said("us", "en-GB")).toMatch(/176 °F/);
  expect(said("metric", "de")).toMatch(/erwärmen|erhitzen/);
  expect(said("metric", "en-GB")).toBe(metric);
});
