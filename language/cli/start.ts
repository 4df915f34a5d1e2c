#!/usr/bin/env node
// The entry of the program. An older Node cannot even link the rest, so that it is asked for its version before anything else is loaded.

import { tooOld } from "./node-version.ts";

const problem = tooOld(process.versions.node);
if (problem === undefined) await import("./process-io.ts");
else {
  process.stderr.write(`${problem}\n`);
  process.exitCode = 2;
}
