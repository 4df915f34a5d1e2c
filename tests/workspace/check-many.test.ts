// Files checked one after the other give what the whole project gives.

import { expect, test } from "vitest";
import { globSync } from "node:fs";
import { diskWorld, slashes } from "../../language/cli/files.ts";
import { checkMany } from "../../language/workspace/check-many.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { memoryWorld } from "../support/memory-world.ts";

const project = slashes(new URL("../..", import.meta.url).pathname.replace(/\/$/, ""));
const files = globSync("{examples,tests/procedures}/**/*.strip", { cwd: project })
  .map((file) => `${project}/${slashes(file)}`)
  .sort();

test("one after the other or all at once: the same findings, units and allows", () => {
  const world = diskWorld([project]),
    all = checkProject(world, files),
    one = checkMany(world, files);
  expect(one.findings).toEqual(all.findings);
  expect(one.allows).toEqual(all.allows);
  expect([...one.units].sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0))).toEqual([...all.units]);
  expect(one.procedures).toBe(all.procedures);
  expect([...one.texts.keys()].sort()).toEqual([...all.texts.keys()].sort());
});

test("a file that is only used is checked too, once", () => {
  const world = diskWorld([project]),
    root = `${project}/examples/dairy-pump/pump.strip`;
  expect([...checkMany(world, [root]).texts.keys()]).toEqual([root, `${project}/examples/workshop/workshop.strip`]);
});

test("the order of the files asked for changes nothing", () => {
  const world = diskWorld([project]);
  expect(checkMany(world, [...files].reverse()).findings).toEqual(checkMany(world, files).findings);
});

const unit = `unit box "Box" {
  base foot
  no pressure "Open."
  part foot "Foot"
  part lid "Lid"
  part cap "Cap" { rests on lid }
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
}
`;

/** By code and file. */
const foundIn = (texts: Readonly<Record<string, string>>): string[] =>
  [checkMany, checkProject].map((check) => {
    const found = check(memoryWorld(new Map(Object.entries(texts))), Object.keys(texts));
    return found.findings.map(({ code, at }) => `${code} ${at.file}`).join("\n");
  });

test.each([
  ["what a strip leaves on", "aim lid off", "remove cap", "removal/missing"],
  ["what still holds", "aim lid off", "remove lid", "sequence/still-held"],
  ["what is put together that nobody took apart", "aim all in", "fit lid", "refit/impossible"],
  ["a mark that nobody made", "aim all in", "align lid-mark", "refit/mark-unmade"],
])("two machines that call their unit the same are two: %s", (_, aim, line, code) => {
  const text = `${unit}procedure strip "Strip" for box {\n  ${aim}\n  step "Open" {\n    ${line}\n  }\n}\n`,
    [many, all] = foundIn({ "/shop/a.strip": text, "/shop/b.strip": text });
  expect(many).toBe(all);
  for (const file of ["/shop/a.strip", "/shop/b.strip"]) expect(many).toContain(`${code} ${file}`);
});
