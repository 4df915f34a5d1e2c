// A build as it is printed: its name in the data stays the same in every language.

import type { Model } from "../../model/model.ts";
import type { Wording } from "../wording/wording.ts";

/** "" where the unit has one build only. */
export const buildText = ({ build, choices }: Pick<Model, "build" | "choices">, { document }: Wording): string =>
  build === "" ? "" : document.build(choices);
