// The JSON Schema of what `stripdown check --json` prints.

import * as z from "zod";
import { checkSchema } from "../outputs/findings/schema.ts";

export function generate(): { readonly path: string; readonly text: string } {
  return {
    path: "language/schemas/check.schema.json",
    text: `${JSON.stringify(z.toJSONSchema(checkSchema, { target: "draft-2020-12" }), null, 2)}\n`,
  };
}
