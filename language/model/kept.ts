// What follows from a project, a file, an item or a model, worked out once and kept with it for as long as it lives.

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
