// One line before it has its number, and the parts that every action line shares.

import type { Around } from "../../bench/trace.ts";
import type { State } from "../../bench/state.ts";
import type { Act } from "../../model/act.ts";
import type { ActionLine, Line } from "./line.ts";

/** Not numbered yet, and its conditions as the bench hands them on. */
type Drafted<T> = T extends unknown ? Omit<T, "id" | "given"> & { readonly given: Around["given"] } : never;

/** A line that its group numbers. */
export type LineDraft = Drafted<Line>;
export type ActionDraft = Drafted<ActionLine>;

/** Which act a line prints, and where it stands. */
export interface Doing {
  readonly act: Act;
  readonly around: Around;
  readonly half: "strip" | "refit" | "finish";
  /** Number of the performed act or of the op. */
  readonly of: number;
  readonly refused: boolean;
  /** The bench just before the act. */
  readonly before?: State;
}

export function action(doing: Doing, verb: string, says: string, more: Partial<ActionDraft> = {}): ActionDraft {
  return {
    is: "action",
    half: doing.half,
    at: doing.act.at,
    given: doing.around.given,
    verb,
    says,
    text: doing.act.text,
    items: [],
    details: [],
    torque: undefined,
    readings: [],
    sign: false,
    wait: undefined,
    refused: doing.refused,
    of: [doing.of],
    ...more,
  };
}
