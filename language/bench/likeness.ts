// What two readings of the same texts have in common, before an edit and after it: which procedures say the same at other places, up to
// which line, and which object of the older reading stands for which of the newer one. Places are never compared, only what is said.

import type { BlockEntry, Entry, Model, Procedure } from "../model/model.ts";
import type { Frame } from "./stages.ts";

/** Of a performance, what an edit left as it was. */
export interface Unchanged {
  /** Does all say the same that was done up to the entry that this way leads to? */
  readonly reaches: (frames: readonly Frame[]) => boolean;
  /** The whole procedure does, with its way back and all that goes before it. */
  readonly whole: boolean;
}

export interface Likeness {
  /** What stands now where this stood; the same object where nothing was read anew. */
  now<T extends object>(older: T): T;
  /** Did an object stand in the older reading? Else performing made it. */
  readonly stood: (one: object) => boolean;
  /** The title of the step at this place, as it reads now. */
  title(at: object): string | undefined;
  /** Where the word of the act at this place ends now. */
  wordEnd(at: object): number | undefined;
  /** Texts that are only printed changed somewhere. */
  readonly proseChanged: () => boolean;
  /** Undefined where what is declared, the procedure's head, or what has to be done before it says something else. */
  unchanged(older: Model, now: Model, id: string): Unchanged | undefined;
}

/** What one procedure says, compared. */
interface Own {
  readonly head: boolean;
  readonly entries: number;
  readonly whole: boolean;
}

/** The parts of a procedure that are compared line by line. */
const lists: ReadonlySet<string> = new Set(["body", "refit", "finish"]);
/** Figures that are places in a text. */
const places: ReadonlySet<string> = new Set(["start", "end", "wordEnd"]);

/**
 * Texts that performing never reads, so that another wording changes nothing on the bench. A reading that has a name gives its text to
 * what hangs on it, and names and titles stand in what problems say: those count.
 */
function isProse(of: object, key: string): boolean {
  switch (key) {
    case "about":
    case "issue":
    case "plate":
      return true;
    case "text":
      return "wordEnd" in of ? (of as { id?: unknown }).id === undefined : "signal" in of || "hazard" in of;
    case "text2":
      return "wordEnd" in of;
    case "back":
      return "hazard" in of;
    default:
      return false;
  }
}

