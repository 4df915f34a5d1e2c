// A document for paper as the bytes of a PDF: PDF/UA-1, the same from the same document, on any machine of one kind.

import { join } from "node:path";
import type { PdfStandard } from "@myriaddreamin/typst-ts-node-compiler";
import type { PrintDocument } from "../../outputs/pdf/print.ts";
import { families } from "../../outputs/pdf/pieces.ts";
import { template } from "../../outputs/pdf/template.ts";
import { CannotRun } from "../command.ts";
import { printable, printedOtherwise } from "./missing.ts";
import { ownFamily, renderer, type Renderer } from "./renderer.ts";

export interface Pdf {
  readonly bytes: Buffer;
  /** What is not printed as it is written, a line each. */
  readonly says: readonly string[];
}

/**
 * @param font a font file of the machine, for characters that ours do not have.
 * @throws CannotRun where the renderer is not installed, the font is none, or a picture is none that it can print.
 */
export async function pdfOf(document: PrintDocument, font?: string): Promise<Pdf> {
  const all = await renderer(font),
    { compiler, folder, has } = all,
    { document: made, ...otherwise } = printable(document, has);
  const { files, ...rest } = made,
    data = { ...rest, fonts: font === undefined ? families : [...families, ownFamily] },
    main = join(folder, "document.typ");
  compiler.resetShadow();
  compiler.mapShadow(join(folder, "document.json"), Buffer.from(JSON.stringify(data)));
  for (const { name, base64 } of files) compiler.mapShadow(join(folder, name), Buffer.from(base64, "base64"));
  compiler.addSource(main, template);
  try {
    // In one call: a compiled document that is handed out stays, 60 MB of a large one, until V8 comes to collect what looks small to it.
    return {
      bytes: compiler.pdf({ mainFilePath: main }, { pdfStandard: "ua-1" as PdfStandard }),
      says: printedOtherwise(otherwise),
    };
  } catch (error) {
    throw new CannotRun(refusal(all, files, [error]));
  } finally {
    // What is kept of one document helps the next little, and is about 90 MB of a large one.
    compiler.evictCache(0);
  }
}

/** What the renderer refuses, in one line of ours: a picture by the name that the author gave it. */
function refusal({ compiler, folder }: Renderer, files: PrintDocument["files"], said: readonly unknown[]): string {
  const alone = join(folder, "alone.typ");
  const damaged = files.find(({ name }) => {
    compiler.addSource(alone, `#image(${JSON.stringify(name)}, alt: "")`);
    return compiler.compile({ mainFilePath: alone }).hasError();
  });
  if (damaged)
    return `the picture ${damaged.shownAs} cannot be printed: it is damaged, or of a kind that a PDF does not take. Save it again as PNG or JPEG`;
  const text = said.map((each) => (each instanceof Error ? each.message : JSON.stringify(each))).join(" "),
    words = [...text.matchAll(/"?message"?: ?"((?:[^"\\]|\\.)*)"/g)].map((match) => match[1]);
  return `the PDF could not be made: ${[...new Set(words.length > 0 ? words : [text])].join("; ").replaceAll("\n", " ").slice(0, 300)}. The HTML is complete without it`;
}
