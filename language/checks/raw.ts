// A finding on its way: with what merging has to know of it, before what belongs together is one finding.

import type { Finding, Span } from "../findings/finding.ts";
import type { Settings } from "../world/settings.ts";
import type { Check, Draft } from "./check.ts";
import { severityOf } from "./severity.ts";

/** Things of one unit that are in each other's way. */
export interface InTheWay {
  /** Found on the bench of a unit around it. */
  readonly isInside: boolean;
  /** By declaration and piece: on each bench they are the same. */
  readonly things: ReadonlySet<string>;
}

export interface Raw extends Finding {
  /** Build that it was found in; undefined where it does not depend on one. */
  readonly build: string | undefined;
  /** Of which unit, by `unitKey`; "" where of none. */
  readonly unit: string;
  /** What it is about, as the author calls it, for pieces that share a line; and by id, for what several procedures miss. */
  readonly who: string;
  readonly about: readonly string[];
  /** What the bench missed, in one text for equal lacks, and the procedures that it performed on the way: of related procedures it is one mistake. */
  readonly lack: { readonly what: ReadonlySet<string>; readonly performed: ReadonlySet<string> } | undefined;
  /**
   * Set where every reason is that things are in each other's way. The bench of the unit that these things belong to finds the same, so that
   * it is said there and not again for each unit around it.
   */
  readonly inTheWay: InTheWay | undefined;
  /** The declaration that it finds something missing in: what is said there speaks for it. */
  readonly restsOn: Span | undefined;
  readonly answer?: Draft["answer"];
  readonly within?: Draft["within"];
}

/** Where a finding was found and what of it merging asks; what is left out is not known of it. */
export type Found = Pick<Raw, "build" | "unit"> & Partial<Pick<Raw, "who" | "about" | "lack" | "inTheWay" | "restsOn">>;

/** A draft with its code and weight; undefined where the settings turn its check off. */
export function rawFinding(
  check: Pick<Check, "code" | "severity">,
  draft: Draft,
  settings: Settings,
  found: Found,
): Raw | undefined {
  const severity = severityOf(check, settings, draft.severity);
  if (severity === "off") return undefined;
  return {
    code: check.code,
    severity,
    says: draft.says,
    at: draft.at,
    because: draft.because ?? [],
    fixes: draft.fixes ?? [],
    builds: [],
    ...(draft.tag === undefined ? {} : { tag: draft.tag }),
    build: found.build,
    unit: found.unit,
    who: found.who ?? "",
    about: found.about ?? [],
    lack: found.lack,
    inTheWay: found.inTheWay,
    restsOn: found.restsOn,
    ...(draft.answer === undefined ? {} : { answer: draft.answer }),
    ...(draft.within === undefined ? {} : { within: draft.within }),
  };
}
