// Files that use each other: reached once, parsed once, whatever the order they are asked for in.

import { expect, test } from "vitest";
import { loadProject, type TreeCache } from "../../language/names/load.ts";
import { memoryWorld } from "../support/memory-world.ts";

const files = new Map([
  ["/p/a.strip", `use "shop/tools.strip"\nunit a "A" { }`],
  ["/p/b.strip", `use "shop/tools.strip"\nuse "a.strip"`],
  ["/p/shop/tools.strip", `tool vice "Vice"\nwarn caution "Sharp." on shim`],
]);

test("used files are reached, and each sees its own first, then what it uses", () => {
  const project = loadProject(memoryWorld(files), ["/p/b.strip"]);
  expect([...project.files.keys()]).toEqual(["/p/a.strip", "/p/b.strip", "/p/shop/tools.strip"]);
  expect([...project.seen("/p/b.strip").keys()].sort()).toEqual(["", "a", "vice"]);
  expect(project.seen("/p/shop/tools.strip").has("a")).toBe(false);
});

test("the order of the roots changes nothing", () => {
  const shown = (roots: readonly string[]): unknown => {
    const project = loadProject(memoryWorld(files), roots);
    return [
      [...project.files.keys()],
      project.roots,
      [...project.seen("/p/b.strip")].map(([id, list]) => [id, list.map((one) => one.file)]),
    ];
  };
  expect(shown(["/p/b.strip", "/p/a.strip"])).toEqual(shown(["/p/a.strip", "/p/b.strip", "/p/a.strip"]));
});

test("a text that did not change is not parsed again", () => {
  const cache: TreeCache = new Map(),
    first = loadProject(memoryWorld(files), ["/p/b.strip"], cache);
  const changed = new Map(files).set("/p/a.strip", `unit a "Other" { }`),
    second = loadProject(memoryWorld(changed), ["/p/b.strip"], cache);
  expect(second.files.get("/p/shop/tools.strip")!.tree).toBe(first.files.get("/p/shop/tools.strip")!.tree);
  expect(second.files.get("/p/a.strip")!.tree).not.toBe(first.files.get("/p/a.strip")!.tree);
  expect(second.files.get("/p/a.strip")!.declarations[0]!.name).toBe("Other");
});

test("missing, outside, unreadable", () => {
  const inner = memoryWorld(
    new Map([
      ["/p/a.strip", `use "gone.strip"\nuse "../x.strip"\nuse "bad.strip"`],
      ["/x.strip", `tool t`],
    ]),
  );
  const world = {
    ...inner,
    inside: (path: string) => path.startsWith("/p/"),
    read: (path: string) =>
      path === "/p/bad.strip" ? { problem: "unreadable" as const, says: "it is no text" } : inner.read(path),
  };
  const project = loadProject(world, ["/p/a.strip", "/p/none.strip"]);
  expect(project.files.get("/p/a.strip")!.uses.map((use) => use.problem)).toEqual(["missing", "outside", "unreadable"]);
  expect(project.files.has("/x.strip")).toBe(false);
  expect(project.unreadable).toEqual([{ path: "/p/none.strip", says: "there is no such file" }]);
});

test("a ring of files has all of its names, and all see each other", () => {
  const project = loadProject(
    memoryWorld(
      new Map([
        ["/p/a.strip", `use "b.strip"\ntool a`],
        ["/p/b.strip", `use "c.strip"\ntool b`],
        ["/p/c.strip", `use "a.strip"\ntool c`],
      ]),
    ),
    ["/p/a.strip"],
  );
  expect(project.files.get("/p/a.strip")!.uses[0]!.ring).toEqual(["/p/a.strip", "/p/b.strip", "/p/c.strip"]);
  for (const file of project.files.keys()) expect([...project.seen(file).keys()].sort()).toEqual(["a", "b", "c"]);
});
