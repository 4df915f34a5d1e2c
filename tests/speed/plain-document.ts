// A plain document of the same kind as a manual, for the benchmark to be held against: contents, running heads, warning panels, tables over
// pages, steps of acts with a box, one drawing. It is written for the renderer alone: data as JSON, no compiler, no layout of ours.

import { join } from "node:path";
import type { PdfStandard } from "@myriaddreamin/typst-ts-node-compiler";
import { renderer } from "../../language/cli/pdf/renderer.ts";
import { families } from "../../language/outputs/pdf/pieces.ts";

const source = String.raw`
#let m = json("plain.json")
#set document(title: m.title)
#set text(font: m.fonts, size: 10pt, lang: "en", fallback: false, hyphenate: false)
#set page(paper: "a4", margin: (x: 20mm, y: 24mm),
  header: context { set text(8pt); m.title; h(1fr); str(here().page()) },
  footer: context align(center, text(8pt)[#counter(page).get().first() / #counter(page).final().first()]))
#show heading: set block(sticky: true)
#title(m.title)
#outline(depth: 2)
#let box-sign = pdf.artifact(box(width: 0.9em, height: 0.9em, stroke: 0.8pt))
#let panel(p) = block(width: 100%, stroke: 1pt, breakable: false, {
  block(width: 100%, fill: rgb(p.fill), inset: 5pt, below: 0pt, par(strong(p.word)))
  block(inset: 8pt, above: 0pt, grid(columns: (18mm, 1fr), column-gutter: 3mm,
    pdf.artifact(image(bytes(m.sign), format: "svg", width: 14mm)), { par(strong(p.title)); for l in p.lines { par(l) } }))
})
#for s in m.sections {
  heading(level: 1, s.title)
  panel(s.panel)
  table(columns: (1fr, 2fr, 1fr, 1fr), table.header(..s.heads), ..s.rows.flatten())
  for t in s.steps {
    heading(level: 2, t.title)
    enum(numbering: n => { box-sign; h(4pt); strong(str(n)) }, spacing: 1.1em,
      ..t.acts.map(a => block(breakable: false, { par(a.says); par(text(9.5pt, a.more)) })))
  }
}
#figure(image(bytes(m.drawing), format: "svg", width: 80mm, alt: m.alt), alt: m.alt)
`;

const sign = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 22"><path d="M12 1L23 21H1Z" fill="#f9a800" stroke="#000" stroke-width="1.6"/><path d="M11 8h2v6h-2zM11 16h2v2h-2z"/></svg>`;

const circle = (bolts: number): string => {
  const places = Array.from({ length: bolts }, (_, i) => {
    const at = (2 * Math.PI * i) / bolts,
      [x, y] = [100 + 70 * Math.cos(at), 100 + 70 * Math.sin(at)].map((each) => each.toFixed(2));
    return `<circle cx="${x}" cy="${y}" r="12" fill="none" stroke="#000"/><text x="${x}" y="${y}" font-size="10" font-family="${families[0]}" text-anchor="middle">${i + 1}</text>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 200">${places.join("")}</svg>`;
};

/** @param sections the number of chapters; a chapter is about two pages. @param mark makes each document another. */
function dataOf(sections: number, mark: string): unknown {
  const words = ["DANGER", "WARNING", "CAUTION", "NOTICE"],
    fills = ["#d77", "#e94", "#fb2", "#8bd"];
  return {
    title: `Plain document ${mark}`,
    fonts: families,
    sign,
    drawing: circle(12),
    alt: "Twelve bolts on a circle, numbered",
    sections: Array.from({ length: sections }, (_, i) => ({
      title: `Chapter ${i + 1}`,
      panel: {
        word: words[i % 4],
        fill: fills[i % 4],
        title: `What can hurt in chapter ${i + 1}`,
        lines: ["It turns, and it is hot after the run.", "Wear gloves. Keep others 2 m away."],
      },
      heads: ["Name", "What it is for", "Size", "Torque"],
      rows: Array.from({ length: 9 }, (__, k) => [
        `Cover bolts ${k}`,
        `Hold cover ${k} to the case beside it`,
        `M8x${20 + k}`,
        `${20 + k} N·m (${(0.7376 * (20 + k)).toFixed(0)} lbf·ft)`,
      ]),
      steps: Array.from({ length: 3 }, (__, k) => ({
        title: `${i + 1}.${k + 1} Open cover ${k + 1}`,
        acts: Array.from({ length: 6 }, (___, n) => ({
          says: `Undo the ${n + 2} bolts of cover ${k + 1}, and lay them down in tray ${n + 1}.`,
          more: `13 mm spanner. Counted: ________ / ${n + 2}`,
        })),
      })),
    })),
  };
}

/** PDF/UA-1, by the same renderer and fonts as a manual's. */
export async function plainPdf(sections: number, mark: string): Promise<Uint8Array> {
  const { compiler, folder } = await renderer(),
    main = join(folder, "plain.typ");
  compiler.resetShadow();
  compiler.mapShadow(join(folder, "plain.json"), Buffer.from(JSON.stringify(dataOf(sections, mark))));
  compiler.addSource(main, source);
  const bytes = compiler.pdf({ mainFilePath: main }, { pdfStandard: "ua-1" as PdfStandard });
  compiler.evictCache(0);
  return bytes;
}
