// The words of a PDF as a reader that follows its tags hears them, and as they stand on the page.

/** What is used of the library: its own types ask for those of a browser's page. */
interface Library {
  getDocument(from: { data: Uint8Array; useSystemFonts: boolean; verbosity: number }): {
    readonly promise: Promise<{
      readonly numPages: number;
      getPage(number: number): Promise<{
        getTextContent(how: { includeMarkedContent: boolean }): Promise<{ readonly items: readonly Item[] }>;
        getStructTree(): Promise<Node | null>;
      }>;
      getOutline(): Promise<readonly Bookmark[] | null>;
      getMetadata(): Promise<{ readonly info: { readonly Title?: string } }>;
    }>;
    destroy(): Promise<void>;
  };
}
const library: string = "pdfjs-dist/legacy/build/pdf.mjs";

interface Item {
  readonly type?: string;
  readonly id?: string;
  readonly str?: string;
  readonly hasEOL?: boolean;
}
interface Node {
  readonly role?: string;
  readonly type?: string;
  readonly id?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
}

export interface PageText {
  /** In the order of the tags; pictures by their alternative text. Nothing of heads, feet and marks. */
  readonly tagged: string;
  /** All that is painted. */
  readonly painted: string;
}

export interface PdfText {
  readonly pages: readonly PageText[];
  /** Titles of the bookmarks, in order. */
  readonly bookmarks: readonly string[];
  readonly title: string;
}

export async function readPdf(bytes: Uint8Array): Promise<PdfText> {
  const { getDocument } = (await import(library)) as Library,
    task = getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 }),
    file = await task.promise,
    pages: PageText[] = [];
  for (let i = 1; i <= file.numPages; i++) {
    const page = await file.getPage(i),
      { items } = await page.getTextContent({ includeMarkedContent: true }),
      tree = await page.getStructTree();
    const byId = new Map<string, string>(),
      open: (string | undefined)[] = [];
    let painted = "";
    for (const item of items) {
      if (item.type?.startsWith("beginMarkedContent")) open.push(item.id);
      else if (item.type === "endMarkedContent") open.pop();
      else {
        const text = (item.str ?? "") + (item.hasEOL === true ? " " : ""),
          id = open.findLast((each) => each !== undefined);
        painted += text;
        if (id !== undefined) byId.set(id, (byId.get(id) ?? "") + text);
      }
    }
    pages.push({ tagged: tidy(tree ? said(tree, byId) : ""), painted: tidy(painted) });
  }
  const outline = (await file.getOutline()) ?? [],
    { info } = await file.getMetadata();
  await task.destroy();
  return { pages, bookmarks: titlesOf(outline), title: info.Title ?? "" };
}

interface Bookmark {
  readonly title: string;
  readonly items: readonly Bookmark[];
}
const titlesOf = (items: readonly Bookmark[]): string[] =>
  items.flatMap(({ title, items: inner }) => [title, ...titlesOf(inner)]);

function said(node: Node, byId: ReadonlyMap<string, string>): string {
  if (node.type === "content") return byId.get(node.id ?? "") ?? "";
  if (node.alt !== undefined) return ` [${node.alt}] `;
  const inner = (node.children ?? []).map((child) => said(child, byId)).join(""),
    isInline = ["Span", "Link", "Strong", "Em", "Reference", "Lbl"].includes(node.role ?? "");
  return isInline ? inner : ` ${inner} `;
}

const tidy = (text: string): string => text.replace(/\s+/g, " ").trim();
