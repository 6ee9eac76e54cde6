/** The codes under which the real host refuses; a pane branches on these, never on the wording. */
export type HostErrorCode =
  | "AccessDenied"
  | "ApiNotFound"
  | "GeneralException"
  | "InvalidArgument"
  | "InvalidObjectPath"
  | "InvalidOperation"
  | "InvalidOperationInCellEditMode"
  | "InvalidReference"
  | "InvalidSelection"
  | "ItemAlreadyExists"
  | "ItemNotFound"
  | "PropertyNotLoaded"
  | "RequestAborted"
  | "ResponsePayloadSizeLimitExceeded"
  | "UnsupportedOperation";

const texts: Record<HostErrorCode, string> = {
  AccessDenied: "You cannot perform the requested operation: the sheet is protected.",
  ApiNotFound: "The API you are trying to use could not be found. It may need a newer version of the host.",
  GeneralException: "There was an internal error while processing the request.",
  InvalidArgument: "The argument is invalid or missing or has an incorrect format.",
  InvalidObjectPath: "The object path is not valid any more, or points at nothing.",
  InvalidOperation: "The operation attempted is invalid on the object.",
  InvalidOperationInCellEditMode: "The host is in cell-editing mode. Leave the cell and try again.",
  InvalidReference: "This reference is not valid for the current operation.",
  InvalidSelection: "The current selection is invalid for this operation.",
  ItemAlreadyExists: "The resource being created already exists.",
  ItemNotFound: "The requested resource doesn't exist.",
  PropertyNotLoaded: "The property is not available. Call load() and context.sync() before reading it.",
  RequestAborted: "The request was aborted during run time.",
  ResponsePayloadSizeLimitExceeded: "The response is too large. Ask for fewer cells at a time.",
  UnsupportedOperation: "The operation being attempted is not supported.",
};

/** What a call of the host fails with: the shape of OfficeExtension.Error. */
export class HostError extends Error {
  override readonly name = "RichApi.Error";
  readonly debugInfo: { readonly code: string; readonly message: string; readonly errorLocation: string };

  constructor(
    readonly code: HostErrorCode,
    detail = "",
    errorLocation = "",
  ) {
    const message = detail === "" ? texts[code] : `${texts[code]} (${detail})`;
    super(message);
    this.debugInfo = { code, message, errorLocation };
  }
}

/** Any failure, also one born in another frame, as this frame's own HostError. */
export function asHostError(problem: unknown): HostError {
  if (problem instanceof HostError) return problem;
  if (problem instanceof Error) {
    const code = "code" in problem ? String(problem.code) : "";
    return code in texts ? new HostError(code as HostErrorCode, problem.message) : new HostError("GeneralException", problem.message);
  }
  return new HostError("GeneralException", String(problem));
}
