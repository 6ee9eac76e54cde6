import { Refusal } from "../src/index";
import { CellError } from "./cells";

/** What a formula may answer for one cell; `undefined` is a blank. */
export type Answer = number | string | boolean | undefined;

/** The last gate: only a finite number, a text, a boolean or an error passes; the host would show NaN and null as 0. */
export function outgoing(answer: Answer): unknown {
  if (typeof answer === "number") {
    return Number.isFinite(answer) ? answer : error("#N/A", "this has no finite answer: check the readings");
  }
  return answer ?? "";
}

/** Codes for which no answer can exist, rather than an input being wrong. */
const noAnswerExists = new Set(["outside-validity", "not-enough-readings"]);

/** What was thrown, as the host's own error with its reason. */
export function asError(problem: unknown): CustomFunctions.Error {
  if (problem instanceof CustomFunctions.Error) return problem;
  if (problem instanceof Refusal) return error(noAnswerExists.has(problem.code) ? "#N/A" : "#VALUE!", problem.message);
  if (problem instanceof CellError) return error(problem.code, problem.message);
  return error("#VALUE!", "this formula met a fault of its own: please report it with the cells it was given");
}

/** The host keeps a reason for #VALUE! and #N/A only; another error in an input cell goes on as #VALUE!. */
function error(code: string, message: string): CustomFunctions.Error {
  const known = code === "#N/A" ? CustomFunctions.ErrorCode.notAvailable : CustomFunctions.ErrorCode.invalidValue;
  return new CustomFunctions.Error(known, message);
}
