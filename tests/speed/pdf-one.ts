// One measurement: `pdf-one html|pdf FILE TIMES` checks the file once, makes the manual so many times and tells of the last time;
// `pdf-one plain SECTIONS TIMES` makes the plain document of so many chapters.

import { pdfOf } from "../../language/cli/pdf/pdf.ts";
import { diskWorld, slashes } from "../../language/cli/files.ts";
import { manual } from "../../language/outputs/manual/manual.ts";
import type { OutputOptions } from "../../language/outputs/output.ts";
import { defaultWording } from "../../language/outputs/wording/languages.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { defaultSettings } from "../../language/world/settings.ts";
import { dirname } from "node:path";
import { plainPdf } from "./plain-document.ts";

const [format, file, times] = process.argv.slice(2) as [string, string, string];

/** Makes one document; the number makes it another than the last: what the renderer remembers is not what is measured. */
async function maker(): Promise<(number: number) => Promise<Uint8Array | undefined>> {
  if (format === "plain") return (number) => plainPdf(Number(file), String(number));
  const checked = checkProject(diskWorld([dirname(dirname(file))]), [slashes(file)], { settings: defaultSettings }),
    options: OutputOptions = { wording: defaultWording, system: "metric" };
  const input = {
    // Each procedure once: with those that it does within, as the test of all outputs prints it.
    performances: [
      ...new Map(
        checked.performances.toReversed().map((each) => [`${each.procedure.at.file} ${each.procedure.id}`, each]),
      ).values(),
    ].toReversed(),
    texts: new Map([...checked.project.files].map(([path, { text }]) => [path, text])),
    openFindings: 0,
  };
  return async (number) => {
    const data = { ...manual.data(input, options), subtitle: `Number ${number}` };
    if (format === "pdf") return (await pdfOf(manual.print!(data, options))).bytes;
    manual.formats["html"]!.write(data, options);
    return undefined;
  };
}

const make = await maker();
let seconds = 0,
  processor = 0,
  thread = 0,
  made: Uint8Array | undefined;
for (let i = 0; i < Number(times); i++) {
  const start = process.hrtime.bigint(),
    spent = process.cpuUsage(),
    own = process.threadCpuUsage();
  made = await make(i);
  seconds = Number(process.hrtime.bigint() - start) / 1e9;
  const { user, system } = process.cpuUsage(spent);
  processor = (user + system) / 1e6;
  const alone = process.threadCpuUsage(own);
  thread = (alone.user + alone.system) / 1e6;
}
// The renderer writes its objects plainly.
const pages = made ? Buffer.from(made).toString("latin1").split("/Type /Page\n").length - 1 : 0;
console.log(JSON.stringify({ seconds, processor, thread, megabytes: process.resourceUsage().maxRSS / 1024, pages }));
