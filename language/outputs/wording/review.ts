// Whether somebody who does the work in a language has read its catalogue. A catalogue that nobody has read says so on what it prints.

export type Review =
  /** The program is written in it. */
  | { readonly is: "source" }
  /** Put into this language by the authors of the program; `says` is printed until a practitioner has read it. */
  | { readonly is: "awaited"; readonly says: string }
  /** Read and corrected by a practitioner who speaks the language; the date as YYYY-MM-DD. */
  | { readonly is: "done"; readonly by: string; readonly trade: string; readonly on: string };

/** The line for the head of a document; none for a catalogue that was read. */
export const reviewLines = ({ review }: { readonly review: Review }): readonly string[] =>
  review.is === "awaited" ? [review.says] : [];
