import { quoted } from "../../cells/text";
import { numberCell } from "../../cells/number-cell";
import { type LogQuantity, type PlantLook } from "../log";

/** Which part of the plant's look each quantity is. */
const looks: Partial<Record<LogQuantity, keyof PlantLook>> = {
  "new growth": "newGrowth", posture: "posture", "spread of symptoms": "spread", roots: "roots",
};

/** The worst on the scale; 0 is as it should be. */
const worst = 3;

export const plantLookOf = (quantity: LogQuantity): keyof PlantLook | undefined => looks[quantity];

/** How one part of the plant looks, 0 to 3; why not; or nothing noted. */
export function plantCell(cell: unknown): { readonly value: number } | { readonly reason: string } | undefined {
  const read = numberCell(cell, false);
  if (read === undefined || "reason" in read) return read;
  if (read.unit === undefined && read.value >= 0 && read.value <= worst) return { value: read.value };
  return { reason: `${quoted(cell)} is not on the scale of 0 (as it should be) to ${worst} (bad)` };
}
