// What goes on the thread of a fastener, each consumable once: an author may name a locking lubricant under both words.

import type { Name } from "../model/act.ts";
import type { Tie } from "../model/model.ts";

export interface OnThread {
  readonly locker: Name | undefined;
  readonly lubricant: Name | undefined;
}

export const onThread = ({ threadLocker: locker, lubricant }: Tie): OnThread => ({
  locker,
  lubricant: lubricant?.text === locker?.text ? undefined : lubricant,
});
