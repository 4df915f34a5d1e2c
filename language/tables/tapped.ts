// What a thread is cut in, as far as the figures of engagement tell them apart, as data.

export type Tapped = { readonly title: string; readonly about: string };

const table = {
  steel: { title: "Steel", about: "A thread cut in steel." },
  "cast-iron": { title: "Cast iron", about: "A thread cut in cast iron." },
  brass: { title: "Brass", about: "A thread cut in brass." },
  aluminium: { title: "Aluminium", about: "A thread cut in aluminium." },
  nut: { title: "Nut", about: "No thread is cut: a nut stands behind it." },
} satisfies Record<string, Tapped>;

export type TappedName = keyof typeof table;
export const tappedIn: Readonly<Record<TappedName, Tapped>> = table;
