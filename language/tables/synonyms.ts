// What a hand in the trade may write instead of our word, as data: read by messages ("here it is called …") and by completion.
// It never makes two words mean the same in a file: only our word compiles.

/** What the other word stands for: a word of the language, or a kind of one of the closed lists. */
export type SynonymOf =
  | "word"
  | "part"
  | "fastener"
  | "joint"
  | "fluid"
  | "hazard"
  | "precaution"
  | "source"
  | "signal"
  | "drive"
  | "sequence"
  | "tapped";
export type Synonym = { readonly says: string; readonly of: SynonymOf; readonly is: string; readonly why?: string };

/** Small words of speech for one that joins the arguments of an item. */
export const linkWords: Readonly<Record<string, string>> = { in: "into", using: "with", via: "with" };

/** A word of another place of the language that a hand writes for ours here. */
export const wordsFromElsewhere: Readonly<Record<string, string>> = { torque: "tighten" };

/** Two words of speech for one of ours, where the second could not be the name of a thing. */
export const phrases: Readonly<Record<string, string>> = {
  "take off": "remove",
  "take out": "remove",
  "take away": "remove",
  "pull off": "remove",
  "pull out": "remove",
  "lift off": "lift",
  "lift out": "lift",
  "screw out": "undo",
  "screw off": "undo",
  "screw in": "fit",
  "put on": "fit",
  "put in": "fit",
  "put back": "fit",
  "let out": "drain",
};

const of = (kind: SynonymOf, pairs: Record<string, string>): Synonym[] =>
  Object.entries(pairs).flatMap(([is, all]) => all.split(" ").map((says): Synonym => ({ says, of: kind, is })));

