/** The codes under which the real host refuses; a pane branches on these, never on the wording. */
const texts = {
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
  ResponsePayloadSizeLimitExceeded: "The response is too large. Ask for fewer cells at a time.",
  UndoNotSupported: "A change of this batch cannot join a step of the undo list.",
  UnsupportedOperation: "The operation being attempted is not supported.",
};

export type HostErrorCode = keyof typeof texts;

/** What the workbench lacks is told by its own code, so that nobody takes it for a refusal of the host. */
export type NotInWorkbench = `NotInWorkbench: ${string}`;

/** A refusal of the document side; the host's library makes its own error of it, with the same code. */
export class HostError extends Error {
  constructor(
    readonly code: HostErrorCode | NotInWorkbench,
    detail = "",
  ) {
    const text = code in texts ? texts[code as HostErrorCode] : "The workbench does not know it: add it to workbench/host/objects.";
    super(detail === "" ? text : `${text} (${detail})`);
  }
}

/** Any failure as a refusal. */
export function asHostError(problem: unknown): HostError {
  return problem instanceof HostError ? problem : new HostError("GeneralException", problem instanceof Error ? problem.message : String(problem));
}
