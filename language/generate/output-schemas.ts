// The JSON Schemas of the outputs that a program may read.

import { billShape } from "./shapes/bill.ts";
import { published } from "./shapes/common.ts";
import { modelShape } from "./shapes/model.ts";
import { refitShape } from "./shapes/refit.ts";

export function generate(): readonly { readonly path: string; readonly text: string }[] {
  return [published("refit", refitShape), published("bill", billShape), published("model", modelShape)];
}
