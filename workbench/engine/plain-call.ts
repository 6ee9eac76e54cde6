import type { CellValue } from "../host/functions-host";
import { type Area, areaCalled } from "./areas";
import { sheetIn, sheetPrefix } from "./formula-text";

/** An argument that needs no formula engine: cells of a sheet, a constant, or nothing. */
export type PlainArgument =
  | { readonly kind: "cells"; readonly sheet: string; readonly area: Area }
  | { readonly kind: "constant"; readonly value: CellValue }
  | { readonly kind: "left out" };

export interface PlainCall {
  /** In capitals: `SALTRATIO`. */
  readonly name: string;
  readonly args: readonly PlainArgument[];
}

const call = /^=?\s*RUNOFF\.([A-Z][A-Z0-9]*)\((.*)\)\s*$/iu;
const argument = /((?:"(?:[^"]|"")*"|'(?:[^']|'')*'|[^,"'(){}])*)(,|$)/uy;
const reference = new RegExp(String.raw`^(${sheetPrefix})?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)$`, "iu");
const number = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?$/iu;

/** `RUNOFF.SALTRATIO(A2,Log!B2)`: one call of a function of ours with nothing in it to compute. `undefined` for any other formula. */
export function plainCall(formula: string, ownSheet: string): PlainCall | undefined {
  const [, name, inner] = call.exec(formula) ?? [];
  if (name === undefined || inner === undefined) return undefined;
  const args: PlainArgument[] = [];
  for (argument.lastIndex = 0; ; ) {
    const [, text, end] = argument.exec(inner) ?? [];
    const plain = text === undefined ? undefined : plainArgument(text.trim(), ownSheet);
    if (plain === undefined) return undefined;
    args.push(plain);
    if (end === "") return { name: name.toUpperCase(), args: inner.trim() === "" ? [] : args };
  }
}

function plainArgument(text: string, ownSheet: string): PlainArgument | undefined {
  if (text === "") return { kind: "left out" };
  if (number.test(text)) return { kind: "constant", value: Number(text) };
  if (/^(?:TRUE|FALSE)$/iu.test(text)) return { kind: "constant", value: text.toUpperCase() === "TRUE" };
  if (/^"(?:[^"]|"")*"$/u.test(text)) return { kind: "constant", value: text.slice(1, -1).replaceAll('""', '"') };
  const [, prefix, range] = reference.exec(text) ?? [];
  if (range === undefined) return undefined;
  return { kind: "cells", sheet: sheetIn(prefix, ownSheet), area: areaCalled(range) };
}
