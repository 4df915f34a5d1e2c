// Kinds of part, as data: what the bench, the bill and the outputs must know of a part from its kind alone. Decides nothing itself.

import type { HazardKindName } from "./hazard-kinds.ts";

export type PartKind = {
  readonly title: string;
  readonly about: string;
  /** Spent once its joint has been parted: it asks to be renewed at the refit unless the author says otherwise. */
  readonly oneTime: boolean;
  /** It keeps a fastener from coming undone: an old one that gives way lets go of more than itself. */
  readonly secures?: true;
  /** Gives way: what hangs on it alone may be laid aside while it stays connected. */
  readonly flexible: boolean;
  /** Hangs by its nature: one end that is still fixed holds it, also while the unit is turned. */
  readonly limp?: true;
  /** Must be on whenever the machine is under power. */
  readonly guard: boolean;
  /** Its own tie to the part that it `fits` lets go when it is removed; otherwise that tie is an action of its own. */
  readonly attachedInPassing: boolean;
  /** Printed verb of its removal and of its fitting. */
  readonly strip: string;
  readonly refit: string;
  /** Having such a part at all asks that this kind of hazard is declared, or dismissed with a reason. */
  readonly asksHazard?: HazardKindName;
};

const usual = {
  oneTime: false,
  flexible: false,
  guard: false,
  attachedInPassing: true,
  strip: "Remove",
  refit: "Fit",
} as const;

const table = {
  gasket: { ...usual, title: "Gasket", about: "A flat seal clamped in a joint.", oneTime: true, strip: "Take off" },
  "o-ring": {
    ...usual,
    title: "O-ring",
    about: "A ring of round section in a groove.",
    oneTime: true,
    strip: "Take out",
  },
  seal: { ...usual, title: "Seal", about: "A shaft seal, rod seal or wiper.", oneTime: true, strip: "Take out" },
  bearing: { ...usual, title: "Bearing", about: "A rolling bearing." },
  bush: { ...usual, title: "Bush", about: "A plain bearing sleeve.", strip: "Take out" },
  key: { ...usual, title: "Key", about: "A parallel, taper or Woodruff key in its keyway.", strip: "Take out" },
  pin: { ...usual, title: "Pin", about: "A dowel, spring or clevis pin.", strip: "Take out" },
  circlip: { ...usual, title: "Circlip", about: "A retaining ring for a shaft or a bore.", strip: "Take out" },
  washer: { ...usual, title: "Washer", about: "A plain washer.", strip: "Take off" },
  "lock-washer": { ...usual, title: "Lock-washer", about: "A spring or toothed washer.", strip: "Take off" },
  "tab-washer": {
    ...usual,
    title: "Tab washer",
    about: "A washer whose tab is bent against the nut.",
    oneTime: true,
    secures: true,
    strip: "Take off",
  },
  "split-pin": {
    ...usual,
    title: "Split pin",
    about: "A two-legged pin, spread behind its hole.",
    oneTime: true,
    secures: true,
    strip: "Take out",
  },
  shim: { ...usual, title: "Shim", about: "A thin piece that sets a distance.", strip: "Take out" },
  spring: {
    ...usual,
    title: "Spring",
    about: "A spring as a part; under load it is a hazard as well.",
    strip: "Take out",
  },
  filter: { ...usual, title: "Filter", about: "A filter element or cartridge.", strip: "Take out" },
  belt: { ...usual, title: "Belt", about: "A drive belt.", strip: "Take off", refit: "Put on" },
  chain: {
    ...usual,
    title: "Chain",
    about: "A drive or lifting chain of the machine.",
    strip: "Take off",
    refit: "Put on",
  },
  cable: { ...usual, title: "Cable", about: "One cable.", flexible: true, limp: true },
  hose: { ...usual, title: "Hose", about: "A flexible line for a fluid.", flexible: true, limp: true },
  loom: { ...usual, title: "Loom", about: "Several cables bound together.", flexible: true, limp: true },
  hinge: {
    ...usual,
    title: "Hinge",
    about: "What hangs on it can be swung.",
    flexible: true,
    attachedInPassing: false,
  },
  guard: { ...usual, title: "Guard", about: "Keeps hands away from what moves or is live.", guard: true },
  battery: {
    ...usual,
    title: "Battery",
    about: "Always live at its own terminals.",
    asksHazard: "electrical",
    refit: "Put in",
  },
  capacitor: {
    ...usual,
    title: "Capacitor",
    about: "Keeps its charge after the supply is off.",
    asksHazard: "electrical",
  },
  motor: { ...usual, title: "Motor", about: "An electric, hydraulic or air motor.", attachedInPassing: false },
} satisfies Record<string, PartKind>;

export type PartKindName = keyof typeof table;
export const partKinds: Readonly<Record<PartKindName, PartKind>> = table;
