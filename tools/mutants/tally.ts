import path from "node:path";
import { type Fate } from "./judge";
import { type Mutant } from "./mutate";

/** Counts what became of each mutant, by folder, and keeps those that no test noticed. */
export class Tally {
  readonly #fates: { readonly mutant: Mutant; readonly fate: Fate }[] = [];

  add(mutant: Mutant, fate: Fate): void {
    this.#fates.push({ mutant, fate });
    if (this.#fates.length % 10 === 0) this.#line(`so far`, () => true);
    if (fate === "survived") console.log(`survived ${mutant.file}:${mutant.line}  ${mutant.from}  ->  ${mutant.to}`);
  }

  print(): void {
    const folders = new Set(this.#fates.map(({ mutant }) => path.dirname(mutant.file)));
    for (const folder of [...folders].sort()) this.#line(folder, (file) => path.dirname(file) === folder);
    this.#line("all", () => true);
  }

  #line(name: string, belongs: (file: string) => boolean): void {
    const fates = this.#fates.filter(({ mutant }) => belongs(mutant.file)).map(({ fate }) => fate);
    const survived = fates.filter((fate) => fate === "survived").length;
    const killed = fates.length - survived;
    const share = Math.round((killed / fates.length) * 100);
    console.log(`${name}: ${killed} of ${fates.length} killed (${share} %), ${survived} survived`);
  }
}
