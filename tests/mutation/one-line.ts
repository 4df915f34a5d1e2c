// One-line edits of every procedure, and the table of what each class gave. `node tests/mutation/one-line.ts` writes it.

import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { atWork, type SceneAtWork } from "./judge.ts";
import { scenes } from "./scenes.ts";

export const classes = ["line deleted", "neighbours swapped", "one fastener fewer"] as const;

export interface Edited {
  readonly class: (typeof classes)[number];
  readonly file: string;
  readonly line: number;
  /** What stood there. */
  readonly says: string;
  readonly findings: readonly string[];
}

const ofMutants: Readonly<Record<string, Edited["class"]>> = {
  "swap two neighbours": "neighbours swapped",
  "count - 1": "one fastener fewer",
};

/** Every line of the file that says something, emptied: acts and declarations, the lines that open a block and those that close one. */
function* withoutOneLine({ scene, texts, found }: SceneAtWork): Generator<Edited> {
  for (const file of scene.files) {
    const lines = texts.get(file)!.split("\n");
    for (const [i, text] of lines.entries()) {
      if (/^\s*(?:#|$)/.test(text)) continue;
      const findings = found(file, [...lines.slice(0, i), "", ...lines.slice(i + 1)].join("\n"));
      yield { class: "line deleted", file, line: i + 1, says: text.trim(), findings };
    }
  }
}

export const editOneLine = (): Edited[] =>
  scenes().flatMap((scene) => {
    const work = atWork(scene);
    const acts = work.mutants.flatMap((mutant): Edited[] => {
      const name = mutant.declared ? undefined : ofMutants[mutant.class];
      if (!name) return [];
      const { findings } = work.judge(mutant);
      return [{ class: name, file: mutant.file, line: mutant.line, says: mutant.says, findings }];
    });
    return [...withoutOneLine(work), ...acts];
  });

export function tableOf(edited: readonly Edited[]): string {
  const row = (name: string, list: readonly Edited[]): string => {
    const none = list.filter(({ findings }) => findings.length === 0).length,
      one = list.filter(({ findings }) => findings.length === 1).length;
    return `| ${name} | ${list.length} | ${none} | ${one} | ${list.length - none - one} |`;
  };
  const head = ["| edit | made | no finding | one finding | more |", "| --- | ---: | ---: | ---: | ---: |"],
    rows = (list: readonly Edited[]): string[] => [
      ...classes.map((name) =>
        row(
          name,
          list.filter((one) => one.class === name),
        ),
      ),
      row("**all**", list),
      "",
    ];
  const lines = [
    "# One-line edits of every procedure",
    "",
    "Made by `node tests/mutation/one-line.ts`; a test holds it to the run. Each line that says something deleted, of declarations and of",
    "steps, those that open and close a block too; neighbours swapped; one fastener fewer. No finding means that the text is still true, or",
    "that nothing in it speaks against the edit: why an act is not missed stands in `report.md`.",
    "",
    ...head,
    ...rows(edited),
  ];
  for (const [file, list] of Map.groupBy(edited, (one) => one.file))
    lines.push(`## ${file}`, "", ...head, ...rows(list));
  lines.push("## More than one finding", "");
  for (const { file, line, says, findings } of edited.filter((one) => one.findings.length > 1))
    lines.push(
      `- \`${file}:${line}\` \`${says.replaceAll("`", "'")}\`: ${whySeveral[`${file} ${says}`] ?? "no reason"}`,
      ...findings.map((one) => `  - ${one}`),
    );
  return `${lines.join("\n").trimEnd()}\n`;
}

/** Edits that show at several places, by file and line, and why they are not drawn together. */
export const whySeveral: Readonly<Record<string, string>> = {
  'examples/lift-cylinder/cylinder.strip joint rod-in-barrel slide-fit "Piston and rod in the barrel" { joins rod to barrel  behind gland-nut }':
    "the rod hangs on the gland then and hides nothing: the cylinder's own procedure and that of the table each meet it",
  'examples/milling-spindle/spindle.strip use "../workshop/workshop.strip"':
    "what a hazard is like is lost as well, and one that has no precaution is never left out",
  "examples/mooring-winch/strip.strip do gearbox-strip on gearbox":
    "parts that stay on and screws that stay in at the aim are two mistakes elsewhere: a screw may be forgotten beside a part that is",
  "examples/mooring-winch/strip.strip finish {":
    "its lines are read as a step, where power is given back with the guards off; a finding of a hazard is never left out",
  'examples/pressure-vessel-inspection/receiver.strip measure wall on shell "Wall, eight places of the sketch and beside each pit" at least 3.6 mm with thickness-gauge':
    "the line goes on in the next one, which nobody can read without it, and its reading is spoken of elsewhere",
  'examples/reducer-family/cap-set.strip measure stand-off on shims "Cap to case with no shims in, screws hand-tight, shaft turned; add 0.08 mm for the float" 0.30..1.20 mm with feeler':
    "the line goes on in the next two, and nobody can read either without it",
  'tests/procedures/oil-pump.strip fastener cover-capscrews   screw "Cover capscrews" { count 4  torque 120 lb-in (14 N·m)  joins pump-cover to pump-body }':
    "the strip never names these screws, and is not doubted for a name that another procedure does not find",
  "tests/procedures/oil-pump-refit.strip aim all in":
    "without the aim it is a strip with a way back, and no longer the way back of another one",
};

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(fileURLToPath(new URL("one-line.md", import.meta.url)), tableOf(editOneLine()));
