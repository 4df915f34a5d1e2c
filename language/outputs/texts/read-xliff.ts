// An XLIFF 2 document as data: units with their source and target. It takes what any tool of a translator made of ours, in the core
// namespace, and fetches and expands nothing.

import { DOMParser, type Element, type Node } from "@xmldom/xmldom";
import { isTag } from "./translations.ts";
import { xliffNamespace } from "./xliff.ts";

export interface ReadUnit {
  readonly id: string;
  readonly source: string;
  /** "" where there is none. */
  readonly target: string;
}

export interface ReadXliff {
  readonly from: string;
  readonly to: string;
  readonly files: readonly { readonly original: string; readonly units: readonly ReadUnit[] }[];
}

/** Larger documents are no texts of procedures. */
const mostSigns = 50_000_000;

/** Why a document is none, with its place. */
class Amiss extends Error {}

/** Takes text that anybody may have written. */
export function readXliff(text: string): ReadXliff | { readonly problem: string } {
  if (text.length > mostSigns) return { problem: "it is larger than 50 million signs" };
  if (/<!DOCTYPE/i.test(text)) return { problem: "it holds a document type, which XLIFF has no need of" };
  let said = "";
  try {
    const parsed = new DOMParser({
      onError: (_level, message) => {
        said ||= message.split("\n")[0]!;
        throw new Amiss();
      },
    }).parseFromString(text.replace(/^\uFEFF/, ""), "text/xml");
    const root = parsed.documentElement;
    if (!root) throw new Amiss("it is empty");
    return documentOf(root);
  } catch (error) {
    return {
      problem:
        error instanceof Amiss && error.message !== "" ? error.message : `it is no XML that can be read (${said})`,
    };
  }
}

function documentOf(root: Element): ReadXliff {
  if (root.localName !== "xliff" || root.namespaceURI !== xliffNamespace)
    throw new Amiss(`it is no XLIFF 2 document: its root is not xliff of ${xliffNamespace}`);
  const version = root.getAttribute("version") ?? "";
  if (!/^2\.\d+$/.test(version)) throw new Amiss(`its version is ${version || "not given"}, due is 2.0, 2.1 or 2.2`);
  const [from, to] = ["srcLang", "trgLang"].map((name) => {
    const tag = root.getAttribute(name) ?? "";
    if (!isTag(tag)) throw new Amiss(`${name} of xliff: a language tag is due`);
    return tag;
  }) as [string, string];
  return {
    from,
    to,
    files: own(root, "file").map((file) => ({
      original: file.getAttribute("original") ?? "",
      units: unitsIn(file),
    })),
  };
}

/** Units of a file, also those that a tool has put into groups. */
function unitsIn(element: Element): ReadUnit[] {
  return children(element).flatMap((child): ReadUnit[] => {
    if (child.namespaceURI !== xliffNamespace) return [];
    if (child.localName === "group") return unitsIn(child);
    if (child.localName !== "unit") return [];
    const id = child.getAttribute("id") ?? "";
    // A unit that was segmented all the same is read as a whole: what stands between segments belongs to it.
    const parts = children(child).filter(
      (each) =>
        each.namespaceURI === xliffNamespace && (each.localName === "segment" || each.localName === "ignorable"),
    );
    const targets = parts.map((part) => own(part, "target")[0]),
      source = parts.map((part) => saidIn(own(part, "source")[0], id)).join("");
    const whole = parts.every((part, i) => part.localName === "ignorable" || targets[i] !== undefined);
    return [
      {
        id,
        source,
        target: whole ? parts.map((part, i) => saidIn(targets[i] ?? own(part, "source")[0], id)).join("") : "",
      },
    ];
  });
}

/** The text of a source or a target. Marks of a tool (`mrk`) fall away; codes stand for what our texts do not have. */
function saidIn(element: Element | undefined, unit: string): string {
  if (!element) return "";
  let text = "";
  const visit = (node: Node): void => {
    for (let child = node.firstChild; child; child = child.nextSibling) {
      if (child.nodeType === 3 || child.nodeType === 4) text += child.nodeValue ?? "";
      else if (child.nodeType === 1) {
        const { localName } = child as Element;
        if (localName === "cp") text += codePoint((child as Element).getAttribute("hex") ?? "");
        else if (localName === "mrk" || localName === "sm" || localName === "em") visit(child);
        else throw new Amiss(`unit ${unit}: the code ${localName ?? ""} stands in a text, and our texts have no codes`);
      }
    }
  };
  visit(element);
  return text;
}

function codePoint(hex: string): string {
  const code = /^[0-9A-Fa-f]{1,6}$/.test(hex) ? Number.parseInt(hex, 16) : Number.NaN;
  return code <= 0x10ffff ? String.fromCodePoint(code) : "";
}

const children = (element: Element): Element[] => {
  const found: Element[] = [];
  for (let child = element.firstChild; child; child = child.nextSibling)
    if (child.nodeType === 1) found.push(child as Element);
  return found;
};
const own = (element: Element, name: string): Element[] =>
  children(element).filter((child) => child.namespaceURI === xliffNamespace && child.localName === name);
