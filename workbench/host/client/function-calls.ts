import { blankDeliveries, type BlankDelivery, type CellValue, incoming, type Matrix } from "../functions-host";

/** What the host's own script puts on a page before its library: where functions.js associates its functions. */
export function prepareAssociation(page: object): void {
  const mappings: Record<string, unknown> = {};
  const listeners: (() => void)[] = [];
  const associate = (given: string | Readonly<Record<string, unknown>>, fn?: unknown): void => {
    Object.assign(mappings, typeof given === "string" ? { [given.toUpperCase()]: fn } : given);
    for (const listener of listeners) listener();
  };
  const association = { mappings, associate, onchange: (listener: () => void) => { listeners.push(listener); } };
  Object.assign(page, { CustomFunctionMappings: {}, CustomFunctions: { _association: association, associate } });
}

/** One call as a formula makes it. */
export interface FunctionCall {
  readonly id: string;
  /** A range or one value as a matrix; left out where the formula leaves it out. */
  readonly args: readonly (Matrix | undefined)[];
  readonly blank?: BlankDelivery;
}

/** Numbers by which the library knows a call, and what may come in its arguments. */
const [callCategory, callType] = [1, 1000];
const [allowsErrors, hasDataTypes] = [4, 8];

/** What a failed call shows, by the library's number for it; every other number is #VALUE!. */
const errorsByNumber: Readonly<Record<number, string>> = { 1: "#N/A", 5: "#DIV/0!", 6: "#NUM!", 8: "#NULL!" };

/** The library's result of one call. */
type Result = readonly [call: number, ok: boolean, value: unknown, errorNumber?: number];

/** The calculation engine's side of the host's custom-functions runtime: it has functions called and takes their answers. */
export class FunctionCalls {
  private readonly waiting = new Map<number, (answer: CellValue[][]) => void>();
  private count = 0;

  constructor(private readonly push: (entries: readonly unknown[]) => void) {}

  /** All the calls of one recalculation; the library answers when it flushes, some 50 ms after the first. */
  call(calls: readonly FunctionCall[]): Promise<CellValue[][][]> {
    return this.send(calls.map(({ id, args, blank = "zero" }) => ({ id, flags: allowsErrors, values: args.map((arg) => delivered(arg, blank)) })));
  }

  /** As `call`, with arguments as the host hands over cells of a data type: each a value with its kind. */
  callWithDataTypes(id: string, args: readonly (readonly (readonly unknown[])[])[]): Promise<CellValue[][][]> {
    const wrapped = args.map((arg) => arg.map((row) => row.map((cell) => (typeof cell === "object" ? { value: JSON.stringify(cell) } : cell))));
    return this.send([{ id, flags: allowsErrors + hasDataTypes, values: wrapped }]);
  }

  /** Takes the results of one flush. */
  settle(results: readonly Result[]): void {
    for (const [call, ok, value, errorNumber] of results) {
      this.waiting.get(call)?.(ok ? incoming(value) : [[failure(value, errorNumber)]]);
      this.waiting.delete(call);
    }
  }

  private send(calls: readonly { id: string; flags: number; values: unknown[] }[]): Promise<CellValue[][][]> {
    const answers = calls.map(({ id, flags, values }) => {
      const call = ++this.count;
      const entry = [callCategory, callType, "", JSON.stringify([call, id, values, "Log!A1", flags, null]), ""];
      return { entry, answer: new Promise<CellValue[][]>((resolve) => { this.waiting.set(call, resolve); }) };
    });
    this.push(answers.map(({ entry }) => entry));
    return Promise.all(answers.map(({ answer }) => answer));
  }
}

function delivered(arg: Matrix | undefined, blank: BlankDelivery): unknown {
  if (arg === undefined) return null;
  return arg.map((row) => row.map((cell) => {
    if (cell === undefined) return blankDeliveries[blank];
    return typeof cell === "object" ? { type: "CustomFunctionError", code: cell.error } : cell;
  }));
}

/** A text beside the number is the reason, where the host keeps one. */
function failure(value: unknown, errorNumber = 0): CellValue {
  const error = errorsByNumber[errorNumber] ?? "#VALUE!";
  return typeof value === "string" && value !== "" && (error === "#VALUE!" || error === "#N/A") ? { error, reason: value } : { error };
}
