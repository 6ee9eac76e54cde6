import type { BlankDelivery, CellValue, FunctionCaller, Matrix } from "../host/functions-host";

/** Lets worksheet functions answer late: a call shows #BUSY! at first, and its answer when everything is computed again. */
export class LateAnswers implements FunctionCaller {
  private readonly asked = new Map<string, "waiting" | "answered">();

  /** `lateness` in milliseconds, 0 is at once; `recalculate` computes everything again. */
  constructor(
    private readonly functions: FunctionCaller,
    private readonly lateness: () => number,
    private readonly recalculate: () => void,
  ) {}

  call(id: string, args: readonly (Matrix | undefined)[], blank?: BlankDelivery): CellValue[][] {
    const lateness = this.lateness();
    if (lateness === 0) {
      this.asked.clear();
      return this.functions.call(id, args, blank);
    }
    const key = JSON.stringify([id, args, blank]);
    const state = this.asked.get(key);
    if (state === "answered") return this.functions.call(id, args, blank);
    if (state === undefined) this.ask(key, lateness);
    return [[{ error: "#BUSY!" }]];
  }

  private ask(key: string, lateness: number): void {
    const isFirst = ![...this.asked.values()].includes("waiting");
    this.asked.set(key, "waiting");
    if (!isFirst) return;
    setTimeout(() => {
      for (const each of this.asked.keys()) this.asked.set(each, "answered");
      this.recalculate();
    }, lateness);
  }
}
