import { cellsOf } from "./area";
import type { RequestContext } from "./request-context";
import type { StoreEvent } from "./sheet-store";

type Handler = (args: Readonly<Record<string, unknown>>) => unknown;

/** What a handler is told about an event; nothing when the event is none of its business. */
export type Telling = (event: StoreEvent) => Readonly<Record<string, unknown>> | undefined;

/** `add` and `remove` of one kind of event; both take effect at the next sync. */
export class EventHandlers {
  private readonly endings = new Map<Handler, () => void>();

  constructor(
    private readonly context: RequestContext,
    private readonly tell: Telling,
  ) {}

  add(handler: Handler): { readonly context: RequestContext; remove(): void } {
    this.context.enqueue("read", () => {
      const end = this.context.store.subscribe((event) => {
        const args = this.context.records.eventsEnabled ? this.tell(event) : undefined;
        if (args !== undefined) setTimeout(() => void handler(args), 0);
      });
      this.endings.set(handler, end);
    });
    return { context: this.context, remove: () => { this.remove(handler); } };
  }

  remove(handler: Handler): void {
    this.context.enqueue("read", () => {
      this.endings.get(handler)?.();
      this.endings.delete(handler);
    });
  }
}

/** The host's words for a change of cells. */
export function changedArgs(event: StoreEvent): Readonly<Record<string, unknown>> | undefined {
  if (event.kind !== "changed") return undefined;
  return {
    type: "WorksheetChanged",
    changeType: "RangeEdited",
    source: "Local",
    triggerSource: event.by === "add-in" ? "ThisLocalAddin" : "Unknown",
    worksheetId: event.area.sheetId,
    address: cellsOf(event.area),
  };
}
