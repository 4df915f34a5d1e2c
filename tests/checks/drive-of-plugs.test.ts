// Screw plugs are not measured by the tables of screw heads. Sockets of DIN 908 and hexagons of DIN 910 by thread, in mm, from memory:
// only that these pairs raise no question rests on them.

import { expect, test } from "vitest";
import { fastenerKinds } from "../../language/tables/index.ts";
import { check, stage } from "../bench/refit/stage.ts";

const drives = (kind: string, size: string, drive: string): string[] =>
  check(
    stage(`fastener one ${kind} "One" { size ${size}  drive ${drive}  torque 30 N·m  into b }`, ""),
  ).findings.flatMap(({ code, says }) => (code === "fastener/drive-mismatch" ? [says] : []));

test.each([
  ["M18x1.5", "hex-socket 8 mm"],
  ["M22x1.5", "hex-socket 10 mm"],
  ["M24x1.5", "hex-socket 12 mm"],
  ["M18x1.5", "hex 17 mm"],
])("a plug %s with %s raises no question", (size, drive) => expect(drives("plug", size, drive)).toEqual([]));

test("of a screw of that thread the same key does", () => {
  expect(drives("screw", "M18x1.5", "hex-socket 8 mm").join()).toContain("M18x1.5 takes");
});

test("plugs alone have heads of their own", () => {
  const own = Object.entries(fastenerKinds).flatMap(([kind, { ownHeads }]) => (ownHeads ? [kind] : []));
  expect(own).toEqual(["plug"]);
});
