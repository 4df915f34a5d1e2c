// The tests of printed pages in a headless Chromium (CHROMIUM names another place than Debian's). Without one they are skipped, loudly.

import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { run, setUp } from "./setup.mjs";

setUp();
const chromium = process.env.CHROMIUM ?? "/usr/bin/chromium";
if (!existsSync(chromium)) {
  console.error(
    `\n*** SKIPPED: no Chromium at ${chromium}. Nothing was tested of the pages on a tablet, their accessibility and their record.\n*** Install it (Debian: apt-get install chromium) or name it in CHROMIUM.\n`,
  );
  console.log("0 passed, 0 failed (skipped: no browser)");
  process.exit(0);
}
// What writes the pages is the command line as users have it, which starts in a third of the time; never one of an older text.
const { buildAll } = await import("./build.mjs");
await buildAll({ only: "command line" });
const folder = mkdtempSync(join(tmpdir(), "stripdown-pages-")),
  report = join(folder, "report.json");
const status = run([
  join("node_modules", "vitest", "vitest.mjs"),
  "run",
  "--config=tests/pages/vitest.config.ts",
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${report}`,
  ...process.argv.slice(2),
]);
let passed = 0,
  failed = 0;
try {
  const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(report, "utf8"));
  passed = numPassedTests;
  failed =
    numFailedTests +
    testResults.filter((file) => file.status === "failed" && file.assertionResults.length === 0).length;
} catch {
  /* vitest ended before it wrote: counted below */
}
rmSync(folder, { recursive: true, force: true });
if (status !== 0 && failed === 0) failed = 1;
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
