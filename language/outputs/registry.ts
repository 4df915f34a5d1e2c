// Every output, one line each, sorted by name.

import { bill } from "./bill/bill.ts";
import { modelExport } from "./export/export.ts";
import { manual } from "./manual/manual.ts";
import type { Output } from "./output.ts";
import { refit } from "./refit/refit.ts";

export const outputs: readonly Output<unknown>[] = [bill, modelExport, manual, refit];
