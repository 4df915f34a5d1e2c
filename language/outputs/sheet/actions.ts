// The action lines of a procedure, as sheets walk them.

import type { Lines } from "../lines/groups.ts";
import type { ActionLine, LineGroup } from "../lines/line.ts";

export const actionsIn = (groups: readonly LineGroup[]): ActionLine[] =>
  groups.flatMap((group) => group.lines.filter((line): line is ActionLine => line.is === "action"));

export const allActions = ({ strip, refit, finish }: Lines): ActionLine[] => actionsIn([...strip, ...refit, ...finish]);

/** A colon before the author's words stays only where there are any. */
export const saysAll = ({ says, text }: ActionLine): string => [says, text].filter(Boolean).join(" ");
