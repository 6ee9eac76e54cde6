import type { Area } from "../excel/area";
import { HostError } from "../excel/host-error";
import { areaCalled } from "../excel/sheet-access";
import { type HostDocument, HostObject } from "./kind";

/** The area that an argument means: a range, or the address of one. @throws {HostError} `InvalidArgument` */
export function areaGiven(document: HostDocument, given: unknown, sheetId: string): Area {
  if (typeof given === "string") return areaCalled(document, given, sheetId);
  if (given instanceof HostObject && given.kind === "Range") return given.it as Area;
  throw new HostError("InvalidArgument", "a range or an address is needed");
}

/** A whole number as an argument, or what it is when left out. @throws {HostError} `InvalidArgument` */
export function wholeGiven(given: unknown, leftOut?: number): number {
  const value = given ?? leftOut;
  if (typeof value === "number" && Number.isInteger(value)) return value;
  throw new HostError("InvalidArgument", `${String(given)} is no whole number`);
}
