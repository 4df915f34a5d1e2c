// The checks in the order of their codes, parted by what they speak of, and the context in which they word what they found.

import type { Reason } from "../bench/trace.ts";
import type { Because } from "../findings/finding.ts";
import type { Model } from "../model/model.ts";
import type { BenchContext, Check, CheckContext } from "./check.ts";

export interface CheckTable {
  readonly all: readonly Check[];
  /** Those that speak of a file, of a model, of a performance: most wait for what the bench finds and speak of none. */
  readonly ofFile: readonly Asked<"file">[];
  readonly ofModel: readonly Asked<"model">[];
  /** Of a model too, but by what stands in any file. */
  readonly ofModelAmongAll: readonly Asked<"model">[];
  readonly ofPerformance: readonly Asked<"performance">[];
  byCode(code: string): Check | undefined;
}

export type Asked<Of extends "file" | "model" | "performance"> = Check & Required<Pick<Check, Of>>;
const asks =
  <Of extends "file" | "model" | "performance">(of: Of) =>
  (check: Check): check is Asked<Of> =>
    check[of] !== undefined;

export function checkTable(all: readonly Check[]): CheckTable {
  const codes = new Map(all.map((check) => [check.code, check]));
  return {
    all,
    ofFile: all.filter(asks("file")),
    ofModel: all.filter(asks("model")).filter(({ asksAllFiles }) => asksAllFiles !== true),
    ofModelAmongAll: all.filter(asks("model")).filter(({ asksAllFiles }) => asksAllFiles === true),
    ofPerformance: all.filter(asks("performance")),
    byCode: (code) => codes.get(code),
  };
}

/** What a check may ask of a model; reasons are worded by the check of their own rule. */
export function benchContext(table: CheckTable, base: CheckContext, model: Model): BenchContext {
  const context: BenchContext = {
    ...base,
    model,
    name: (thing) => model.things[thing]?.name ?? "",
    because: (reason: Reason): Because => {
      const says = table.byCode(reason.rule)?.reason?.(reason, context) ?? reason.words.join(" ");
      return reason.at ? { says, at: reason.at } : { says };
    },
  };
  return context;
}
