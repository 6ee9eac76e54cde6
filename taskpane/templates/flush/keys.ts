import { mostPortions } from "./labels";

/** The rows of the readings, by key: before the flush, then every portion. */
export const portionKey = (portion: number): string => `reading${portion}`;
const [first, last] = [portionKey(0), portionKey(mostPortions)];

const down = (column: string, to: string = last): string => `{${first}:${column}}:{${to}:${column}}`;

/** The series of the readings down to a row: litres, pH and EC as the worksheet functions take them. */
export const litresTo = (key?: string): string => down("C", key);
export const phsTo = (key?: string): string => down("D", key);
export const ecsTo = (key?: string): string => down("E", key);

/**
 * Where the plan's own table begins: beside the reading before the flush, so that each portion has its line of the
 * plan.
 */
export const planStart = first;
export const firstPortion = portionKey(1);
export const plannedLitres = `{${firstPortion}:L}:{${last}:L}`;
