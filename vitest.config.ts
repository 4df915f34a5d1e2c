// How the tests run. No result depends on the clock, on the order of files, or on the machine's number of cores; how long they take does.

import { relative } from "node:path";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/**
 * Those that take longest, the longest first: begun last, one of them would keep a machine of two cores waiting on one. A list that is out
 * of date costs time alone.
 */
const longest = [
  "tests/mutation/one-line.test.ts",
  "tests/outputs/injection.test.ts",
  "tests/syntax/damage.test.ts",
  "tests/mutation/mutation.test.ts",
  "tests/bench/rehearse.test.ts",
  "tests/outputs/pdf/manual.test.ts",
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification): number => {
      const at = longest.indexOf(relative(import.meta.dirname, moduleId).replaceAll("\\", "/"));
      return at < 0 ? longest.length : at;
    };
    return (await super.sort(files)).toSorted((a, b) => rank(a) - rank(b));
  }
}

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/support/node-version.ts"],
    // Left to itself the runner keeps one core free, which of two is half of them.
    maxWorkers: "100%",
    sequence: { sequencer: LongestFirst },
    testTimeout: 60_000,
    // The program keeps nothing that a later file could see but what it works out once; loading it once saves a third of the time.
    isolate: false,
  },
});
