import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { tooOld } from "../../language/cli/node-version.ts";

test("an older Node is told which one is needed, in one line", () => {
  const { engines } = JSON.parse(readFileSync("package.json", "utf8")) as { engines: { node: string } },
    oldest = Number(engines.node.replace(">=", ""));
  expect([tooOld(`${oldest}.0.0`), tooOld(`${oldest + 8}.1.2`), tooOld(process.versions.node)]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  expect(tooOld(`${oldest - 1}.9.9`)).toMatch(
    new RegExp(`needs Node ${oldest} or newer, and this is Node ${oldest - 1}\\.9\\.9: .*install`),
  );
  expect(tooOld("20.20.2")).not.toContain("\n");
});
