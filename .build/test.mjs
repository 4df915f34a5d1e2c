// All tests: types, layout, lint, build, then vitest; closes with one line that counts them. Arguments go to vitest.

import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { run, runBeside, setUp } from "./setup.mjs";

setUp();
let passed = 0,
  failed = 0;
const count = (ok) => {
  if (ok) passed++;
  else failed++;
};

if (process.argv.length === 2) {
  // It takes as long on one core as all the others on theirs.
  const layout = runBeside([
    join("node_modules", "prettier", "bin", "prettier.cjs"),
    "--check",
    "--log-level",
    "warn",
    ".",
  ]);
  count(run([join("node_modules", "typescript", "bin", "tsc"), "--noEmit"]) === 0);
  // What runs in a page knows a window, which the rest of the program must not.
  for (const page of [join("client", "tablet"), join("tests", "pages")])
    count(run([join("node_modules", "typescript", "bin", "tsc"), "--noEmit", "-p", page]) === 0);
  count(run([join("node_modules", "oxlint", "bin", "oxlint"), "--type-aware", "--deny-warnings"]) === 0);
  count(run(["--disable-warning=ExperimentalWarning", join(".build", "build.mjs")]) === 0);
  count((await layout) === 0);
}

const folder = mkdtempSync(join(tmpdir(), "stripdown-test-")),
  report = join(folder, "report.json");
const status = run([
  join("node_modules", "vitest", "vitest.mjs"),
  "run",
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${report}`,
  ...process.argv.slice(2),
]);
try {
  const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(report, "utf8"));
  passed += numPassedTests;
  // A file that cannot even be loaded has no test that failed.
  failed +=
    numFailedTests +
    testResults.filter((file) => file.status === "failed" && file.assertionResults.length === 0).length;
} catch {
  /* vitest ended before it wrote: counted below */
}
if (status !== 0 && failed === 0) failed = 1;
rmSync(folder, { recursive: true, force: true });
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
