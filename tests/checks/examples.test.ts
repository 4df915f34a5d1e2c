// Every example is also a test: the machines check clean, and each small file of mistakes gives exactly the finding that it names, at
// its line.

import { globSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { expect, test } from "vitest";
import { diskWorld } from "../../language/cli/files.ts";
import { linesOf, positionAt } from "../../language/syntax/index.ts";
import { checkProject, type Checked } from "../../language/workspace/check-project.ts";

const folder = `${process.cwd()}/examples`;
const files = globSync("examples/**/*.strip")
  .map((path) => `${process.cwd()}/${path}`)
  .sort();
const mistakes = files.filter((file) => file.includes("/mistakes/")),
  machines = files.filter((file) => !file.includes("/mistakes/"));

function said(checked: Checked): string[] {
  return checked.findings.map((finding) => {
    const text = checked.project.files.get(finding.at.file)!.text;
    return `${basename(finding.at.file)}:${positionAt(linesOf(text), finding.at.start).line + 1} ${finding.code}`;
  });
}

test("there are examples", () => {
  expect(mistakes.length).toBeGreaterThan(10);
  expect(machines.length).toBeGreaterThan(3);
});

test.each(machines.map((file) => [file.slice(folder.length + 1), file] as const))("%s checks clean", (_, file) => {
  const checked = checkProject(diskWorld([folder]), [file]);
  expect(checked.unreadable).toEqual([]);
  expect(
    checked.findings
      .filter((finding) => finding.severity !== "hint")
      .map((finding) => `${finding.code}: ${finding.says}`),
  ).toEqual([]);
});

test("all machines together check clean", () => {
  const checked = checkProject(diskWorld([folder]), machines);
  expect(said({ ...checked, findings: checked.findings.filter((finding) => finding.severity !== "hint") })).toEqual([]);
});

test.each(mistakes.map((file) => [basename(file), file] as const))(
  "mistakes/%s gives exactly the finding that it names",
  (name, file) => {
    const lines = readFileSync(file, "utf8").split("\n"),
      code = /^# finds: (\S+)$/.exec(lines[0]!)?.[1];
    const here = lines.flatMap((line, i) => (line.endsWith("# <- here") ? [i + 1] : []));
    expect(here).toHaveLength(1);
    expect(said(checkProject(diskWorld([folder]), [file]))).toEqual([`${name}:${here[0]} ${code}`]);
  },
);