/** One comparison for all builds of a file: what they share is compared once. */
export function likeness(): Likeness {
  const pairs = new Map<object, object>(),
    titles = new Map<object, string>(),
    wordEnds = new Map<object, number>(),
    declared = new Map<Model, { readonly now: Model; readonly same: boolean }>(),
    owns = new Map<Procedure, { readonly now: Procedure; readonly own: Own }>();
  let proseChanged = false;

  /** Notes that one stands for the other. A thing that stands for two is no clear case, and then nothing is the same. */
  const paired = (a: object, b: object): boolean => {
    const had = pairs.get(a);
    if (had === undefined) pairs.set(a, b);
    return had === undefined || had === b;
  };
  const alike = (a: unknown, b: unknown): boolean => {
    if (typeof a !== "object" || a === null || typeof b !== "object" || b === null) return Object.is(a, b);
    const had = pairs.get(a);
    if (had !== undefined) return had === b;
    return (a === b || inside(a, b)) && paired(a, b);
  };
  const inside = (a: object, b: object): boolean => {
    if (Array.isArray(a)) return Array.isArray(b) && a.length === b.length && a.every((one, i) => alike(one, b[i]));
    if (a instanceof Map) {
      if (!(b instanceof Map) || a.size !== b.size) return false;
      const others = b.entries();
      for (const [key, value] of a) {
        const [otherKey, other] = others.next().value as [unknown, unknown];
        if (key !== otherKey || !alike(value, other)) return false;
      }
      return true;
    }
    if (a instanceof Set) return b instanceof Set && a.size === b.size && [...a].every((one) => b.has(one));
    return fields(a, b, places);
  };
  const fields = (a: object, b: object, but: ReadonlySet<string>): boolean => {
    // Without lists of the keys: an act has some forty, and there are thousands.
    let left = count(b);
    for (const key in a) {
      left--;
      if (but.has(key)) continue;
      const one = (a as Record<string, unknown>)[key],
        other = (b as Record<string, unknown>)[key];
      if (isProse(a, key)) {
        if (!alike(one, other)) proseChanged = true;
      } else if (!alike(one, other)) return false;
    }
    return left === 0;
  };

  /** Line by line, and never taken for the same unread: every act has to be known by its older object. */
  const entry = (a: Entry, b: Entry): boolean => {
    if (a === b) return stands(a);
    if (a.is === "act") {
      if (b.is !== "act" || !fields(a.act, b.act, places)) return false;
      wordEnds.set(b.act.at, b.act.wordEnd);
      return paired(a.act, b.act) && paired(a, b);
    }
    return b.is === "block" && heads(a, b) && a.body.length === b.body.length && front(a.body, b.body) === a.body.length
      ? paired(a, b)
      : false;
  };
  /** The very same entry: each of its acts stands for itself. */
  const stands = (one: Entry): boolean => (one.is === "act" ? paired(one.act, one.act) : one.body.every(stands));
  /** Two blocks without what stands in them. */
  const heads = (a: BlockEntry, b: BlockEntry): boolean => {
    if (a.kind !== b.kind || a.name !== b.name || a.key !== b.key) return false;
    if (a.title !== b.title) {
      // The title of a step is printed; that of an optional part goes into what stands under it.
      if (a.kind !== "step") return false;
      proseChanged = true;
    }
    if (!alike(a.over, b.over) || !alike(a.condition, b.condition)) return false;
    if (!alike(a.at, b.at) || !alike(a.whole, b.whole)) return false;
    titles.set(b.at, b.title);
    return true;
  };
  /** How many entries from the first one on are the same. */
  const front = (a: readonly Entry[], b: readonly Entry[]): number => {
    const most = Math.min(a.length, b.length);
    let same = 0;
    while (same < most && entry(a[same]!, b[same]!)) same++;
    if (same === a.length && same === b.length && !paired(a, b)) return 0;
    return same;
  };
  const ownOf = (a: Procedure, b: Procedure): Own => {
    const had = owns.get(a);
    if (had?.now === b) return had.own;
    const head = fields(a, b, lists),
      entries = front(a.body, b.body);
    const rest = (x: readonly Entry[], y: readonly Entry[]): boolean =>
      x.length === y.length && front(x, y) === x.length;
    const own: Own = {
      head,
      entries,
      whole:
        head &&
        entries === a.body.length &&
        entries === b.body.length &&
        rest(a.refit, b.refit) &&
        rest(a.finish, b.finish) &&
        paired(a, b),
    };
    // A procedure that stood for another one before stands for none.
    owns.set(a, { now: b, own: had ? { head: false, entries: 0, whole: false } : own });
    return owns.get(a)!.own;
  };

  /** Everything but the procedures. */
  const sameThings = (older: Model, now: Model): boolean => {
    const had = declared.get(older);
    if (had?.now === now) return had.same;
    const same = fields(older, now, notProcedures) && sameOrder(older, now);
    declared.set(older, { now, same });
    return same;
  };

  return {
    now: <T extends object>(older: T): T => (pairs.get(older) as T | undefined) ?? older,
    stood: (one) => pairs.has(one),
    title: (at) => titles.get(at),
    wordEnd: (at) => wordEnds.get(at),
    proseChanged: () => proseChanged,
    unchanged(older, now, id) {
      const a = older.procedures.get(id),
        b = now.procedures.get(id);
      if (!a || !b || !sameThings(older, now)) return undefined;
      const own = ownOf(a, b);
      if (!own.head) return undefined;
      const closed = new Map<string, boolean>(),
        counted = new Map<readonly Entry[], number>();
      /** Does what is named so, and what that names in turn, say the same? The procedure itself is compared line by line. */
      const sameWith = (name: string): boolean => {
        const had = closed.get(name);
        if (had !== undefined) return had;
        const reached = new Set([name]);
        let is = true;
        for (const one of reached) {
          if (one === id) continue;
          const x = older.procedures.get(one),
            y = now.procedures.get(one);
          if (!x && !y) continue;
          const before = x && namedBefore(older, x);
          if (
            closed.get(one) === false ||
            !x ||
            !y ||
            !before ||
            !ownOf(x, y).whole ||
            before.join() !== namedBefore(now, y).join()
          ) {
            is = false;
            break;
          }
          for (const list of [before, named(x.body), named(x.refit), named(x.finish)])
            for (const other of list) if (closed.get(other) !== true) reached.add(other);
        }
        closed.set(name, is);
        return is;
      };
      const same = (names: readonly string[]): boolean => names.every(sameWith);
      /** How many entries say the same, from the first one on, with all that they call. */
      const sameIn = (x: readonly Entry[], y: readonly Entry[]): number => {
        let count = counted.get(x);
        if (count === undefined) {
          const most = front(x, y);
          count = 0;
          while (count < most && same(named([x[count]!]))) count++;
          counted.set(x, count);
        }
        return count;
      };
      const headOf = (x: Procedure, y: Procedure): boolean => {
        const before = namedBefore(older, x);
        // A procedure as head and what follows it: the object of the newer reading stands for the older one in all that is taken over.
        return ownOf(x, y).head && before.join() === namedBefore(now, y).join() && same(before) && paired(x, y);
      };
      const reaches = (frames: readonly Frame[]): boolean => {
        let x: readonly Entry[] = a.body,
          y: readonly Entry[] = b.body;
        for (const [k, { at }] of frames.entries()) {
          const count = sameIn(x, y),
            inner = frames[k + 1];
          if (!inner || at !== count) return at <= count;
          // It stands within an entry of which a part says something else.
          const one = x[at],
            other = y[at];
          if (!one || !other) return false;
          if (one.is === "block") {
            // A second time goes over all of it once.
            if (other.is !== "block" || inner.way.is !== "block" || inner.way.nth > 0 || !heads(one, other))
              return false;
            x = one.body;
            y = other.body;
          } else {
            const name = one.act.names[0]?.text ?? "",
              from = older.procedures.get(name),
              to = now.procedures.get(name);
            if (inner.way.is !== "procedure" || !from || !to || !entry(one, other) || !headOf(from, to)) return false;
            x = from.body;
            y = to.body;
          }
        }
        return false;
      };
      if (!headOf(a, b)) return undefined;
      return {
        reaches,
        whole: own.whole && sameIn(a.body, b.body) === a.body.length && same([...named(a.refit), ...named(a.finish)]),
      };
    },
  };
}

