import type { BlankDelivery, CellValue, FunctionMetadata, FunctionCaller, Matrix } from "../host/functions-host";

/** One call of a function as the host makes it: arguments counted, its answer a rectangle. `undefined` is an argument left out. */
export function functionCall(
  host: FunctionCaller,
  { id, parameters }: FunctionMetadata,
  args: readonly (Matrix | undefined)[],
  blank: BlankDelivery,
): CellValue[][] {
  const least = parameters.filter(({ optional }) => optional !== true).length;
  if (args.length < least || args.length > parameters.length) {
    return refused(`${id} takes ${least} to ${parameters.length} arguments, not ${args.length}`);
  }
  const rows = host.call(id, args.map((arg, n) => (arg === undefined && parameters[n]?.optional !== true ? [[undefined]] : arg)), blank);
  const columns = rows[0]?.length ?? 0;
  const isRectangle = columns > 0 && rows.every(({ length }) => length === columns);
  return isRectangle ? rows : refused("the function's answer is not a rectangle");
}

const refused = (reason: string): CellValue[][] => [[{ error: "#VALUE!", reason }]];
