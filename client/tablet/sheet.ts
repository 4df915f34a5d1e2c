// The entries of one page: kept on the device after every change, and told to whoever shows them. Nothing leaves the device.

import { noEntries, type Entries } from "../../language/outputs/manual/tablet/entries.ts";
import type { Plan } from "../../language/outputs/manual/tablet/plan.ts";
import type { TabletWords } from "../../language/outputs/manual/tablet/words.ts";

export interface TabletData {
  readonly plan: Plan;
  readonly words: TabletWords;
}

export class Sheet {
  readonly plan: Plan;
  readonly words: TabletWords;
  /** False where the browser keeps nothing. */
  kept = true;
  #entries: Entries = noEntries;
  readonly #shown: (() => void)[] = [];

  constructor({ plan, words }: TabletData) {
    this.plan = plan;
    this.words = words;
    try {
      const text = localStorage.getItem(this.#name);
      if (text !== null) this.#entries = { ...noEntries, ...(JSON.parse(text) as Entries) };
    } catch {
      this.kept = false;
    }
  }

  /** By manual and revision: entries of another revision are never shown here. */
  get #name(): string {
    return `stripdown record of ${this.plan.id}, ${this.plan.content}`;
  }

  get entries(): Entries {
    return this.#entries;
  }

  set entries(entries: Entries) {
    this.#entries = entries;
    try {
      localStorage.setItem(this.#name, JSON.stringify(entries));
    } catch {
      this.kept = false;
    }
    for (const show of this.#shown) show();
  }

  onChange(show: () => void): void {
    this.#shown.push(show);
  }
}
