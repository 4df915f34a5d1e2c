// The page of a check in Markdown: what is wrong, why it matters, a text that fails and the same mended, and where the rule comes from.

import type { Check } from "../checks/check.ts";
import { exampleText } from "../outputs/findings/explain-text.ts";

/** Lines of an example that mark places stand as comments, so that the page shows what is said about the text. */
export function explainMarkdown(check: Check): string {
  const code = (text: string): string => "```strip\n" + exampleText(text) + "\n```";
  return (
    [
      `# ${check.title}`,
      `\`${check.code}\` · ${check.severity === "off" ? "off unless the settings turn it on" : check.severity}`,
      check.why,
      "## Such a text is found",
      code(check.fails),
      "## The same, mended",
      code(check.mended),
      check.source === undefined ? "" : `Source: ${check.source}`,
      `To keep a line as it is, write before it: \`# allow ${check.code}: reason\``,
    ]
      .filter(Boolean)
      .join("\n\n") + "\n"
  );
}
