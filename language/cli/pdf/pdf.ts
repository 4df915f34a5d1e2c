// A document for paper as the bytes of a PDF: PDF/UA-1, the same from the same document, on any machine of one kind.

import { join } from "node:path";
import type { PrintDocument } from "../../outputs/pdf/print.ts";
import { template } from "../../outputs/pdf/template.ts";
import { CannotRun } from "../command.ts";
import { missingIn, missingText } from "./missing.ts";
import { renderer } from "./renderer.ts";

export interface Pdf {
  readonly bytes: Buffer;
  readonly pages: number;
}

/** @throws CannotRun where the renderer is not installed, a character has no font, or a picture is none that it can print. */
export async function pdfOf(document: PrintDocument): Promise<Pdf> {
  const { compiler, folder, has } = await renderer(),
    missing = missingIn(document, has);
  if (missing.length > 0) throw new CannotRun(missingText(missing));
  const { files, ...data } = document,
    main = join(folder, "document.typ");
  compiler.resetShadow();
  compiler.mapShadow(join(folder, "document.json"), Buffer.from(JSON.stringify(data)));
  for (const { name, base64 } of files) compiler.mapShadow(join(folder, name), Buffer.from(base64, "base64"));
  compiler.addSource(main, template);
  const compiled = compiler.compile({ mainFilePath: main }),
    { result } = compiled;
  if (!result) throw new CannotRun(refusal(compiled.takeError()?.shortDiagnostics ?? [], files));
  try {
    return { bytes: compiler.pdf(result, { pdfStandard: "ua-1" as never }), pages: result.numOfPages };
  } catch (error) {
    throw new CannotRun(refusal([error], files));
  } finally {
    compiler.evictCache(10);
  }
}

/** What the renderer says, in one line of ours: pictures by the names that the author gave them. */
function refusal(said: readonly unknown[], files: PrintDocument["files"]): string {
  const text = said.map((each) => (each instanceof Error ? each.message : JSON.stringify(each))).join(" "),
    picture = files.find(({ name }) => text.includes(name));
  if (picture)
    return `the picture ${picture.shownAs} cannot be printed: it is damaged, or of a kind that a PDF does not take. Save it again as PNG or JPEG`;
  return `the PDF could not be made: ${text.replaceAll("\n", " ").slice(0, 400)}`;
}
