// `--task`: some of the steps of a procedure, performed and printed by themselves.

import { expect, test } from "vitest";
import { folderWith, stripdown } from "../support/command-line.ts";

const machine = `unit box "Box" {
  base foot
  option lamp "Lamp"
  no electrical "Unplugged."
  part foot "Foot" { mass 3 kg }
  part lid "Lid" { mass 2 kg }
  part ring gasket "Lid gasket" { between lid and foot  renew always }
  part filter filter "Filter" { mass 0.1 kg  rests on foot  behind lid  renew always }
  if lamp { part bulb "Bulb" { mass 0.1 kg  rests on foot  behind lid } }
  fastener lid-screws screw "Lid screws" { count 4  torque 9 N·m  joins lid to foot }
  fastener foot-screws screw "Foot screws" { count 2  torque 4 N·m  into foot }
}
procedure strip "Strip the box" for box {
  aim none
  task seal-only "Change the gasket only" does open-up
  task bulb-only "Change the bulb" does open-up, bulb-out
  note "Keep the bench clean."
  step open-up "Open" { undo lid-screws  remove lid  remove ring }
  step filter-out "Filter" { remove filter }
  if lamp { step bulb-out "Bulb" { remove bulb }  step screws-out "Foot" { undo foot-screws } }
  finish { test "Lid sits flat" }
}
`;
const run = async (...argv: string[]) =>
  stripdown(folderWith({ "box.strip": machine }), [argv[0]!, "box.strip", ...argv.slice(1), "--quiet"]);

test("a task is printed alone: its steps, their way back, what stands outside of steps", async () => {
  const { out, status } = await run("refit", "--task", "seal-only");
  expect(status).toBe(0);
  expect(out).toContain("Change the gasket only (Strip the box)");
  for (const there of ["Remove the lid.", "Fit a new lid gasket.", "Keep the bench clean.", "Lid sits flat"])
    expect(out).toContain(there);
  for (const gone of ["filter", "bulb", "foot screws"]) expect(out.toLowerCase()).not.toContain(gone);
});

test("steps in conditions are in it where it names them, and only those", async () => {
  const { out } = await run("refit", "--task", "bulb-only", "--build", "lamp");
  expect(out).toContain("Remove the bulb.");
  expect(out).not.toMatch(/foot screws/i);
  expect((await run("refit", "--task", "bulb-only", "--build", "plain")).out).not.toContain("Remove the bulb.");
});

test("the bill and the torque sheet are those of the task", async () => {
  const bill = JSON.parse((await run("bill", "--task", "seal-only", "--json")).out) as { lines: { name: string }[] };
  expect(bill.lines.map(({ name }) => name)).toEqual(["Lid gasket"]);
  const whole = JSON.parse((await run("bill", "--json")).out) as typeof bill;
  expect(whole.lines.map(({ name }) => name)).toContain("Filter");
});

test("the manual of a task is one of its own: a record of it is none of the whole", async () => {
  const hashOf = async (...more: string[]): Promise<string> =>
    (JSON.parse((await run("refit", "--json", ...more)).out) as { provenance: { hash: string } }).provenance.hash;
  const whole = await hashOf(),
    alone = await hashOf("--task", "seal-only");
  expect(alone).not.toBe(whole);
  expect(await hashOf("--task", "bulb-only")).not.toBe(alone);
  const page = (await run("manual", "--task", "seal-only")).out;
  expect(page).toContain("Change the gasket only");
  expect(page).not.toContain("Take out the filter");
});

test("of a procedure that is done within another as well", async () => {
  const text = `${machine}procedure all "All" for box { aim none  do strip }\n`,
    { out } = await stripdown(folderWith({ "box.strip": text }), ["refit", "box.strip", "--task", "seal-only"]);
  expect(out).toContain("Change the gasket only (Strip the box)");
});

test("a name that is no task says what there is", async () => {
  await expect(run("bill", "--task", "seal-onl")).resolves.toMatchObject({
    status: 2,
    err: "stripdown: no task is called seal-onl: did you mean seal-only?\n",
  });
});

test("what only a task lacks is found in the build that has it", async () => {
  const text = machine.replace("does open-up, bulb-out", "does bulb-out");
  const { out } = await stripdown(folderWith({ "box.strip": text }), ["check", "box.strip"]);
  expect(out).toContain("Change the bulb cannot be done alone: Lid is in front of it");
  expect(out).toContain("sequence/task");
});
