// Which spanner, key or driver a head takes, standard by standard. Data only; the looking up is in drives.ts.

/** Widths across flats and key widths are in mm for metric heads and in inches for inch heads; hexalobular and cross recesses have numbers. */
export type DriveKind = "hex" | "square" | "hex-socket" | "hexalobular" | "cross" | "cross-ph";

export interface DriveRow {
  readonly standard: string;
  readonly item: string;
  readonly drive: DriveKind;
  /** Nominal size of the thread: `M8`, `3/8`, `#10`. */
  readonly thread: string;
  /** As marked on the tool: `13`, `9/16`, `30`, `2`. */
  readonly size: string;
  readonly status: "read" | "computed" | "memory";
}

function family(
  standard: string,
  item: string,
  drive: DriveKind,
  status: DriveRow["status"],
  pairs: string,
): readonly DriveRow[] {
  return pairs.split(", ").map((pair) => {
    const [thread = "", size = ""] = pair.split(" ");
    return { standard, item, drive, thread, size, status };
  });
}

/** Sources: the standards named, read through published tables; rows marked memory were not seen. Heavy hexagons by 1.5 d + 1/8 in. */
export const driveRows: readonly DriveRow[] = [
  family(
    "ISO 4014",
    "hexagon head bolt, part thread",
    "hex",
    "read",
    "M1.6 3.2, M2 4, M2.5 5, M3 5.5, M4 7, M5 8, M6 10, M8 13, M10 16, M12 18, M14 21, M16 24, M18 27, M20 30, M22 34, M24 36, M27 41, " +
      "M30 46, M36 55",
  ),
  family(
    "ISO 4017",
    "hexagon head screw, full thread",
    "hex",
    "read",
    "M1.6 3.2, M2 4, M2.5 5, M3 5.5, M4 7, M5 8, M6 10, M8 13, M10 16, M12 18, M14 21, M16 24, M18 27, M20 30, M22 34, M24 36, M27 41, " +
      "M30 46, M36 55",
  ),
  family(
    "DIN 931/933",
    "hexagon head bolt/screw, withdrawn DIN",
    "hex",
    "read",
    "M1.6 3.2, M2 4, M2.5 5, M3 5.5, M4 7, M5 8, M6 10, M8 13, M10 17, M12 19, M14 22, M16 24, M18 27, M20 30, M22 32, M24 36, M27 41, " +
      "M30 46, M36 55",
  ),
  family(
    "ISO 4032",
    "hexagon nut, style 1",
    "hex",
    "read",
    "M1.6 3.2, M2 4, M2.5 5, M3 5.5, M4 7, M5 8, M6 10, M8 13, M10 16, M12 18, M14 21, M16 24, M18 27, M20 30, M22 34, M24 36, M27 41, " +
      "M30 46, M36 55",
  ),
  family(
    "DIN 934",
    "hexagon nut, withdrawn DIN",
    "hex",
    "read",
    "M1.6 3.2, M2 4, M2.5 5, M3 5.5, M4 7, M5 8, M6 10, M8 13, M10 17, M12 19, M14 22, M16 24, M18 27, M20 30, M22 32, M24 36, M27 41, " +
      "M30 46, M36 55",
  ),
  family(
    "ISO 4162",
    "hexagon flange bolt, small series",
    "hex",
    "read",
    "M5 7, M6 8, M8 10, M10 13, M12 15, M14 18, M16 21",
  ),
  family(
    "ISO 15071",
    "hexagon flange bolt, small series, grade A",
    "hex",
    "read",
    "M5 7, M6 8, M8 10, M10 13, M12 15, M14 18, M16 21",
  ),
  family(
    "EN 1662",
    "hexagon flange bolt, small series (older)",
    "hex",
    "read",
    "M5 7, M6 8, M8 10, M10 13, M12 16, M14 18, M16 21",
  ),
  family(
    "EN 1665",
    "hexagon flange bolt, heavy series",
    "hex",
    "read",
    "M5 8, M6 10, M8 13, M10 16, M12 18, M14 21, M16 24, M20 30",
  ),
  family("ISO 4161", "hexagon flange nut", "hex", "read", "M5 8, M6 10, M8 13, M10 15, M12 18, M14 21, M16 24, M20 30"),
  family(
    "ISO 4762",
    "hexagon socket head cap screw",
    "hex-socket",
    "read",
    "M1.6 1.5, M2 1.5, M2.5 2, M3 2.5, M4 3, M5 4, M6 5, M8 6, M10 8, M12 10, M14 12, M16 14, M20 17, M24 19, M30 22, M36 27",
  ),
  family(
    "ISO 7380-1",
    "hexagon socket button head screw",
    "hex-socket",
    "read",
    "M3 2, M4 2.5, M5 3, M6 4, M8 5, M10 6, M12 8, M16 10",
  ),
  family(
    "ISO 10642",
    "hexagon socket countersunk head screw",
    "hex-socket",
    "read",
    "M2 1.3, M2.5 1.5, M3 2, M4 2.5, M5 3, M6 4, M8 5, M10 6, M12 8, M14 10, M16 10, M18 12, M20 12, M22 14, M24 14",
  ),
  family(
    "DIN 7984",
    "low head cap screw",
    "hex-socket",
    "read",
    "M3 2, M4 2.5, M5 3, M6 4, M8 5, M10 7, M12 8, M14 10, M16 12, M18 12, M20 14, M22 14, M24 17",
  ),
  family(
    "DIN 6912",
    "low head cap screw with key guide",
    "hex-socket",
    "read",
    "M4 3, M5 4, M6 5, M8 6, M10 8, M12 10, M14 12, M16 14, M18 14, M20 17, M22 17, M24 19, M27 19, M30 22, M36 27",
  ),
  family(
    "ISO 4026/4027/4029",
    "hexagon socket set screw",
    "hex-socket",
    "read",
    "M1.6 0.7, M2 0.9, M2.5 1.3, M3 1.5, M4 2, M5 2.5, M6 3, M8 4, M10 5, M12 6, M14 6, M16 8, M18 10, M20 10, M22 12, M24 12",
  ),
  family(
    "ISO 14579",
    "hexalobular socket head cap screw",
    "hexalobular",
    "read",
    "M2 6, M2.5 8, M3 10, M4 20, M5 25, M6 30, M8 45, M10 50, M12 55, M14 60, M16 70, M18 80, M20 90",
  ),
  family(
    "ISO 14580",
    "hexalobular socket cheese head screw",
    "hexalobular",
    "read",
    "M2 6, M2.5 8, M3 10, M4 20, M5 25, M6 30, M8 45, M10 50",
  ),
  family(
    "ISO 14583",
    "hexalobular socket pan head screw",
    "hexalobular",
    "read",
    "M2 6, M2.5 8, M3 10, M4 20, M5 25, M6 30, M8 45, M10 50",
  ),
  family(
    "ISO 14581",
    "hexalobular socket countersunk head screw",
    "hexalobular",
    "read",
    "M2 6, M2.5 8, M3 10, M4 20, M5 25, M6 30, M8 45, M10 50",
  ),
  family(
    "JIS B 1180 small series",
    "hexagon head, Japanese machines",
    "hex",
    "memory",
    "M6 10, M8 12, M10 14, M12 17, M14 19, M16 22",
  ),
  family(
    "ASME B18.2.1",
    "hex cap screw / hex bolt",
    "hex",
    "read",
    "1/4 7/16, 5/16 1/2, 3/8 9/16, 7/16 5/8, 1/2 3/4, 5/8 15/16, 3/4 1-1/8, 7/8 1-5/16, 1 1-1/2, 1-1/8 1-11/16, 1-1/4 1-7/8, 1-3/8 " +
      "2-1/16, 1-1/2 2-1/4",
  ),
  family("ASME B18.2.1", "hex cap screw / hex bolt", "hex", "memory", "9/16 13/16"),
  family(
    "ASME B18.2.1 (flange)",
    "hex flange screw",
    "hex",
    "read",
    "1/4 3/8, 5/16 1/2, 3/8 9/16, 7/16 5/8, 1/2 3/4, 5/8 15/16, 3/4 1-1/8",
  ),
  family(
    "ASME B18.2.1 (square)",
    "square head bolt",
    "square",
    "read",
    "1/4 3/8, 5/16 1/2, 3/8 9/16, 7/16 5/8, 1/2 3/4, 5/8 15/16, 3/4 1-1/8, 7/8 1-5/16, 1 1-1/2, 1-1/8 1-11/16, 1-1/4 1-7/8, 1-3/8 " +
      "2-1/16, 1-1/2 2-1/4",
  ),
  family(
    "ASME B18.2.2",
    "hex nut and hex jam nut",
    "hex",
    "read",
    "1/4 7/16, 5/16 1/2, 3/8 9/16, 7/16 11/16, 1/2 3/4, 9/16 7/8, 5/8 15/16, 3/4 1-1/8, 7/8 1-5/16, 1 1-1/2, 1-1/8 1-11/16, 1-1/4 " +
      "1-7/8, 1-3/8 2-1/16, 1-1/2 2-1/4",
  ),
  family(
    "ASME B18.2.2",
    "machine screw nut, hex or square",
    "hex",
    "read",
    "#0 5/32, #1 5/32, #2 3/16, #3 3/16, #4 1/4, #5 5/16, #6 5/16, #8 11/32, #10 3/8, #12 7/16, 1/4 7/16, 5/16 9/16, 3/8 5/8",
  ),
  family(
    "ASME B18.2.2",
    "hex flange nut",
    "hex",
    "read",
    "#6 5/16, #8 11/32, #10 3/8, #12 7/16, 1/4 7/16, 5/16 1/2, 3/8 9/16, 7/16 11/16, 1/2 3/4, 9/16 7/8, 5/8 15/16, 3/4 1-1/8",
  ),
  family(
    "SAE J483a",
    "crown (blind, acorn) nut, low",
    "hex",
    "read",
    "#6 5/16, #8 5/16, #10 3/8, #12 3/8, 1/4 7/16, 5/16 1/2, 3/8 9/16, 7/16 5/8, 1/2 3/4, 9/16 7/8, 5/8 15/16, 3/4 1-1/16, 7/8 1-1/4, 1 " +
      "1-7/16, 1-1/8 1-5/8, 1-1/4 1-13/16",
  ),
  family(
    "ASME B18.2.1/B18.2.2 heavy",
    "heavy hex bolt and heavy hex nut",
    "hex",
    "computed",
    "1/2 7/8, 5/8 1-1/16, 3/4 1-1/4, 7/8 1-7/16, 1 1-5/8, 1-1/8 1-13/16, 1-1/4 2, 1-3/8 2-3/16, 1-1/2 2-3/8",
  ),
  family(
    "ASME B18.3",
    "socket head cap screw",
    "hex-socket",
    "read",
    "#0 0.050, #1 1/16, #2 5/64, #3 5/64, #4 3/32, #5 3/32, #6 7/64, #8 9/64, #10 5/32, 1/4 3/16, 5/16 1/4, 3/8 5/16, 7/16 3/8, 1/2 " +
      "3/8, 5/8 1/2, 3/4 5/8, 7/8 3/4, 1 3/4, 1-1/8 7/8, 1-1/4 7/8, 1-3/8 1, 1-1/2 1",
  ),
  family(
    "ASME B18.3",
    "flat (countersunk) socket screw",
    "hex-socket",
    "read",
    "#0 0.035, #1 0.050, #2 0.050, #3 1/16, #4 1/16, #5 5/64, #6 5/64, #8 3/32, #10 1/8, 1/4 5/32, 5/16 3/16, 3/8 7/32, 7/16 1/4, 1/2 " +
      "5/16, 5/8 3/8, 3/4 1/2, 7/8 9/16, 1 5/8, 1-1/8 3/4, 1-1/4 7/8, 1-3/8 7/8, 1-1/2 1",
  ),
  family(
    "ASME B18.3",
    "button head socket screw",
    "hex-socket",
    "read",
    "#0 0.035, #1 0.050, #2 0.050, #3 1/16, #4 1/16, #5 5/64, #6 5/64, #8 3/32, #10 1/8, #12 9/64, 1/4 5/32, 5/16 3/16, 3/8 7/32, 7/16 " +
      "1/4, 1/2 5/16, 5/8 3/8, 3/4 7/16",
  ),
  family(
    "ASME B18.3",
    "socket set screw",
    "hex-socket",
    "read",
    "#0 0.028, #1 0.035, #2 0.035, #3 0.050, #4 0.050, #5 1/16, #6 1/16, #8 5/64, #10 3/32, 1/4 1/8, 5/16 5/32, 3/8 3/16, 7/16 7/32, " +
      "1/2 1/4, 5/8 5/16, 3/4 3/8, 7/8 1/2, 1 9/16, 1-1/8 9/16, 1-1/4 5/8, 1-3/8 5/8, 1-1/2 3/4",
  ),
  family(
    "ASME B18.3",
    "shoulder screw (thread size)",
    "hex-socket",
    "read",
    "#10 1/8, 1/4 5/32, 5/16 3/16, 3/8 1/4, 1/2 5/16, 5/8 3/8, 3/4 1/2, 7/8 5/8, 1-1/8 7/8, 1-1/4 1, 1-1/2 1-1/4",
  ),
  family(
    "ASME B18.6.3",
    "flat countersunk machine screw",
    "cross-ph",
    "read",
    "#0 0, #1 0, #2 1, #3 1, #4 1, #5 2, #6 2, #8 2, #10 2, #12 3, 1/4 3, 5/16 4, 3/8 4, 7/16 4, 1/2 4",
  ),
  family(
    "ASME B18.6.3",
    "oval countersunk machine screw",
    "cross-ph",
    "read",
    "#0 0, #1 0, #2 1, #3 1, #4 1, #5 2, #6 2, #8 2, #10 2, #12 3, 1/4 3, 5/16 4, 3/8 4, 7/16 4, 1/2 4",
  ),
  family(
    "ASME B18.6.3",
    "fillister head machine screw",
    "cross-ph",
    "read",
    "#0 0, #1 0, #2 1, #3 1, #4 1, #5 2, #6 2, #8 2, #10 2, #12 3, 1/4 3, 5/16 3, 3/8 4, 7/16 4, 1/2 4",
  ),
  family(
    "ASME B18.6.3",
    "truss head machine screw",
    "cross-ph",
    "read",
    "#0 0, #1 0, #2 1, #3 1, #4 1, #5 2, #6 2, #8 2, #10 2, #12 3, 1/4 3, 5/16 3, 3/8 4, 7/16 4, 1/2 4",
  ),
  family(
    "ASME B18.6.3",
    "round head machine screw",
    "cross-ph",
    "read",
    "#0 0, #1 0, #2 1, #3 1, #4 1, #5 2, #6 2, #8 2, #10 2, #12 3, 1/4 3, 5/16 3, 3/8 4, 7/16 4, 1/2 4",
  ),
  family(
    "ISO 7045",
    "pan head, cross recess",
    "cross",
    "read",
    "M1.6 0, M2 0, M2.5 1, M3 1, M3.5 2, M4 2, M5 2, M6 3, M8 4, M10 4",
  ),
  family(
    "ISO 7046",
    "countersunk, cross recess",
    "cross",
    "read",
    "M1.6 0, M2 0, M2.5 1, M3 1, M3.5 2, M4 2, M5 2, M6 3, M8 4, M10 4",
  ),
  family("ISO 7048", "cheese head, cross recess", "cross", "read", "M2.5 1, M3 2, M3.5 2, M4 2, M5 2, M6 3, M8 3"),
  family(
    "trade practice (inch)",
    "pan head",
    "hexalobular",
    "memory",
    "#2 8, #4 10, #6 15, #8 20, #10 25, #12 27, 1/4 30, 5/16 40, 3/8 45",
  ),
  family(
    "trade practice (inch)",
    "flat countersunk",
    "hexalobular",
    "memory",
    "#2 6, #4 8, #6 10, #8 15, #10 20, #12 25, 1/4 27, 5/16 30, 3/8 40",
  ),
  family(
    "trade practice (inch)",
    "button head cap screw",
    "hexalobular",
    "memory",
    "#4 8, #6 10, #8 15, #10 25, 1/4 27, 5/16 40, 3/8 45, 1/2 55",
  ),
  family(
    "trade practice (inch)",
    "socket head cap screw",
    "hexalobular",
    "memory",
    "#4 10, #6 15, #8 25, #10 27, 1/4 30, 5/16 45, 3/8 50, 1/2 55",
  ),
].flat();
