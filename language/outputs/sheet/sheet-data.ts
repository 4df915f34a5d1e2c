// A one-page sheet as plain data: what a kind of sheet says, and what it says of one procedure.

import type { Performance } from "../../bench/trace.ts";
import type { UsesOf } from "../../bill/bill.ts";
import type { Provenance } from "../draft.ts";
import type { Lines } from "../lines/groups.ts";
import type { OutputInput, OutputOptions } from "../output.ts";
import { procedureHead, type ProcedureHead } from "./of-procedures.ts";

export interface SheetTable {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Heads of columns that are left blank for a pen. */
  readonly blank: readonly string[];
  /** What stands in place of a table without rows. */
  readonly empty: string;
}

export interface SheetOf extends ProcedureHead {
  readonly procedure: string;
  readonly notes: readonly string[];
  readonly tables: readonly SheetTable[];
}

export interface SheetData {
  readonly format: "stripdown-sheet";
  readonly version: 1;
  readonly of: string;
  readonly title: string;
  readonly note: string;
  readonly provenance: Provenance;
  readonly procedures: readonly SheetOf[];
}

export interface Made {
  readonly performance: Performance;
  readonly lines: Lines;
  readonly input: OutputInput;
  readonly options: OutputOptions;
  /** Where other tables of the same document ask too. */
  readonly uses?: UsesOf;
  /** It stands among other pages: what the table before it says need not be said again. */
  readonly inManual?: boolean;
}

export interface SheetKind {
  readonly name: string;
  readonly title: (options: OutputOptions) => string;
  readonly note: (options: OutputOptions) => string;
  /** Wide ones lie on their side. */
  readonly landscape?: boolean;
  readonly make: (made: Made) => { readonly notes?: readonly string[]; readonly tables: readonly SheetTable[] };
}

/** What a sheet says of one procedure. */
export function sheetOf({ make }: SheetKind, made: Made): SheetOf {
  const { notes = [], tables } = make(made),
    { performance, options } = made;
  return {
    procedure: performance.procedure.id,
    ...procedureHead(performance, options),
    notes,
    tables,
  };
}
