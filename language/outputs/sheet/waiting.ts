// Waiting for a part: what of the way back stops for each new part, and what can go on. It follows the partial order of the refit.

import type { RefitOrder } from "../../bench/trace.ts";
import type { ActionLine } from "../lines/line.ts";
import { actionsIn } from "./actions.ts";
import { tableSheet } from "./table-sheet.ts";

/** Every op that comes after one of these, by any chain. */
function after(order: RefitOrder, ops: readonly number[]): Set<number> {
  const found = new Set(ops),
    queue = [...ops];
  for (const op of queue)
    for (const next of order.later[op] ?? [])
      if (!found.has(next)) {
        found.add(next);
        queue.push(next);
      }
  return found;
}

export const waitingSheet = tableSheet({
  name: "waiting",
  title: ({ wording }) => wording.benchSheets.waiting.title,
  note: ({ wording }) => wording.benchSheets.waiting.note,
  make: ({ performance, lines, options }) => {
    const { waiting } = options.wording.benchSheets,
      { order } = performance,
      refit = actionsIn(lines.refit);
    const fresh = [
      ...new Map(
        refit.flatMap((line) =>
          line.items.filter((item) => item.fresh !== undefined).map((item) => [item.id, item] as const),
        ),
      ).values(),
    ];
    const rows = order
      ? fresh.flatMap((item): string[][] => {
          const own = order.ops.filter(({ things }) =>
            things.some((thing) => performance.model.things[thing]?.id === item.id),
          );
          const late = after(
            order,
            own.map(({ number }) => number),
          );
          // Nobody takes a precaution back while the machine stands open for want of a part.
          const isLate = ({ of, verb }: ActionLine): boolean => verb === "lift" || of.some((op) => late.has(op)),
            waits = own.length === 0 ? [] : refit.filter(isLate),
            goesOn = refit.filter((line) => !isLate(line));
          return waits.length === 0
            ? []
            : [
                [
                  item.name,
                  (refit.find(({ of }) => own.some(({ number }) => of.includes(number))) ?? waits[0]!).id,
                  waiting.count(waits.length, ranges(waits)),
                  waiting.count(goesOn.length, ranges(goesOn)),
                ],
              ];
        })
      : [];
    return {
      tables: [
        {
          title: waiting.title,
          columns: [waiting.part, waiting.first, waiting.waits, waiting.goesOn],
          blank: [],
          empty: waiting.nothing,
          rows,
        },
      ],
    };
  },
});

/** `R1.2 to R1.5, R3.1`: neighbours of one step in one phrase. */
function ranges(lines: readonly { readonly id: string }[]): string {
  const parts: string[] = [];
  let begin = "",
    last = "";
  const put = (): void => {
    if (begin !== "") parts.push(begin === last ? begin : `${begin} – ${last}`);
  };
  for (const { id } of lines) {
    const [step = "", number = ""] = id.split("."),
      [lastStep = "", lastNumber = ""] = last.split(".");
    if (step === lastStep && Number(number) === Number(lastNumber) + 1) last = id;
    else {
      put();
      begin = id;
      last = id;
    }
  }
  put();
  return parts.join(", ");
}
