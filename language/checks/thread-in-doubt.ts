// A thread that neither its spanner nor its torque goes with, where both go with another one: the thread is wrong, once.

import { assessTorque } from "../figures/tightening.ts";
import { driveFinding, type DriveFinding } from "../figures/drives.ts";
import { isFigureError } from "../figures/figure.ts";
import type { Span } from "../findings/finding.ts";
import type { Tie } from "../model/model.ts";
import { isProblem, parseThreadSize, si } from "../quantities/index.ts";
import { drives, fastenerKinds, isKindOf } from "../tables/index.ts";
import type { BenchContext } from "./check.ts";
import { assumptionsOf, highest } from "./sums.ts";
import { torqueQuestion, type JudgedTorque } from "./torque-judged.ts";

/** What the standards of heads say against the tool that drives it; undefined where they say nothing, or are not asked. */
export function againstDrive({ drive, size, kind }: Tie): DriveFinding | undefined {
  if (!drive?.size || !size || !isKindOf(drives, drive.kind)) return undefined;
  // A screw plug has a socket or a hexagon by standards that the tables of heads do not hold.
  if (isKindOf(fastenerKinds, kind) && fastenerKinds[kind].ownHeads) return undefined;
  // A hexalobular or cross recess has a number, everything else a width.
  return driveFinding(size, drive.kind, { width: si(drive.size).high, number: drive.size.low });
}

/** Where its spanner is said, if with a thread of that spanner the torque would be neither too high nor too low. */
export function threadInDoubt(
  { tie, torque }: JudgedTorque,
  context: Pick<BenchContext, "settings">,
): Span | undefined {
  const question = torqueQuestion(tie),
    threads = question && againstDrive(tie)?.threads;
  const goes = (thread: string): boolean => {
    const size = parseThreadSize(thread);
    if (isProblem(size)) return false;
    const judged = assessTorque(highest(torque.value!), { ...question!, size }, assumptionsOf(context.settings));
    return !isFigureError(judged) && judged.verdict === undefined;
  };
  return threads?.some(goes) ? tie.drive!.at : undefined;
}
