// Parts that a record asks to be ordered, with what the model knows of the thing that each is for: the order list.

import { sizeText } from "../../bill/uses.ts";
import type { Model, Thing } from "../../model/model.ts";
import type { WorkRecord } from "./record.ts";
import type { Wording } from "../wording/wording.ts";

export interface Wanted {
  /** As typed. */
  readonly part: string;
  readonly count?: number;
  readonly procedure: string;
  readonly line: string;
  /** The thing that it is for; left out where the entry names none. */
  readonly thing?: {
    readonly id: string;
    readonly name: string;
    readonly size: string;
    readonly partNo: string;
    readonly standard: string;
  };
}

/** @param modelOf the model that a procedure of the record belongs to, where there is one. */
export const wantedOf = (
  record: WorkRecord,
  modelOf: (own: WorkRecord["procedures"][number]) => Model | undefined,
): readonly Wanted[] =>
  record.procedures.flatMap((own) => {
    const model = modelOf(own);
    return own.lines.flatMap(({ line, notAsWritten = [] }) =>
      notAsWritten.flatMap(({ item, wanted, wantedCount }): Wanted[] => {
        if (wanted === undefined) return [];
        const thing = item === undefined ? undefined : model?.things.find(({ id }) => id === item);
        return [
          {
            part: wanted,
            ...(wantedCount === undefined ? {} : { count: wantedCount }),
            procedure: own.procedure,
            line,
            ...(item === undefined
              ? {}
              : {
                  thing: {
                    id: item,
                    name: thing?.name ?? item,
                    ...bought(thing),
                  },
                }),
          },
        ];
      }),
    );
  });

/** What it is bought by. */
const bought = (thing: Thing | undefined): { size: string; partNo: string; standard: string } =>
  thing?.is === "tie" || thing?.is === "part"
    ? { size: sizeText(thing) ?? "", partNo: thing.partNo ?? "", standard: thing.standard ?? "" }
    : { size: "", partNo: "", standard: "" };

/** One line of the order list: what, how many, for what. */
export const wantedText = ({ part, count, thing }: Wanted, { record: words }: Wording): string =>
  words.wantedLine(
    part,
    count,
    thing ? [thing.name, thing.size, thing.partNo, thing.standard].filter(Boolean).join(", ") : "",
  );
