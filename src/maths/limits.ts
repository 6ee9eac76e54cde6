import { Refusal } from "../refusal";

/** Refuses a pair of limits that is no band, NaN included. @throws {Refusal} `order` */
export function limitsInOrder(low: number, high: number): void {
  if (low < high) return;
  throw new Refusal("order", { quantity: "low limit", given: low, allowed: `below the high limit ${high}` });
}
