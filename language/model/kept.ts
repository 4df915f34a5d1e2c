// What is worked out once and kept: what follows from a project, a file, an item or a model, with it for as long as it lives; what a
// text stands for, whatever file it stands in, in a table that is bounded.

/**
 * A place for one such result: asked for the first time it does the work, later it gives what it had. The result is held by the
 * object itself, hidden from spreads and loops. A table of weak keys would say the same, but the collector of young objects takes all
 * that such a table leads to for alive: of a thousand files, one after the other, that was a fifth of the time.
 */
export function kept<Of extends object, Result extends object>(): (of: Of, work: () => Result) => Result {
  const place = Symbol("kept");
  return (of, work) => {
    const had = (of as { readonly [place]?: Result })[place];
    if (had !== undefined) return had;
    const result = work();
    Object.defineProperty(of, place, { value: result });
    return result;
  };
}

const mostSpellings = 20_000;

/**
 * `read` with its answers kept: the same figures stand all over a set of files, and what a spelling means never changes. `from` is
 * where the spelling stands or what it spells, for whoever reads it the first time: the answer must not depend on more than the text.
 */
export function bySpelling<Result, From extends readonly unknown[] = []>(
  read: (text: string, ...from: From) => Result,
): (text: string, ...from: From) => Result {
  const known = new Map<string, { readonly result: Result }>();
  return (text, ...from) => {
    let had = known.get(text);
    if (!had) {
      if (known.size >= mostSpellings) known.clear();
      known.set(text, (had = { result: read(text, ...from) }));
    }
    return had.result;
  };
}
