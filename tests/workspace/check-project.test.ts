// A whole project: what one mistake gives, over pieces, builds and procedures; what is kept from one check to the next.

import { expect, test } from "vitest";
import { loadProject } from "../../language/names/load.ts";
import { checkProject, checkTexts, newMemo, performTexts } from "../../language/workspace/check-project.ts";
import { defaultSettings } from "../../language/world/settings.ts";
import { checkText } from "../support/check-text.ts";
import { memoryWorld } from "../support/memory-world.ts";

const said = (text: string): string[] =>
  checkText(text).found.map(
    ({ severity, code, says, finding }) =>
      `${severity} ${code}: ${says}${finding.builds.map((build) => ` [${build}]`).join("")}`,
  );

const box = (more: string, acts: string): string => `
unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid"
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
  ${more}
}
procedure strip "Strip" for box {
  aim lid off
  step "Open" {
    ${acts}
  }
}
`;

test("a line that is wrong for several pieces is one finding that names them", () => {
  const found = said(`
unit box "Box" {
  base foot
  part foot "Foot"
  part cap "Cap" { pieces 1..4 own-place }
  fastener cap-screws screw "Cap screws" { count 2 per cap  joins cap to foot }
}
procedure strip "Strip" for box {
  aim cap off
  step "Open" {
    undo cap-screws.1
    remove cap
  }
}`);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/^error sequence\/still-held: Cap 2 .*the same for Cap 3 and Cap 4/);
});

test("a finding names the smallest condition that it holds under, and none where it always holds", () => {
  const options = 'variants old "Old", late "Late"\n  option heater "Heater"\n  option light "Light"';
  const used = `${options}\n  if old { part a "A" { rests on foot } }  if heater { part b "B" { rests on foot } }  if light { part c "C" { rests on foot } }`;
  expect(said(box(used, "undo 2 of lid-screws\n    remove lid"))).toEqual([expect.not.stringContaining("[")]);
  expect(said(box(used, "undo lid-screws\n    remove lid\n    if heater { undo lid-screws }"))).toEqual([
    expect.stringMatching(/already-undone.* \[with heater\]$/),
  ]);
  expect(said(box(used, "undo lid-screws\n    remove lid\n    if late and heater { undo lid-screws }"))).toEqual([
    expect.stringMatching(/ \[with heater and late\]$/),
  ]);
  expect(said(box(used, "undo lid-screws\n    remove lid\n    unless heater { undo lid-screws }"))).toEqual([
    expect.stringMatching(/ \[without heater\]$/),
  ]);
});

test("a line that several procedures perform is found once", () => {
  const twice = `${box("", "undo 2 of lid-screws\n    remove lid")}
procedure again "Again" for box {
  aim lid off
  do strip
}`;
  expect(said(twice)).toHaveLength(1);
});

test("an allow with its reason silences one finding and is told; without a reason it silences none", () => {
  const faults = (allow: string): string =>
    box("", `undo lid-screws\n    remove lid\n    ${allow}\n    undo lid-screws`);
  const { checked, found } = checkText(faults("# allow sequence/already-undone: the second pass is for the record"));
  expect(found).toEqual([]);
  expect(checked.allows.map(({ code, reason }) => [code, reason])).toEqual([
    ["sequence/already-undone", "the second pass is for the record"],
  ]);
  expect(said(faults("# allow sequence/already-undone"))).toEqual([
    expect.stringContaining("allow/no-reason"),
    expect.stringContaining("sequence/already-undone"),
  ]);
  expect(said(faults("# allow sequence/blocked: not this one"))).toEqual([
    expect.stringContaining("allow/unused"),
    expect.stringContaining("sequence/already-undone"),
  ]);
});

test("two findings on a line need two allows", () => {
  const line = "# allow sequence/already-undone: for the record";
  const text = (allows: string): string =>
    box("", `undo lid-screws\n    remove lid\n    ${allows}\n    undo lid-screws  release lid`);
  expect(said(text(line))).toHaveLength(1);
  expect(said(text(`${line}\n    ${line}`))).toHaveLength(0);
});

