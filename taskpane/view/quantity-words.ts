import { type LogQuantity } from "../../src/index";

/** What a column can be, in the order in which it is offered. */
export const logQuantities: readonly LogQuantity[] = [
  "date", "time", "vessel", "input EC", "input pH", "runoff EC", "runoff pH", "input volume", "runoff volume",
  "solution temperature", "air temperature", "humidity", "notes", "other",
];
