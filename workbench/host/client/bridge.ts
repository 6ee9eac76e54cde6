import { cellsOf } from "../excel/area";
import { HostError, type HostErrorCode } from "../excel/host-error";
import type { SheetStore, StoreEvent } from "../excel/sheet-store";
import type { Fault } from "../excel/switches";
import { FunctionCalls } from "./function-calls";
import { BatchRun, isWrite, References } from "./executor";
import { type Batch, type BatchAnswer, type Message, messageTypes, waitsForCellEdit } from "./protocol";

const pause = (milliseconds: number): Promise<void> => new Promise((resolve) => { setTimeout(resolve, milliseconds); });

/** The numbers by which the library knows the host's events. */
const eventCategory = 65_536;
const eventNumbers = { documentSelection: 2, changed: 10, activated: 11, calculated: 16 } as const;
const wholeWorkbook = "Workbook";

/** The document side of the host's client library, which looks for it when it loads: takes its batches and answers them from a workbook, one after the other. */
export class DocumentBridge {
  onMessageFromHost: ((text: string) => void) | null = null;
  private readonly references = new References();
  private syncs = 0;

  /** The add-in's worksheet functions, called through the library. */
  readonly functions = new FunctionCalls((entries) => { this.send({ type: messageTypes.push, message: { entries } }); });
  private readonly stopListening: () => void;

  /** Nothing is answered before its turn, the first not before the workbook is open. */
  constructor(private readonly store: SheetStore, private turn: Promise<void> = Promise.resolve()) {
    this.stopListening = store.subscribe((event) => { this.tell(event); });
  }

  /** Tells of no more events. */
  close(): void {
    this.stopListening();
  }

  readonly sendMessageToHost = (text: string): void => {
    const { id, type, flags, message } = JSON.parse(text) as Message;
    if (type !== messageTypes.request || message.url !== "ProcessQuery") throw new Error(`the workbench does not know this request: ${text}`);
    const results = functionResults(message.body);
    if (results !== undefined) {
      this.functions.settle(results);
      this.reply(id, nothingToTell(message.body));
      return;
    }
    this.turn = this.turn.then(async () => {
      this.reply(id, await this.answer(message.body, (flags & waitsForCellEdit) !== 0));
    });
  };

  private reply(id: number, answer: BatchAnswer): void {
    this.send({ id, type: messageTypes.answer, message: { statusCode: 200, headers: {}, body: JSON.stringify(answer) } });
  }

  private send(message: object): void {
    this.onMessageFromHost?.(JSON.stringify(message));
  }

  private async answer(batch: Batch, mayWait: boolean): Promise<BatchAnswer> {
    const { switches } = this.store.records;
    if (switches.syncDelay > 0) await pause(switches.syncDelay);
    while (switches.cellEditing && mayWait) await pause(10);
    if (switches.cellEditing && !isHousekeeping(batch)) return failed("InvalidOperationInCellEditMode");
    return this.carriedOut(batch);
  }

  private async carriedOut(batch: Batch): Promise<BatchAnswer> {
    const writes = batch.Actions.filter((action) => isWrite(action, batch)).length;
    const fault = isHousekeeping(batch) ? undefined : this.store.records.switches.onSync?.({ number: this.syncs++, writes });
    if (fault?.at === "before") return failed(fault.code);
    if (writes > 0) this.store.undoGroup("start");
    try {
      const answer = await new BatchRun(this.store, batch, this.references).carryOut((write) => { failAtWrite(fault, write); });
      return fault?.at === "after" ? failed(fault.code) : answer;
    } finally {
      if (writes > 0) this.store.undoGroup("end");
    }
  }

  private tell(event: StoreEvent): void {
    if (!this.store.records.eventsEnabled) return;
    const entries = entriesFor(event).map(([type, target, value]) => [eventCategory, type, target, JSON.stringify(value), ""]);
    setTimeout(() => { this.send({ type: messageTypes.push, message: { entries } }); });
  }
}

type Results = Parameters<FunctionCalls["settle"]>[0];

/** The answers of worksheet functions, where a batch hands over such. */
function functionResults({ Actions }: Batch): Results | undefined {
  return Actions.find(({ Name }) => Name === "SetInvocationArrayResults")?.ArgumentInfo?.Arguments?.[0] as Results | undefined;
}

const nothingToTell = ({ Actions }: Batch): BatchAnswer => ({ Results: Actions.map(({ Id }) => ({ ActionId: Id, Value: null })), TraceIds: [] });

/** After each Excel.run the library lets the ranges go that it had asked to keep; nobody waits for that. */
const isHousekeeping = ({ Actions }: Batch): boolean => Actions.some(({ Name }) => Name === "_RemoveReference");

function failAtWrite(fault: Fault | undefined, write: number): void {
  if (fault?.at === "write" && fault.write === write) throw new HostError("GeneralException", "a failure that was asked for");
}

function failed(code: HostErrorCode = "GeneralException"): BatchAnswer {
  return { Results: [], TraceIds: [], Error: { Code: code, Message: new HostError(code).message, Location: "", ActionIndex: 0 } };
}

type Entry = readonly [type: number, target: string, value: object];

/** To the sheet and to the workbook, as the host tells both. */
const both = (type: number, sheetId: string, value: object): Entry[] =>
  [sheetId, wholeWorkbook].map((target) => [type, target, { worksheetId: sheetId, ...value }]);

function entriesFor(event: StoreEvent): Entry[] {
  if (event.kind === "selection") return [[eventNumbers.documentSelection, "", {}]];
  if (event.kind === "activated") return both(eventNumbers.activated, event.sheetId, {});
  if (event.kind === "calculated") return both(eventNumbers.calculated, event.sheetId, {});
  const { area, by } = event;
  return both(eventNumbers.changed, area.sheetId, {
    changeType: "RangeEdited",
    source: "Local",
    triggerSource: by === "add-in" ? "ThisLocalAddin" : "Unknown",
    address: cellsOf(area),
  });
}