export const synonyms: readonly Synonym[] = [
  {
    says: "capscrew",
    of: "fastener",
    is: "screw",
    why: "it is turned by its head into a thread; with a nut behind it, write bolt",
  },
  {
    says: "cap-screw",
    of: "fastener",
    is: "screw",
    why: "it is turned by its head into a thread; with a nut behind it, write bolt",
  },
  {
    says: "setscrew",
    of: "fastener",
    is: "set-screw",
    why: "without a head; a headed screw threaded to its head is a screw",
  },
  { says: "hydraulic", of: "hazard", is: "pressure", why: "the pressure is the hazard; the oil is a fluid" },
  { says: "pneumatic", of: "hazard", is: "pressure", why: "the pressure is the hazard" },
  ...of("fastener", {
    screw: "socket-screw machine-screw hex-screw tapping-screw wood-screw",
    bolt: "machine-bolt hex-bolt through-bolt",
    "set-screw": "grub-screw grubscrew grub",
    "lock-nut": "locknut jam-nut self-locking-nut",
    stud: "stud-bolt",
    "captive-screw": "captive quarter-turn",
    plug: "drain-plug pipe-plug bung",
    rivet: "pop-rivet blind-rivet",
    "clip-nut": "speed-nut spring-nut cage-nut u-nut",
  }),
  ...of("part", {
    circlip: "snap-ring retaining-ring e-clip lock-ring",
    "split-pin": "cotter-pin cotter r-clip",
    gasket: "paper-joint packing",
    "o-ring": "oring o-seal",
    seal: "oil-seal lip-seal shaft-seal wiper",
    bush: "bushing sleeve-bearing",
    key: "woodruff feather",
    pin: "roll-pin spring-pin dowel-pin clevis-pin",
    "lock-washer": "spring-washer star-washer split-washer lockwasher",
    "tab-washer": "tab-lock locking-plate lock-plate",
    shim: "spacer",
    loom: "harness wiring",
    cable: "lead wire",
    filter: "strainer element cartridge",
    belt: "v-belt drive-belt",
    guard: "shield safety-cover",
    bearing: "ball-bearing roller-bearing",
    capacitor: "condenser",
    battery: "accumulator",
  }),
  ...of("joint", {
    connector: "plug socket multiplug",
    terminal: "lug ring-terminal",
    gland: "cable-gland",
    "pipe-union": "union fitting flare-nut",
    "pinch-clamp": "ear-clamp crimp-clamp",
    "press-fit": "interference-fit force-fit drive-fit",
    "slide-fit": "sliding-fit push-fit clearance-fit",
    screwed: "threaded",
    sealant: "rtv silicone liquid-gasket paste",
    adhesive: "glue bond glued bonded",
    splice: "crimp",
    stake: "peen staking",
    "cable-tie": "zip-tie tie-wrap strap",
    "lock-wire": "lockwire safety-wire",
    spline: "splines",
    dowel: "dowels",
  }),
  ...of("fluid", { coolant: "antifreeze", fuel: "petrol diesel gasoline", oil: "lubricant" }),
  ...of("hazard", {
    electrical: "electric electricity voltage shock electric-shock",
    heavy: "weight",
    hot: "heat hot-surface burn scald",
    rotating: "rotation start",
    crushing: "pinch shear entrapment trapping",
    fire: "flammable",
    sharp: "edge",
    chemical: "corrosive toxic",
  }),
  ...of("precaution", {
    "lock-out": "lockout loto",
    "shut-down": "shutdown stop",
    discharge: "bleed-down",
    vent: "depressurise depressurize release bleed bleed-off blow-off",
    "prove-dead": "test-dead check-dead dead-test",
    earth: "ground",
    "let-down": "lower",
    block: "chock scotch",
    cool: "cool-down cooling",
    isolate: "disconnect switch-off unplug",
    "prove-zero": "test-zero check-zero prove-nul prove-null",
    "try-start": "test-start start-test",
  }),
  ...of("source", { mains: "grid supply", generator: "alternator back-emf" }),
  ...of("drive", {
    hex: "hexagon spanner wrench",
    "hex-socket": "allen allen-key hex-key internal-hex socket inhex",
    hexalobular: "torx star six-lobe",
    slot: "slotted flat flat-head",
    "cross-ph": "phillips",
    "cross-pz": "pozi",
    spline: "multi-tooth",
  }),
  ...of("sequence", {
    star: "crosswise cross diagonal criss-cross",
    circle: "clockwise round",
    "centre-out": "center-out inside-out spiral",
  }),
  ...of("word", {
    undo: "unscrew unbolt disconnect unplug untighten unfasten",
    loosen: "slacken ease crack",
    remove: "take-off takeoff extract withdraw pull detach dismount",
    fit: "install reinstall insert mount replace assemble refasten",
    tighten: "torque-up do-up",
    renew: "exchange substitute",
    support: "hang sling",
    hold: "counterhold grip",
    turn: "flip reposition",
    rotate: "crank spin",
    drain: "empty",
    recover: "reclaim",
    fill: "refill top-up",
    bleed: "deaerate",
    mark: "match-mark scribe",
    tag: "label",
    measure: "gauge",
    inspect: "check examine look",
    test: "try trial",
    set: "adjust",
    clean: "wipe degrease wash",
    apply: "grease coat smear",
    heat: "warm",
    lift: "hoist raise",
    photo: "picture image",
    video: "film recording",
    note: "remark hint",
    notice: "attention",
    procedure: "task-list method routine",
    unit: "machine assembly product",
    part: "component item",
    fastener: "fixing hardware screw screws bolt bolts nut nuts",
    joint: "connection",
    consumable: "supplies material",
    tool: "wrench equipment",
    mass: "weight",
    volume: "quantity",
    size: "thread dimension",
    class: "strength property-class",
    drive: "head",
    "thread-locker": "threadlocker",
    lubricant: "lube",
    passes: "steps-of",
    sequence: "tightening-order",
    joins: "connects fastens ties secures holds attaches",
    behind: "under beneath blocked-by",
    needs: "requires",
    use: "import include",
    finish: "end",
    step: "operation",
    "lock-out": "lockout loto",
    "prove-dead": "test-dead",
    discharge: "discharged",
    "part-no": "part-number partno",
    about: "description",
    count: "qty number",
    aim: "goal target",
    wait: "pause",
    time: "duration",
    temperature: "temp",
    refit: "reassembly reassemble refitting",
    wear: "ppe",
    otherwise: "else",
  }),
];
