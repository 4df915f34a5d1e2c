// Breaking a line of text at blanks. A word that is longer than the line stays whole.

/** The lines of `text` with `first` before the first and `next` before the others, at most `width` signs where the words allow it. */
export function wrap(text: string, first: string, next: string, width = 100): string[] {
  const out: string[] = [];
  let line = first,
    isEmpty = true;
  for (const word of text.split(" ")) {
    if (!isEmpty && line.length + 1 + word.length > width) {
      out.push(line);
      line = next;
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  out.push(line);
  return out.map((each) => each.trimEnd());
}
