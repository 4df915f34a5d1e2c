// English plurals by their look: whether a declared name speaks of several. Nobody says it, and sentences in English need it.

/** Words that end as a plural does and are none. */
const single = /(?:^|[\s-])(?:gas|lens|bus|chassis|axis|[\p{L}-]*(?:us|ss|sis|xis))(?:,.*|\s\(.*)?$/iu;

/** "Casing nuts", "Nuts of the casing", "Screws, long"; not "Bus" or "Chassis". */
export const looksPlural = (name: string): boolean =>
  !single.test(name) && (/[^s]s(?:,.*|\s\(.*)?$/i.test(name) || /s\s(?:of|at|on|in|for|with|to)\s/i.test(name));
