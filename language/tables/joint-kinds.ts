// Kinds of joint that are no fasteners, as data: verbs, how each parts, whether it can be made again. Behaviour elsewhere reads
// these fields and never asks for a kind by name.

import type { HazardKindName } from "./hazard-kinds.ts";

/** General words for what a joint uses up, as the catalogues of the outputs know them. */
export type JointUse =
  "pinch clamp" | "sealant" | "adhesive" | "solder" | "splice" | "cable tie" | "lock-wire" | "split pin";

export type JointKind = {
  readonly title: string;
  readonly about: string;
  /** Printed verb when it is parted, and when it is made again. */
  readonly strip: string;
  readonly refit: string;
  /** "undone": an action of its own. "in passing": it lets go when its part is removed. */
  readonly parts: "undone" | "in passing";
  /** Can it be made again: always, only with something new, or never (the strip action says so, before it is too late). */
  readonly remade: "always" | "with new" | "never";
  /** What the refit uses up, in general words; the author's own `uses` names the shop's consumable. */
  readonly uses: readonly JointUse[];
  /** "fluid": parting it lets out what runs through it. */
  readonly opens: "fluid" | undefined;
  /** What holds it is spent by undoing: unless the author says that it is new, the refit asks. */
  readonly oneTime: boolean;
  /** It keeps a fastener from coming undone. */
  readonly secures?: true;
  /** What it uses is put on before the parts meet, not after. */
  readonly appliedBefore: boolean;
  /** Over its limit, such a joint asks that this hazard is declared or dismissed. */
  readonly asksHazard?: HazardKindName;
  readonly example: string;
};

const undone = {
  parts: "undone",
  remade: "always",
  uses: [],
  opens: undefined,
  appliedBefore: false,
  oneTime: false,
} as const;
const passing = { ...undone, parts: "in passing" } as const;

