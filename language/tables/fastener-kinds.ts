// Kinds of fastener, as data: how each is undone and made again, and what is left of it afterwards.

export type FastenerKind = {
  readonly title: string;
  readonly about: string;
  /** Stays with its part when undone: it is backed out, never taken out. */
  readonly captive: boolean;
  /** Undoing destroys it: the refit needs a new one. */
  readonly oneWay: boolean;
  /** Turned by a tool and tightened, so it can carry a torque and may be loosened or backed out. */
  readonly turned: boolean;
  /** It has strength classes of its own: nuts by ISO 898-2, set screws by ISO 898-5. */
  readonly classesOf?: "nut" | "set-screw";
  /** Its head or socket follows standards of its own, not those of screws, bolts and nuts: DIN 908 and DIN 910 for screw plugs. */
  readonly ownHeads?: true;
  /** Printed verbs: undone, and made again. */
  readonly strip: string;
  readonly refit: string;
};

const threaded = { captive: false, oneWay: false, turned: true, strip: "Undo", refit: "Fit and tighten" } as const;

const table = {
  screw: { ...threaded, title: "Screw", about: "Turned by its head, into a thread in the part." },
  bolt: { ...threaded, title: "Bolt", about: "Goes through, with a nut or into a thread; has a plain shank." },
  nut: { ...threaded, classesOf: "nut", title: "Nut", about: "On a stud, a bolt or a threaded shaft." },
  "lock-nut": { ...threaded, classesOf: "nut", title: "Lock-nut", about: "Holds by friction, or against another nut." },
  stud: {
    ...threaded,
    title: "Stud",
    about: "Threaded at both ends; mostly stays in.",
    strip: "Screw out",
    refit: "Screw in",
  },
  "set-screw": {
    ...threaded,
    classesOf: "set-screw",
    title: "Set-screw",
    about: "Without a head; its point presses on the part.",
  },
  "captive-screw": {
    ...threaded,
    title: "Captive screw",
    about: "Backed out (`back-out`), it stays in its cover and holds nothing.",
    captive: true,
    strip: "Loosen",
    refit: "Tighten",
  },
  plug: {
    ...threaded,
    ownHeads: true,
    title: "Plug",
    about: "Closes a threaded hole.",
    strip: "Screw out",
    refit: "Screw in and tighten",
  },
  rivet: {
    title: "Rivet",
    about: "Drilled out; a new one is set.",
    captive: false,
    oneWay: true,
    turned: false,
    strip: "Drill out",
    refit: "Set new",
  },
  "clip-nut": {
    classesOf: "nut",
    title: "Clip nut",
    about: "A sheet-metal nut pushed on an edge.",
    captive: false,
    oneWay: false,
    turned: false,
    strip: "Pull off",
    refit: "Push on",
  },
} satisfies Record<string, FastenerKind>;

export type FastenerKindName = keyof typeof table;
export const fastenerKinds: Readonly<Record<FastenerKindName, FastenerKind>> = table;