test("a library that is only used may allow what nobody finds here", () => {
  const files = new Map([
    ["/p/lib.strip", '# allow fastener/one-time-reused: for others\nrole fitter "Fitter"\n'],
    ["/p/a.strip", 'use "lib.strip"\n'],
  ]);
  expect(checkProject(memoryWorld(files), ["/p/a.strip"]).findings).toEqual([]);
  expect(checkProject(memoryWorld(files), ["/p/lib.strip"]).findings.map(({ code }) => code)).toEqual(["allow/unused"]);
});

test("the result does not depend on the order of the files asked for", () => {
  const files = new Map([
    ["/p/a.strip", box("", "remove lid")],
    ["/p/b.strip", box("", "remove lid").replaceAll("box", "case").replaceAll("strip", "open")],
    ["/p/c.strip", 'use "a.strip"\nuse "b.strip"\n'],
  ]);
  const results = [
    ["/p/a.strip", "/p/b.strip", "/p/c.strip"],
    ["/p/c.strip", "/p/b.strip", "/p/a.strip"],
  ].map((roots) => {
    const { findings, units, performances } = checkProject(memoryWorld(files), roots);
    return { findings, units, performed: performances.map(({ procedure }) => procedure.id) };
  });
  expect(results[1]).toEqual(results[0]);
  expect(results[0]!.findings.length).toBe(2);
});

test("what did not change is not parsed, built or performed again", () => {
  const lib = 'role fitter "Fitter"\n',
    a = `use "lib.strip"\n${box("", "undo lid-screws\n    remove lid")}`,
    b = box("", "undo lid-screws\n    remove lid").replaceAll("box", "case").replaceAll("strip", "open");
  const files = new Map([
      ["/p/lib.strip", lib],
      ["/p/a.strip", a],
      ["/p/b.strip", b],
    ]),
    roots = ["/p/a.strip", "/p/b.strip"],
    memo = newMemo();
  const run = (): ReturnType<typeof checkProject> => checkProject(memoryWorld(files), roots, { memo });
  const first = run(),
    same = run();
  expect(same.performances.every((performance, i) => performance === first.performances[i])).toBe(true);
  expect([...same.project.files.values()].every(({ path, tree }) => tree === first.project.files.get(path)!.tree)).toBe(
    true,
  );

  files.set("/p/b.strip", b.replace("remove lid", "remove lid\n    undo lid-screws"));
  const changed = run();
  expect(changed.performances[0]).toBe(first.performances[0]);
  expect(changed.performances[1]).not.toBe(first.performances[1]);
  expect(changed.findings.map(({ code }) => code)).toEqual(["sequence/already-undone"]);

  files.set("/p/lib.strip", `${lib}role rigger "Rigger"\n`);
  const imported = run();
  expect(imported.performances[0]).not.toBe(first.performances[0]);
  expect(imported.performances[1]).toBe(changed.performances[1]);

  files.set("/p/b.strip", b);
  files.set("/p/lib.strip", lib);
  expect(run().findings).toEqual(first.findings);
});

test("texts are performed without being judged, and judged without being performed again, by whatever settings", () => {
  const files = new Map([["/p/a.strip", box("", "remove lid\n    undo lid-screws")]]),
    roots = ["/p/a.strip"],
    world = memoryWorld(files),
    memo = newMemo(),
    project = loadProject(world, roots, memo.trees);
  const acted = performTexts(project, memo),
    { acts } = memo.work;
  expect(acts).toBeGreaterThan(0);
  expect(performTexts(project, memo).performances).toEqual(acted.performances);
  const checked = checkTexts(project, world, { memo });
  expect(checked.performances.every((one, i) => one === acted.performances[i])).toBe(true);
  expect(checked.findings).toEqual(checkProject(world, roots).findings);
  expect(checked.findings.map(({ code }) => code)).toContain("sequence/still-held");
  const settings = { ...defaultSettings, severity: { "sequence/still-held": "off" as const } };
  expect(checkTexts(project, world, { memo, settings }).findings).toEqual(
    checkProject(world, roots, { settings }).findings,
  );
  expect(memo.work.acts).toBe(acts);
});

