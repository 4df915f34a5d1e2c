// How a word of the language is called in printed outputs: mostly the word itself, with a capital and without hyphens.

const printed: Readonly<Record<string, string>> = {
  "part-no": "Part number", "about": "Description", "count": "Quantity", "joins": "Joins", "fits": "Fits on", "rests": "Rests on", "between": "Between",
  "back-out": "Back out", "thread-locker": "Thread-locker", "keep-out": "Keep others away", "shelf-life": "Shelf life", "torque-table": "Torque table",
  "second-check": "Second check", "hold-point": "Hold point", "drains": "Drained at", "fills": "Filled at", "bleeds": "Bled at", "is": "Is a unit",
  "lead": "Delivery time", "no": "Not present", "use": "Uses file", "do": "Do", "uses": "Uses", "aim": "Aim", "if": "If fitted", "unless": "If not fitted",
  "either": "Either", "or": "Or", "otherwise": "Otherwise", "optional": "If required", "set": "Set", "work": "Work", "take": "Take off", "put": "Put on",
  "flux": "Flux density", "mass": "Mass", "wear": "Wear", "crew": "People", "point": "Item", "leaves": "Left at the end", "starts": "At the start",
  "needs": "Before this", "prove-dead": "Prove dead", "prove-zero": "Prove zero", "try-start": "Try to start", "lock-out": "Lock out", "let-down": "Let down",
  "shut-down": "Shut down", "cool": "Let cool", "other": "Other precaution", "screen": "Screen off",
};

/** The printed form of a word. */
export function printedForm(word: string): string {
  return printed[word] ?? (word.charAt(0).toUpperCase() + word.slice(1)).replaceAll("-", " ");
}
