/** The part of functions.json that a host needs to call a function. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl?: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional?: boolean;
    readonly dimensionality?: "matrix" | "scalar";
  }[];
}

export interface FunctionsMetadata {
  readonly functions: readonly FunctionMetadata[];
}

/** An error value in a cell, as the host shows it, with the reason where the host keeps one. */
export interface ErrorValue {
  readonly error: string;
  readonly reason?: string;
}

/** What a cell can hold: `undefined` is a blank. */
export type CellValue = number | string | boolean | ErrorValue | undefined;

export type Matrix = readonly (readonly CellValue[])[];

/** The three ways in which real hosts hand a blank cell over to a function. */
export const blankDeliveries = { zero: 0, null: null, empty: "" } as const;
export type BlankDelivery = keyof typeof blankDeliveries;

type WorksheetFunction = (...args: (unknown[][] | null)[]) => unknown;

/** The code of each error in a cell, by the name under which CustomFunctions.ErrorCode offers it. */
const errorCodes = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
} as const;

class CustomFunctionsError {
  readonly code: string;
  readonly message: string | undefined;
  constructor(code: string, message?: string) {
    this.code = code;
    this.message = message;
  }
}

/** Whoever calls a function by its id with cells. */
export type FunctionCaller = Pick<FunctionsHost, "call">;

/** The stand-in for the host's CustomFunctions object: the built bundle associates its functions with it, unchanged. */
export class FunctionsHost {
  private readonly associated = new Map<string, WorksheetFunction>();

  /** What the bundle finds under the global name `CustomFunctions`. */
  readonly runtime = {
    associate: (idOrMappings: string | Record<string, WorksheetFunction>, fn?: WorksheetFunction): void => {
      const pairs = typeof idOrMappings === "string" ? { [idOrMappings]: fn } : idOrMappings;
      for (const [id, each] of Object.entries(pairs)) if (each !== undefined) this.associated.set(id.toUpperCase(), each);
    },
    Error: CustomFunctionsError,
    ErrorCode: errorCodes,
  };

  get ids(): string[] {
    return [...this.associated.keys()];
  }

  /** The bare function as the bundle associated it. */
  associatedFunction(id: string): WorksheetFunction {
    const fn = this.associated.get(id.toUpperCase());
    if (fn === undefined) throw new Error(`no function ${id} is loaded`);
    return fn;
  }

  /** Hands arguments over as the host does (blanks in the chosen way, arguments left out as null); answers a matrix. */
  call(id: string, args: readonly (Matrix | undefined)[], blank: BlankDelivery = "zero"): CellValue[][] {
    return incoming(this.callRaw(id, args, blank));
  }

  /** The function's own answer before the host has touched it: what tests look at for NaN, null and undefined. */
  callRaw(id: string, args: readonly (Matrix | undefined)[], blank: BlankDelivery = "zero"): unknown {
    const fn = this.associated.get(id.toUpperCase());
    if (fn === undefined) return new CustomFunctionsError(errorCodes.invalidName, `no function ${id} is loaded`);
    const outgoing = args.map((arg) => arg?.map((row) => row.map((cell) => delivered(cell, blank))) ?? null);
    try {
      return fn(...outgoing, ...new Array<null>(Math.max(0, fn.length - args.length)).fill(null));
    } catch (problem) {
      return problem instanceof CustomFunctionsError ? problem : new CustomFunctionsError(errorCodes.invalidValue);
    }
  }
}

function delivered(cell: CellValue, blank: BlankDelivery): unknown {
  if (cell === undefined) return blankDeliveries[blank];
  if (typeof cell === "object") return { type: "Error", basicType: "Error", basicValue: cell.error };
  return cell;
}

/** What the host shows for a function's answer: one value, or rows of them. */
export function incoming(answer: unknown): CellValue[][] {
  const rows = Array.isArray(answer) ? (answer as unknown[]) : [[answer]];
  return rows.map((row) => (Array.isArray(row) ? row : [row]).map(shown));
}

/** NaN, Infinity, null and undefined inside an array appear as 0. */
function shown(value: unknown): CellValue {
  if (typeof value === "number") return Number.isFinite(value) ? value : 0;
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value !== "object" || value === null || !("code" in value)) return 0;
  const { code, message } = value as { readonly code: string; readonly message?: string };
  return message === undefined ? { error: code } : { error: code, reason: message };
}
