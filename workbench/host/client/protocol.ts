/** The host's client library sends each sync as one batch; these are its parts, under the library's own names. */

export const pathTypes = { root: 1, newObject: 2, method: 3, property: 4, indexer: 5, reference: 6, nothing: 7 } as const;
export const actionTypes = { instantiate: 1, query: 2, method: 3, set: 4, trace: 5 } as const;

interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  /** For each argument the id of the path of the object it is, 0 where it is a plain value. */
  readonly ReferencedObjectPathIds?: readonly (number | readonly number[])[];
}

export interface PathInfo {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

export interface QueryInfo {
  readonly Select?: readonly string[];
  readonly Expand?: readonly string[];
  readonly Top?: number;
  readonly Skip?: number;
}

export interface ActionInfo {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: QueryInfo;
}

export interface Batch {
  readonly Actions: readonly ActionInfo[];
  readonly ObjectPaths: Readonly<Record<string, PathInfo>>;
}

export interface BatchAnswer {
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  /** The trace actions that were reached: handlers of events are added only after theirs. */
  readonly TraceIds: readonly number[];
  readonly Error?: { readonly Code: string; readonly Message: string; readonly Location: string; readonly ActionIndex: number };
}

/** What passes the bridge, each way as one JSON text. */
export interface Message {
  readonly id: number;
  readonly type: number;
  readonly flags: number;
  readonly message: { readonly url: string; readonly body: Batch };
}

export const messageTypes = { request: 1, answer: 2, push: 3 } as const;
/** The flag of a request that may wait until the person has left the cell they are typing into. */
export const waitsForCellEdit = 64;

/** The library writes `RowIndex` where an add-in writes `rowIndex`. */
export const lowerFirst = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);
export const upperFirst = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);
