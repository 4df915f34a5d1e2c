// One measurement: `pdf-one html|pdf FILE TIMES` checks the file once, makes the manual so many times and tells of the last time.

import { pdfOf } from "../../language/cli/pdf/pdf.ts";
import { diskWorld, slashes } from "../../language/cli/files.ts";
import { manual } from "../../language/outputs/manual/manual.ts";
import type { OutputOptions } from "../../language/outputs/output.ts";
import { defaultWording } from "../../language/outputs/wording/wording.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { defaultSettings } from "../../language/workspace/settings.ts";
import { dirname } from "node:path";

const [format, file, times] = process.argv.slice(2) as [string, string, string],
  checked = checkProject(diskWorld([dirname(dirname(file))]), [slashes(file)], { settings: defaultSettings }),
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
let seconds = 0,
  processor = 0,
  pages = 0;
for (let i = 0; i < Number(times); i++) {
  const start = process.hrtime.bigint(),
    spent = process.cpuUsage(),
    // Other each time: what the renderer remembers of the last one is not what is measured.
    data = { ...manual.data(input, options), subtitle: `Number ${i}` };
  if (format === "pdf") ({ pages } = await pdfOf(manual.print!(data, options)));
  else manual.formats["html"]!.write(data, options);
  seconds = Number(process.hrtime.bigint() - start) / 1e9;
  const { user, system } = process.cpuUsage(spent);
  processor = (user + system) / 1e6;
}
console.log(JSON.stringify({ seconds, processor, megabytes: process.resourceUsage().maxRSS / 1024, pages }));
