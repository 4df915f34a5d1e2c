// Whole texts of small machines, read by a person once: verbs from kinds, counts, spanners, torques, warnings in their places.

import { expect, test } from "vitest";
import { bill } from "../../language/outputs/bill/bill.ts";
import { write } from "../../language/outputs/output.ts";
import { refit } from "../../language/outputs/refit/refit.ts";
import { rig } from "./rig.ts";
import { compiledExample, compiledText, options } from "./outputs-of.ts";

/** Tables end their lines in CRLF, by RFC 4180; files of the repository in LF. */
function withLf(csv: string): string {
  expect(
    csv
      .split("\n")
      .slice(0, -1)
      .every((line) => line.endsWith("\r")),
  ).toBe(true);
  return csv.replaceAll("\r\n", "\n");
}

test("the README's pump", async () => {
  const input = compiledExample("dairy-pump/pump.strip");
  await expect(write(refit, "text", input, options)).toMatchFileSnapshot("golden/dairy-pump.refit.txt");
  await expect(withLf(write(refit, "csv", input, options))).toMatchFileSnapshot("golden/dairy-pump.refit.csv");
  await expect(write(bill, "text", input, { ...options, units: 12 })).toMatchFileSnapshot("golden/dairy-pump.bill.txt");
  await expect(withLf(write(bill, "csv", input, { ...options, units: 12 }))).toMatchFileSnapshot(
    "golden/dairy-pump.bill.csv",
  );
});

test("a rig with one of each kind of joint, stages, ranges and pieces", async () => {
  const input = compiledText(rig);
  await expect(write(refit, "text", input, options)).toMatchFileSnapshot("golden/rig.refit.txt");
  await expect(write(refit, "text", input, { ...options, system: "us" })).toMatchFileSnapshot(
    "golden/rig.refit.us.txt",
  );
  await expect(write(bill, "text", input, options)).toMatchFileSnapshot("golden/rig.bill.txt");
});
