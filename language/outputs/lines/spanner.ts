// The tool that drives a fastener, in words: from its drive where the author gives one, else the spanner that the standards give its
// thread. A drive without a size prints its kind alone. A size stands in the unit of the tool in any system: it is the name on the tool,
// and there is no key of 0.31 in.

import { rowWidth, rowsForThread } from "../../figures/drives.ts";
import type { Tie } from "../../model/model.ts";
import { drives, kindIn } from "../../tables/index.ts";
import { writtenText, type Units } from "./figures.ts";

export interface Spanner {
  /** `16 mm spanner`. */
  readonly says: string;
  /** Kind of the drive table. */
  readonly kind: string;
  readonly size: string;
  /** For sorting: the size as a number, 0 without. */
  readonly value: number;
  /** Nobody wrote it: it is the standard's for that thread. */
  readonly computed: boolean;
}

export function spannerOf(tie: Tie, units: Units): Spanner | undefined {
  if (!tie.fastener) return undefined;
  const { drive } = tie;
  if (drive) {
    const kind = kindIn(drives, drive.kind);
    if (!kind) return undefined;
    const { size } = drive;
    const text =
      size === undefined
        ? ""
        : kind.size === "width"
          ? writtenText(size.written, units.wording)
          : numberText(size.written);
    return {
      says: units.wording.acts.spanner(units.wording.kinds.driveTool(drive.kind), text),
      kind: drive.kind,
      size: text,
      value: size?.high ?? 0,
      computed: false,
    };
  }
  const width = standardWidth(tie);
  if (width === undefined) return undefined;
  const mm = width * 1000,
    text =
      tie.size?.system === "unified"
        ? `${inchText(width / 0.0254)} in`
        : writtenText(`${mm.toFixed(Math.abs(mm - Math.round(mm)) < 1e-6 ? 0 : 1)} mm`, units.wording);
  return {
    says: units.wording.acts.spanner(units.wording.kinds.driveTool("hex"), text),
    kind: "hex",
    size: text,
    value: width * 1000,
    computed: true,
  };
}

/** Sixteenths and thirty-seconds as they stand on the tool. */
function inchText(inches: number): string {
  const parts = Math.round(inches * 32),
    whole = Math.floor(parts / 32);
  let over = parts % 32,
    under = 32;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return over === 0 ? String(whole) : `${whole > 0 ? `${whole}-` : ""}${over}/${under}`;
}

/** `25 mm` of a series number is its number alone. */
const numberText = (written: string): string => /^[\d./-]+/.exec(written)?.[0] ?? written;

/**
 * Width across flats of a hexagon head or nut as the head standards give it, m; where the author names the standard, that one's.
 * Undefined where the tables differ (M10 is 16 mm by ISO and 17 mm by the older DIN): a wrong spanner is worse than none.
 */
function standardWidth(tie: Tie): number | undefined {
  if (!["bolt", "nut", "lock-nut"].includes(tie.kind) || !tie.size || tie.size.system === "pipe") return undefined;
  const rows = rowsForThread(tie.size.nominal, "hex"),
    own = rows.filter((row) => row.standard === tie.standard);
  const widths = new Set((own.length > 0 ? own : rows).map(rowWidth).filter((width) => width !== undefined));
  return widths.size === 1 ? [...widths][0] : undefined;
}
