// What edits of a kind gave, as a page: how many were found as one finding, in all and by file, and those of several findings whole.

export interface Edited<Class extends string> {
  readonly class: Class;
  readonly file: string;
  readonly line: number;
  /** What stood there. */
  readonly says: string;
  readonly findings: readonly string[];
}

export function editTable<Class extends string>(
  edited: readonly Edited<Class>[],
  classes: readonly Class[],
  title: string,
  about: string,
): string {
  const row = (name: string, list: readonly Edited<Class>[]): string => {
    const none = list.filter(({ findings }) => findings.length === 0).length,
      one = list.filter(({ findings }) => findings.length === 1).length;
    return `| ${name} | ${list.length} | ${none} | ${one} | ${list.length - none - one} |`;
  };
  const head = ["| edit | made | no finding | one finding | more |", "| --- | ---: | ---: | ---: | ---: |"],
    rows = (list: readonly Edited<Class>[]): string[] => [
      ...classes.map((name) =>
        row(
          name,
          list.filter((one) => one.class === name),
        ),
      ),
      row("**all**", list),
      "",
    ];
  const lines = [`# ${title}`, "", about, "", ...head, ...rows(edited)];
  for (const [file, list] of Map.groupBy(edited, (one) => one.file))
    lines.push(`## ${file}`, "", ...head, ...rows(list));
  const several = edited.filter((one) => one.findings.length > 1);
  lines.push("## More than one finding", "", ...(several.length === 0 ? ["None."] : []));
  for (const { file, line, says, findings } of several)
    lines.push(`- \`${file}:${line}\` \`${says.replaceAll("`", "'")}\``, ...findings.map((one) => `  - ${one}`));
  return `${lines.join("\n").trimEnd()}\n`;
}
