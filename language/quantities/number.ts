// A number as an author writes it: decimal, fraction or mixed fraction, with what it says about its own precision.

export interface WrittenNumber {
  readonly value: number;
  /** Decimals written; 0 for a fraction. */
  readonly digits: number;
  /** The worth of the last written place: 0.1 for 24.5, 1 for 24, 1/16 for 1-13/16. */
  readonly step: number;
  /** Significant figures: 2 for 24, 3 for 0.0125, 3 for 100; of a fraction, the figures that its step can tell apart. */
  readonly significant: number;
}

const decimal = /^([+-]?)(\d+(?:\.\d+)?|\.\d+)$/;
const fraction = /^([+-]?)(?:(\d+)[- ])?(\d+)\/(\d+)$/;

/**
 * Reads `24`, `-0.5`, `.25`, `3/32`, `1-13/16` and `1 13/16`. A true minus sign (U+2212) counts as a hyphen.
 * @returns `undefined` for anything else, for a comma decimal and for a fraction over 0.
 */
export function parseNumber(text: string): WrittenNumber | undefined {
  const plain = text.trim().replace("\u2212", "-");
  const asDecimal = decimal.exec(plain);
  if (asDecimal) {
    const figures = asDecimal[2]!,
      digits = figures.includes(".") ? figures.length - figures.indexOf(".") - 1 : 0;
    const significant = Math.max(1, figures.replace(".", "").replace(/^0+/, "").length);
    return { value: signed(asDecimal[1]!, Number(figures)), digits, step: Number(`1e-${digits}`), significant };
  }
  const asFraction = fraction.exec(plain);
  if (!asFraction || Number(asFraction[4]) === 0) return undefined;
  const under = Number(asFraction[4]),
    value = Number(asFraction[2] ?? 0) + Number(asFraction[3]) / under;
  const steps = Math.round(value * under);
  return {
    value: signed(asFraction[1]!, value),
    digits: 0,
    step: 1 / under,
    significant: Math.max(2, String(steps).length + 1),
  };
}

const signed = (sign: string, value: number): number => (sign === "-" && value !== 0 ? -value : value);
