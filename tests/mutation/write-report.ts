// Writes report.md from a full run: `node tests/mutation/write-report.ts`.

import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { judgeAll } from "./judge.ts";
import { percent, reportOf, scoreOf } from "./report.ts";

const judged = judgeAll();
writeFileSync(fileURLToPath(new URL("report.md", import.meta.url)), reportOf(judged));
console.log(
  `${judged.length} mutants, ${percent(scoreOf(judged))} of those that count found as one finding at the right line`,
);
