// The script of the manual's page, put together from `client/tablet/` and made small, as a text that the output writes into the page.

import { build } from "esbuild";
import { sha256 } from "../outputs/text/sha256.ts";

export async function generate(project: string): Promise<{ readonly path: string; readonly text: string }> {
  const { outputFiles } = await build({
    absWorkingDir: project,
    entryPoints: ["client/tablet/main.ts"],
    bundle: true,
    minify: true,
    write: false,
    legalComments: "none",
    charset: "ascii",
    format: "iife",
    platform: "browser",
    target: "es2022",
  });
  // Nothing in it may end the element that it stands in.
  const script = outputFiles[0]!.text
    .trim()
    .replace(/<\/(script)/gi, "<\\/$1")
    .replaceAll("<!--", "<\\!--");
  return {
    path: "language/outputs/manual/tablet/script.ts",
    text: `// Generated from client/tablet/ by language/generate/tablet-script.ts: run npm run generate

/** Of the script: SHA-256 in hexadecimal. */
export const tabletScriptHash = "${sha256(script)}";

export const tabletScript = ${JSON.stringify(script)};
`,
  };
}
