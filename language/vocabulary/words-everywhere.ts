// Words that stand in several kinds of block alike: conditions, messages, texts, pictures.

import { signals } from "../tables/signals.ts";
import { core, real, type Entry } from "./entry.ts";

export const wordsEverywhere: readonly Entry[] = [
  ...Object.keys(signals).flatMap((signal) =>
    core("part fastener joint fluid procedure step refit finish", [
      [signal, "<string>", "Printed before the work it stands in, or on.", `${signal} "Sharp edge."`],
    ]),
  ),
  ...real("unit part fastener joint fluid hazard procedure step refit finish", [
    ["if", "<condition>", "Only for this variant, option or reading.", `if bore fails or late { }`, "same|item"],
    ["unless", "<condition>", "Only without this variant, option or reading.", `unless heater { }`, "same|item"],
  ]),
  ...core("unit part tool consumable procedure fastener joint fluid hazard", [
    ["about", "<string>", "What it is and does, for the reader.", `about "Turns the sun gear."`],
  ]),
  ...core("unit procedure", [["revision", "<label>", "Which issue this is.", `revision C`]]),
  ...core("part procedure step refit finish", [
    [
      "photo",
      "<string> <string>",
      "A picture: file, then words for who cannot see it.",
      `photo "lid.jpg" "Lid off" { point lid 40 % 32 % }`,
      "photo?",
    ],
  ]),
  ...real("photo", [
    ["point", "<item> <share> <share>", "A callout: how far across, how far down.", `point cap.3 40 % 32 %`],
  ]),
];
