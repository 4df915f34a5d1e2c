// The JSON Schema of `stripdown.json`: from the shape that reads it, with every check by name, so that an editor offers the codes
// and says what each may be set to.

import * as z from "zod";
import { checks } from "../checks/registry.ts";
import { isGuarded, weight } from "../checks/severity.ts";
import { severities } from "../findings/finding.ts";
import { settingsSchema } from "../workspace/settings-schema.ts";

export function generate(): { readonly path: string; readonly text: string } {
  const schema = z.toJSONSchema(settingsSchema, { target: "draft-2020-12" }),
    severity = schema.properties?.["severity"];
  if (typeof severity !== "object") throw new Error("the settings have no severity any more");
  severity.properties = Object.fromEntries(
    checks.map(({ code, title, severity: own }) => [
      code,
      {
        description: `${title} (${own} if not said)`,
        enum: [...severities, "off" as const].filter((one) => !isGuarded(code) || weight(one) >= weight(own)),
      },
    ]),
  );
  return { path: "language/schemas/settings.schema.json", text: `${JSON.stringify(schema, null, 2)}\n` };
}
