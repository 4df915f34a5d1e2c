// An entry "not as written" in one sentence: what, on which thing, what was done, who agreed, what is wanted.

import type { LineContext } from "../lines/context.ts";
import type { NotAsWritten } from "./record.ts";

/** The name of the thing that an entry is about; "" where it is about the line, the id where the model has no such thing. */
export const thingNamed = (item: string | undefined, { model }: Pick<LineContext, "model">): string =>
  item === undefined ? "" : (model.things.find(({ id }) => id === item)?.name ?? item);

export function notAsWrittenText(
  { what, item, note, done, agreedBy, wanted }: NotAsWritten,
  context: Pick<LineContext, "model" | "wording">,
): string {
  const { record: words } = context.wording;
  return words.notAsWritten(
    words.troubles[what],
    thingNamed(item, context),
    note ?? "",
    done ?? "",
    agreedBy ?? "",
    wanted ?? "",
  );
}
