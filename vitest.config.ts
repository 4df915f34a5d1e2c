// How the tests run. Nothing here depends on the clock, on the order of files, or on the machine's number of cores.

import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/support/node-version.ts"],
    testTimeout: 30_000,
    // The program keeps nothing that a later file could see but what it works out once; loading it once saves a third of the time.
    isolate: false,
  },
});
