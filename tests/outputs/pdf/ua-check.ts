// Conditions of PDF/UA-1 (ISO 14289-1) that a program can judge, by their numbers in the Matterhorn Protocol 1.1 of the PDF Association
// (numbers from memory, clauses in brackets). What needs a person is not judged: whether an alternative text is true, an order sensible.

import { PDFDict, PDFName, PDFNumber, PDFRawStream, PDFRef, type PDFObject } from "@cantoo/pdf-lib";
import {
  at,
  dictAt,
  each,
  isTrue,
  nameAt,
  numberAt,
  objectsOf,
  refAt,
  streamText,
  textAt,
  type Objects,
} from "./ua-objects.ts";

export interface UaReport {
  /** `13-004 Figure without alternative text`, each once. */
  readonly findings: readonly string[];
  /** How many of each tag. */
  readonly tags: Readonly<Record<string, number>>;
}

type Fail = (id: string, what: string) => void;

export async function checkUa(bytes: Uint8Array): Promise<UaReport> {
  const objects = await objectsOf(bytes),
    findings = new Set<string>(),
    fail: Fail = (id, what) => findings.add(`${id} ${what}`);
  catalogue(objects, fail);
  const tree = structure(objects, fail);
  contents(objects, tree.marked, fail);
  annotations(objects, tree.inTag, fail);
  fonts(objects, fail);
  return { findings: [...findings].sort(), tags: tree.tags };
}

