// Tests that need a real browser: apart from the others, since a bare machine has none until it is put there.

import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: `${import.meta.dirname}/../..`,
    include: ["tests/pages/**/*.page.ts"],
    globalSetup: ["tests/support/node-version.ts"],
    testTimeout: 240_000,
    hookTimeout: 120_000,
    // Each file has a browser of its own; most of the time one of the two waits for it.
    maxWorkers: 2,
  },
});
