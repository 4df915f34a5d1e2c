// Small helpers for the page: elements with their text, and the one place where a screen reader hears what changed.

export function made<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Readonly<Record<string, string>> = {},
  ...inside: readonly (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...inside);
  return element;
}

export function button(text: string, press: () => void): HTMLButtonElement {
  const element = made("button", { type: "button" }, text);
  element.addEventListener("click", press);
  return element;
}

/** Said in the bar, and by a screen reader at its next pause. */
export function say(text: string): void {
  const place = document.getElementById("tablet-says");
  if (place) place.textContent = text;
}

/** A printed line as a link: its number and its first words. */
export function linkTo(id: string): HTMLLIElement {
  const line = document.getElementById(id),
    number = line?.querySelector(".no")?.textContent ?? id;
  const words = [".says", ".own"].map((part) => line?.querySelector(part)?.textContent?.trim() ?? "").join(" ");
  const text = words.length > 90 ? `${words.slice(0, 88).trimEnd()} …` : words;
  return made("li", {}, made("a", { href: `#${id}` }, `${number} ${text}`.trim()));
}

/** The part of a line that holds what this script says of it; made when it is first needed. */
export function told(line: Element): HTMLElement {
  const had = line.querySelector<HTMLElement>(":scope .told-now");
  if (had) return had;
  const place = made("div", { class: "told-now", id: `${line.id}-told` });
  line.querySelector(".under")?.prepend(place);
  return place;
}