function count(of: object): number {
  let keys = 0;
  for (const key in of) if (key !== "") keys++;
  return keys;
}

const notProcedures: ReadonlySet<string> = new Set(["procedures", ...places]);

/** Of the procedures that both know, which comes before which: the way back asks what stands above what. */
function sameOrder(older: Model, now: Model): boolean {
  const common = [...older.procedures.keys()].filter((id) => now.procedures.has(id)),
    others = [...now.procedures.keys()].filter((id) => older.procedures.has(id));
  return common.every((id, i) => id === others[i]);
}

/** Procedures that a procedure's head names, and those that leave it their way back or something to do. */
function namedBefore(model: Model, procedure: Procedure): string[] {
  const names = [
    ...procedure.needs.flatMap((need) => need.names.map((name) => name.text)),
    ...procedure.leaves.flatMap((leave) => leave.until?.text ?? []),
    ...(procedure.refitBy ? [procedure.refitBy.text] : []),
  ];
  for (const other of model.procedures.values())
    if (other.refitBy?.text === procedure.id || other.leaves.some((leave) => leave.until?.text === procedure.id))
      names.push(other.id);
  return names;
}

/** Procedures that lines call, or that their way back is written in. */
function named(entries: readonly Entry[]): string[] {
  const names: string[] = [];
  const visit = (list: readonly Entry[]): void => {
    for (const one of list) {
      if (one.is === "act") {
        if (one.act.verb === "do") names.push(one.act.names[0]?.text ?? "");
      } else {
        if (one.kind === "refit" && one.name !== "") names.push(one.name);
        visit(one.body);
      }
    }
  };
  visit(entries);
  return names;
}
