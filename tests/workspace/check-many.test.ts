// Files checked one after the other give what the whole project gives.

import { expect, test } from "vitest";
import { globSync } from "node:fs";
import { diskWorld, slashes } from "../../language/cli/files.ts";
import { checkMany } from "../../language/workspace/check-many.ts";
import { checkProject } from "../../language/workspace/check-project.ts";

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