test("kept results never differ from fresh ones, through any edits", () => {
  const memo = newMemo(),
    base = box("", "undo lid-screws\n    remove lid"),
    lines = base.split("\n");
  for (let i = 0; i < lines.length; i++) {
    const files = new Map([
      ["/p/a.strip", lines.toSpliced(i, 1).join("\n")],
      ["/p/b.strip", 'use "a.strip"\n'],
    ]);
    const kept = checkProject(memoryWorld(files), ["/p/b.strip"], { memo }),
      fresh = checkProject(memoryWorld(files), ["/p/b.strip"]);
    expect(kept.findings).toEqual(fresh.findings);
    expect(kept.units).toEqual(fresh.units);
  }
});

test("what a finding says by the texts of other files follows those, though its own file and what that uses stay as they are", () => {
  const unit = `unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid" { rests on foot }
  part pin "Pin"
  hazard heat hot warning "Hot oil" { on lid  temperature 80 °C  precaution cool "Let it stand." }
}
`;
  const job = (acts: string): string =>
    `use "box.strip"\nprocedure strip "Strip" for box {\n  aim none\n  step "Look" {\n${acts}  }\n}\n`;
  const touching = job('    cool heat\n    inspect lid "No crack"\n'),
    away = job('    cool heat\n    inspect foot "No crack"\n'),
    misspelt = job('    cool heat\n    inspect lid "No crack"\n    remove pinholder\n');
  const files = new Map([
      ["/box.strip", unit],
      ["/job.strip", touching],
    ]),
    memo = newMemo(),
    world = memoryWorld(files);
  const codes = (kept: boolean): string[] =>
    checkProject(world, [...files.keys()], kept ? { memo } : {}).findings.map(
      ({ code, at, says }) => `${at.file} ${code} ${says}`,
    );
  const seen = new Set<string>();
  for (const text of [touching, away, touching, misspelt, away, misspelt, touching]) {
    files.set("/job.strip", text);
    const now = codes(true);
    expect(now).toEqual(codes(false));
    seen.add(now.filter((one) => one.startsWith("/box.strip")).join("\n"));
  }
  expect([...seen].filter((one) => one.includes("hazard/never-touched"))).toHaveLength(1);
  expect([...seen].filter((one) => one.includes("names/part-unattached")).length).toBeLessThan(seen.size);
});

test("what a resting file does is the same, performed when somebody asks; an edit of it finds what a fresh check finds", () => {
  const files = new Map([
      ["/a.strip", box("", "undo lid-screws\n    remove lid")],
      ["/b.strip", box("", "undo 2 of lid-screws\n    remove lid").replace("strip", "other").replaceAll("box", "case")],
    ]),
    memo = newMemo(),
    world = memoryWorld(files),
    roots = [...files.keys()];
  const check = (kept: boolean): ReturnType<typeof checkProject> =>
    checkProject(world, roots, kept ? { memo, resting: (path) => path === "/b.strip" } : {});
  for (const acts of ["undo 2 of lid-screws\n    remove lid", "undo lid-screws\n    remove lid", "remove lid"]) {
    files.set("/b.strip", box("", acts).replace("strip", "other").replaceAll("box", "case"));
    const now = check(true),
      fresh = check(false);
    expect(now.findings).toEqual(fresh.findings);
    const [open, aside] = now.performances;
    expect(Object.getOwnPropertyDescriptor(open, "events")!.get).toBeUndefined();
    expect(Object.getOwnPropertyDescriptor(aside, "events")!.get).toBeDefined();
    const { acts: before } = memo.work;
    expect(check(true).performances).toEqual(now.performances);
    expect(memo.work.acts).toBe(before);
    expect(now.performances.map((one) => ({ ...one }))).toEqual(fresh.performances.map((one) => ({ ...one })));
    expect(aside!.events.length).toBeGreaterThan(0);
    expect(aside!.events).toBe(aside!.events);
  }
  // Judged again under other settings, it is what a fresh check says of it.
  const settings = { ...defaultSettings, severity: { "sequence/still-held": "off" as const } };
  expect(checkProject(world, roots, { memo, settings, resting: () => true }).findings).toEqual(
    checkProject(world, roots, { settings }).findings,
  );
});