const table = {
  connector: {
    ...undone,
    title: "Connector",
    about: "An electrical plug and socket.",
    strip: "Unplug",
    refit: "Plug in",
    example: `joint fan-plug connector "Fan plug" { joins loom to fan }`,
  },
  terminal: {
    ...undone,
    title: "Terminal",
    about: "A conductor under a screw or in a spring clamp.",
    strip: "Disconnect",
    refit: "Connect",
    example: `joint earth-terminal terminal "Earth lead" { joins earth-lead to frame }`,
  },
  gland: {
    ...undone,
    title: "Gland",
    about: "Seals and holds a cable where it enters.",
    strip: "Slacken and draw out",
    refit: "Draw in and tighten",
    example: `joint motor-gland gland "Motor cable gland" { joins motor-cable to box }`,
  },
  hose: {
    ...undone,
    title: "Hose end",
    about: "A hose pushed on its stub.",
    strip: "Pull off",
    refit: "Push on",
    opens: "fluid",
    example: `joint return-end hose "Return hose" { joins return-hose to tank }`,
  },
  "pipe-union": {
    ...undone,
    title: "Pipe union",
    about: "A screwed pipe joint.",
    strip: "Undo",
    refit: "Make and tighten",
    opens: "fluid",
    example: `joint feed-union pipe-union "Feed union" { joins feed-pipe to pump }`,
  },
  clip: {
    ...undone,
    title: "Clip",
    about: "A snap or spring clip.",
    strip: "Unclip",
    refit: "Clip on",
    example: `joint cover-clip clip "Cover clip" { joins cover to frame  count 4 }`,
  },
  "pinch-clamp": {
    ...undone,
    title: "Pinch clamp",
    about: "A clamp closed by pinching its ear; opened once.",
    strip: "Cut open",
    refit: "Close new",
    remade: "with new",
    uses: ["pinch clamp"],
    oneTime: true,
    example: `joint hose-clamp pinch-clamp "Hose clamp" { joins feed-hose to pump }`,
  },
  "press-fit": {
    ...passing,
    title: "Press fit",
    about: "Held by interference.",
    strip: "Press off",
    refit: "Press on",
    example: `joint hub-fit press-fit "Hub on shaft" { joins hub to shaft }`,
  },
  "shrink-fit": {
    ...passing,
    title: "Shrink fit",
    about: "Held by interference, made warm.",
    strip: "Warm and draw off",
    refit: "Warm and fit",
    example: `joint race-fit shrink-fit "Inner race" { joins race to shaft }`,
  },
  taper: {
    ...passing,
    title: "Taper",
    about: "Held by a self-holding taper; may let go with a start.",
    strip: "Break the taper and take off",
    refit: "Seat on the taper",
    example: `joint wheel-taper taper "Wheel taper" { joins wheel to shaft }`,
  },
  "clevis-pin": {
    ...undone,
    title: "Clevis pin",
    about: "A pin with a head through fork and eye (ISO 2341), held by a split pin (ISO 1234), which is new each time.",
    strip: "Unpin and draw out",
    refit: "Push in and pin",
    remade: "with new",
    uses: ["split pin"],
    example: `joint rod-pin clevis-pin "Rod pin" { joins rod to lever }`,
  },
  screwed: {
    ...undone,
    title: "Screwed joint",
    about: "The part itself is screwed in.",
    strip: "Unscrew",
    refit: "Screw in",
    example: `joint bowl-thread screwed "Filter bowl" { joins bowl to head }`,
  },
  "slide-fit": {
    ...passing,
    title: "Sliding fit",
    about: "Slides in by hand.",
    strip: "Draw off",
    refit: "Slide on",
    example: `joint sleeve-fit slide-fit "Sleeve" { joins sleeve to shaft }`,
  },
  spline: {
    ...passing,
    title: "Spline",
    about: "Slides on splines.",
    strip: "Draw off the splines",
    refit: "Slide onto the splines",
    example: `joint drive-spline spline "Drive splines" { joins coupling to shaft }`,
  },
  dowel: {
    ...passing,
    title: "Dowel",
    about: "Located by dowels.",
    strip: "Lift off the dowels",
    refit: "Set on the dowels",
    example: `joint cover-dowels dowel "Cover dowels" { joins cover to case  count 2 }`,
  },
  sealant: {
    ...passing,
    title: "Sealant",
    about: "A joint face sealed with paste.",
    strip: "Split the joint face",
    refit: "Seal and fit",
    remade: "with new",
    uses: ["sealant"],
    appliedBefore: true,
    example: `joint sump-face sealant "Sump face" { joins sump to case  bead 3 mm x 820 mm }`,
  },
  adhesive: {
    ...passing,
    title: "Adhesive",
    about: "Bonded.",
    strip: "Break the bond",
    refit: "Bond",
    remade: "with new",
    uses: ["adhesive"],
    appliedBefore: true,
    example: `joint magnet-bond adhesive "Magnet bond" { joins magnet to rotor }`,
  },
  solder: {
    ...undone,
    title: "Solder",
    about: "Soldered.",
    strip: "Unsolder",
    refit: "Solder",
    remade: "with new",
    uses: ["solder"],
    example: `joint coil-ends solder "Coil ends" { joins coil to board  count 2 }`,
  },
  splice: {
    ...undone,
    title: "Splice",
    about: "Two conductors joined by a crimp.",
    strip: "Cut",
    refit: "Splice",
    remade: "with new",
    uses: ["splice"],
    example: `joint lead-splice splice "Lead splice" { joins lead to loom }`,
  },
  weld: {
    ...undone,
    title: "Weld",
    about: "Welded; cut, it is not made again by this procedure.",
    strip: "Cut the weld",
    refit: "Weld",
    remade: "never",
    example: `joint seam-weld weld "Seam" { joins bracket to frame }`,
  },
  stake: {
    ...undone,
    title: "Staking",
    about: "Metal pushed over to lock.",
    strip: "Relieve the staking",
    refit: "Stake in a fresh place",
    remade: "always",
    example: `joint nut-stake stake "Nut staking" { joins nut-collar to shaft }`,
  },
  magnetic: {
    ...passing,
    title: "Magnetic",
    about: "Held by magnets; snaps together at the refit.",
    strip: "Draw off against the magnets",
    refit: "Let in against the magnets",
    asksHazard: "magnetic",
    example: `joint rotor-pull magnetic "Rotor" { joins rotor to stator  force 900 N }`,
  },
  spring: {
    ...undone,
    title: "Spring",
    about: "Held by a loaded spring.",
    strip: "Let the spring down",
    refit: "Load the spring",
    asksHazard: "spring",
    example: `joint return-spring spring "Return spring" { joins lever to frame  force 300 N }`,
  },
  "cable-tie": {
    ...undone,
    title: "Cable tie",
    about: "Cut, and a new one drawn tight.",
    strip: "Cut",
    refit: "Tie",
    remade: "with new",
    uses: ["cable tie"],
    example: `joint loom-ties cable-tie "Loom ties" { joins loom to frame  count 3 }`,
  },
  "lock-wire": {
    ...undone,
    title: "Lock-wire",
    about: "Wire twisted through heads.",
    strip: "Cut and take out",
    refit: "Wire",
    remade: "with new",
    oneTime: true,
    secures: true,
    uses: ["lock-wire"],
    example: `joint head-wire lock-wire "Lock-wire" { joins wire to cover }`,
  },
} satisfies Record<string, JointKind>;

export type JointKindName = keyof typeof table;
export const jointKinds: Readonly<Record<JointKindName, JointKind>> = table;
