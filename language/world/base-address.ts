// The address that the manual's own page lies at, for whatever leads to a place in it.

/** Of a web page, without a place in it, short enough for a code that is read from paper. */
export const isBaseAddress = (text: string): boolean => /^https?:\/\/[^\s"<>#\\^`{|}]{1,300}$/i.test(text);

/** The address of an element of the page that lies at `base`. */
export const addressOf = (base: string, id: string): string => `${base}#${encodeURIComponent(id)}`;
