// The objects of a PDF as the checks look at them.

import {
  decodePDFRawStream,
  PDFArray,
  PDFBool,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  PDFRawStream,
  PDFRef,
  PDFString,
  type PDFObject,
} from "@cantoo/pdf-lib";

export interface Objects {
  readonly document: PDFDocument;
  readonly catalog: PDFDict;
  /** Every dictionary, those of streams too. */
  readonly dicts: readonly PDFDict[];
}

export async function objectsOf(bytes: Uint8Array): Promise<Objects> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false }),
    dicts = document.context.enumerateIndirectObjects().flatMap(([, object]) => {
      if (object instanceof PDFRawStream) return [object.dict];
      return object instanceof PDFDict ? [object] : [];
    });
  return { document, catalog: document.catalog, dicts };
}

/** What stands under a key, with references followed. */
export const at = (dict: PDFDict | undefined, key: string): PDFObject | undefined => dict?.lookup(PDFName.of(key));
export const dictAt = (dict: PDFDict | undefined, key: string): PDFDict | undefined => {
  const found = at(dict, key);
  return found instanceof PDFDict ? found : found instanceof PDFRawStream ? found.dict : undefined;
};
/** A name without its stroke; "" where there is none. */
export const nameAt = (dict: PDFDict | undefined, key: string): string => {
  const found = at(dict, key);
  return found instanceof PDFName ? found.decodeText() : "";
};
export const textAt = (dict: PDFDict | undefined, key: string): string => {
  const found = at(dict, key);
  return found instanceof PDFString || found instanceof PDFHexString ? found.decodeText() : "";
};
export const numberAt = (dict: PDFDict | undefined, key: string): number | undefined => {
  const found = at(dict, key);
  return found instanceof PDFNumber ? found.asNumber() : undefined;
};
export const isTrue = (dict: PDFDict | undefined, key: string): boolean => at(dict, key) === PDFBool.True;
export const refAt = (dict: PDFDict, key: string): PDFRef | undefined => {
  const found = dict.get(PDFName.of(key));
  return found instanceof PDFRef ? found : undefined;
};
/** One or several, as they stand: references are not followed. */
export function each(dict: PDFDict | undefined, key: string): PDFObject[] {
  const found = at(dict, key);
  if (found instanceof PDFArray) return found.asArray();
  const own = dict?.get(PDFName.of(key));
  return own === undefined ? [] : [own];
}

/** The bytes of a stream as one sign a byte. */
export function streamText(object: PDFObject | undefined): string {
  return object instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(object).decode()).toString("latin1") : "";
}