/** Metadata and language (5, 7.1, 7.2), scripts of forms (7.15), locks (7.16). */
function catalogue({ catalog, document }: Objects, fail: Fail): void {
  const mark = dictAt(catalog, "MarkInfo"),
    xmp = Buffer.from(streamText(at(catalog, "Metadata")), "latin1").toString("utf8");
  if (!isTrue(mark, "Marked")) fail("01-000", "the file does not say that it is tagged");
  if (isTrue(mark, "Suspects")) fail("01-007", "Suspects is true");
  if (xmp === "") fail("06-001", "no XMP metadata");
  if (!/pdfuaid:part[>="']+1/.test(xmp)) fail("06-002", "no PDF/UA mark");
  if (!/<dc:title>/.test(xmp)) fail("06-003", "no title in the metadata");
  if (!isTrue(dictAt(catalog, "ViewerPreferences"), "DisplayDocTitle")) fail("07-001", "DisplayDocTitle is not true");
  if (textAt(catalog, "Lang") === "") fail("11-001", "no language");
  if (at(dictAt(catalog, "AcroForm"), "XFA")) fail("25-001", "XFA form");
  if (document.isEncrypted) fail("26-001", "encrypted");
}

const standardTags = new Set(
  "Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby Warichu RB RT RP WT WP Figure Formula Form".split(
    " ",
  ),
);
const list = (names: string): ReadonlySet<string> => new Set(names.split(" "));
/** What may lie in what, and what must lie in what. */
const mayHold: Readonly<Record<string, ReadonlySet<string>>> = {
  Table: list("TR THead TBody TFoot Caption"),
  THead: list("TR"),
  TBody: list("TR"),
  TFoot: list("TR"),
  TR: list("TH TD"),
  L: list("LI L Caption"),
  LI: list("Lbl LBody"),
  TOC: list("TOCI TOC Caption"),
};
const mustLieIn: Readonly<Record<string, ReadonlySet<string>>> = {
  TR: list("Table THead TBody TFoot"),
  TH: list("TR"),
  TD: list("TR"),
  THead: list("Table"),
  TBody: list("Table"),
  LI: list("L"),
  LBody: list("LI"),
  TOCI: list("TOC"),
};

interface Tree {
  readonly tags: Record<string, number>;
  /** `page MCID` of all content that lies in a tag. */
  readonly marked: Set<string>;
  /** The tag that an annotation lies in, by its reference. */
  readonly inTag: Map<string, string>;
}

/** Tags (7.1 to 7.7): known, rightly nested, with the texts and the scopes that they need. */
function structure({ catalog }: Objects, fail: Fail): Tree {
  const root = dictAt(catalog, "StructTreeRoot"),
    roles = dictAt(root, "RoleMap"),
    tree: Tree = { tags: {}, marked: new Set(), inTag: new Map() };
  let level = 0;
  const role = (node: PDFDict): string => {
    let tag = nameAt(node, "S");
    for (let i = 0; i < 9 && !standardTags.has(tag); i++) {
      const mapped = nameAt(roles, tag);
      if (mapped === "") {
        fail("02-001", `tag ${tag} stands for no standard tag`);
        return tag;
      }
      tag = mapped;
    }
    return tag;
  };
  const walk = (node: PDFDict, parent: string, page: string): void => {
    const tag = role(node),
      here = refAt(node, "Pg")?.toString() ?? page;
    tree.tags[tag] = (tree.tags[tag] ?? 0) + 1;
    if ((mustLieIn[tag] && !mustLieIn[tag].has(parent)) || (mayHold[parent] && !mayHold[parent].has(tag)))
      fail(nesting(tag, parent), `${tag} lies in ${parent}`);
    const alt = textAt(node, "Alt");
    if (tag === "Figure" && alt === "" && textAt(node, "ActualText") === "")
      fail("13-004", "Figure without alternative text");
    if (tag === "Formula" && alt === "") fail("17-002", "Formula without alternative text");
    if (tag === "TH" && !attributes(node).some((a) => nameAt(a, "Scope") !== "" || each(a, "Headers").length > 0))
      fail("15-003", "TH without Scope");
    if (/^H[1-6]$/.test(tag)) {
      const own = Number(tag[1]);
      if (level === 0 && own !== 1) fail("14-002", "the first heading is no H1");
      if (own > level + 1) fail("14-003", "a heading level is skipped");
      level = own;
    }
    for (const kid of each(node, "K")) {
      const object = kid instanceof PDFRef ? node.context.lookup(kid) : kid;
      if (object instanceof PDFNumber) tree.marked.add(`${here} ${object.asNumber()}`);
      else if (object instanceof PDFDict) kidOf(object, tag, here);
    }
  };
  const kidOf = (kid: PDFDict, tag: string, page: string): void => {
    const type = nameAt(kid, "Type");
    if (type === "OBJR") tree.inTag.set(refAt(kid, "Obj")?.toString() ?? "", tag);
    else if (type === "MCR") tree.marked.add(`${refAt(kid, "Pg")?.toString() ?? page} ${numberAt(kid, "MCID")}`);
    else walk(kid, tag, page);
  };
  for (const kid of each(root, "K")) {
    const object = kid instanceof PDFRef ? root!.context.lookup(kid) : kid;
    if (object instanceof PDFDict) walk(object, "StructTreeRoot", "");
  }
  if (Object.keys(tree.tags).length === 0) fail("01-005", "no tags at all");
  if (tree.tags["H"] && Object.keys(tree.tags).some((tag) => /^H\d$/.test(tag))) fail("14-007", "both H and H1 to H6");
  return tree;
}

const nesting = (tag: string, parent: string): string =>
  [tag, parent].some((each_) => each_.startsWith("TOC"))
    ? "09-006"
    : [tag, parent].some((each_) => /^L(?:I|Body)?$/.test(each_))
      ? "09-005"
      : "09-004";

const attributes = (node: PDFDict): PDFDict[] =>
  each(node, "A").flatMap((one) => {
    const object = one instanceof PDFRef ? node.context.lookup(one) : one;
    return object instanceof PDFDict ? [object] : [];
  });

/** Everything painted lies in a tag or is an artifact, never both (7.1); no content is borrowed from other files (7.20). */
function contents({ document, dicts }: Objects, marked: ReadonlySet<string>, fail: Fail): void {
  for (const page of document.getPages()) {
    const parts = each(page.node, "Contents").map((part) =>
      part instanceof PDFRef ? page.node.context.lookup(part) : part,
    );
    paint(parts.map((part) => streamText(part)).join("\n"), page.ref.toString(), marked, fail);
  }
  for (const dict of dicts)
    if (nameAt(dict, "Subtype") === "Form" && at(dict, "Ref")) fail("30-001", "content of another file");
}

const operator =
  /\/(\S+)\s*(\/\S+|<<[^>]*>>)?\s*(BDC|BMC)\b|\b(EMC)\b|(?<=\s)(Tj|TJ|Do|sh|S|s|f\*?|F|B\*?|b\*?)(?=\s|$)/g;

/** Strings may hold pairs of brackets and words that look like operators: they are taken out. */
function withoutStrings(code: string): string {
  let bare = "",
    from = 0;
  for (let i = 0; i < code.length; i++) {
    const sign = code[i];
    if (sign === "<" && code[i + 1] === "<") i++;
    else if (sign === "<" || sign === "(") {
      bare += `${code.slice(from, i)}()`;
      if (sign === "<") i = code.indexOf(">", i);
      else
        for (let depth = 1; depth > 0;) {
          const inner = code[++i];
          if (inner === undefined) return bare;
          if (inner === "\\") i++;
          else if (inner === "(") depth++;
          else if (inner === ")") depth--;
        }
      from = i + 1;
    }
  }
  return bare + code.slice(from);
}

function paint(code: string, page: string, marked: ReadonlySet<string>, fail: Fail): void {
  const open: ("tag" | "artifact" | "other")[] = [],
    bare = withoutStrings(code);
  for (const [, tag, properties, begins, ends] of bare.matchAll(operator)) {
    if (ends) open.pop();
    else if (begins) {
      const id = /MCID\s+(\d+)/.exec(properties ?? "")?.[1],
        isArtifact = tag === "Artifact";
      if (isArtifact && open.includes("tag")) fail("01-003", "an artifact inside tagged content");
      if (!isArtifact && id !== undefined && open.includes("artifact")) fail("01-004", "tagged content in an artifact");
      if (id !== undefined && !marked.has(`${page} ${id}`)) fail("01-005", "marked content that no tag holds");
      open.push(isArtifact ? "artifact" : id === undefined ? "other" : "tag");
    } else if (!open.includes("tag") && !open.includes("artifact"))
      fail("01-005", "something painted outside tags and artifacts");
  }
}

/** Links, fields and the rest (7.18). */
function annotations({ document }: Objects, inTag: ReadonlyMap<string, string>, fail: Fail): void {
  for (const { node } of document.getPages()) {
    const all = each(node, "Annots");
    if (all.length > 0 && nameAt(node, "Tabs") !== "S") fail("28-008", "a page with links lacks the order of tabs");
    for (const ref of all) {
      const annotation: PDFObject | undefined = ref instanceof PDFRef ? node.context.lookup(ref) : ref;
      if (!(annotation instanceof PDFDict)) continue;
      const kind = nameAt(annotation, "Subtype"),
        tag = inTag.get(ref.toString());
      if (kind === "Popup" || ((numberAt(annotation, "F") ?? 0) & 2) !== 0) continue;
      if (kind === "Link") {
        if (tag !== "Link" && tag !== "Reference") fail("28-011", "a link that lies in no Link tag");
        if (textAt(annotation, "Contents") === "") fail("28-012", "a link without words");
      } else if (kind === "Widget") {
        if (tag !== "Form") fail("28-010", "a field that lies in no Form tag");
        if (textAt(annotation, "TU") === "") fail("28-005", "a field without words");
      } else if (tag !== "Annot") fail("28-002", "an annotation that lies in no Annot tag");
    }
  }
}

/** Fonts (7.21) and files within (7.11). */
function fonts({ dicts }: Objects, fail: Fail): void {
  for (const dict of dicts) {
    const type = nameAt(dict, "Type"),
      kind = nameAt(dict, "Subtype");
    if (type === "FontDescriptor" && !["FontFile", "FontFile2", "FontFile3"].some((key) => at(dict, key)))
      fail("31-009", "a font that is not in the file");
    if (type === "Font" && kind === "Type0" && !(at(dict, "ToUnicode") instanceof PDFRawStream))
      fail("31-027", "a font whose signs have no Unicode");
    if (type === "Font" && kind === "CIDFontType2" && !dict.has(PDFName.of("CIDToGIDMap")))
      fail("31-006", "a font without its map of glyphs");
    if (type === "Filespec" && at(dict, "EF") && !(at(dict, "F") && at(dict, "UF")))
      fail("21-001", "a file within that lacks its name");
  }
}
