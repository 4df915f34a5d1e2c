// Orders of tightening a group of fasteners, as data.

export type Sequence = {
  readonly title: string;
  readonly about: string;
  /** The order asks where the holes are, so a `pattern` is needed to number them. */
  readonly asksPattern: boolean;
};

const table = {
  star: { title: "Crosswise", about: "Each next one as nearly opposite as can be.", asksPattern: false },
  circle: { title: "Round the circle", about: "One after the other, round.", asksPattern: false },
  rows: { title: "Row by row", about: "Row by row, from one end.", asksPattern: true },
  "centre-out": { title: "From the centre out", about: "From the middle outwards, in a spiral.", asksPattern: true },
} satisfies Record<string, Sequence>;

export type SequenceName = keyof typeof table;
export const sequences: Readonly<Record<SequenceName, Sequence>> = table;
