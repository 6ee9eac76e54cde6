import type { BookRecords } from "./book-records";
import { asHostError, HostError } from "./host-error";
import type { ObjectMakers } from "./object-makers";
import type { SheetStore } from "./sheet-store";
import { hasSet } from "./switches";

interface Command {
  readonly kind: "read" | "write";
  readonly run: () => void;
}

/** One conversation with the host: commands wait in a queue until `sync()`. */
export class RequestContext {
  private queue: Command[] = [];
  private inserted: Command[] = [];
  private unsettled = false;
  private cellsHandedOver = 0;
  private hasEnded = false;
  private readonly only = new Map<string, unknown>();

  constructor(
    readonly store: SheetStore,
    readonly make: ObjectMakers,
    private readonly waitsForCellEdit = false,
  ) {}

  get records(): BookRecords {
    return this.store.records;
  }

  get workbook(): unknown {
    return this.one("workbook");
  }

  get application(): unknown {
    return this.one("application");
  }

  get runtime(): unknown {
    return this.one("runtime");
  }

  private one(name: "workbook" | "application" | "runtime"): unknown {
    const known = this.only.get(name) ?? this.make[name](this);
    this.only.set(name, known);
    return known;
  }

  readonly trackedObjects = {
    add: (object: { track(): unknown }): void => { object.track(); },
    remove: (object: { untrack(): unknown }): void => { object.untrack(); },
  };

  enqueue(kind: Command["kind"], run: () => void): void {
    this.queue.push({ kind, run });
  }

  /** Queues commands that can be known only when this point of the queue is reached. */
  enqueueAfter(more: () => void): void {
    this.enqueue("read", () => {
      const rest = this.queue;
      this.queue = [];
      more();
      this.inserted = this.queue;
      this.queue = rest;
    });
  }

  /** Carries the queue out in order; at the first failure the rest is dropped, as in the real host. */
  async sync(passThrough?: unknown): Promise<unknown> {
    const commands = this.queue;
    this.queue = [];
    this.cellsHandedOver = 0;
    try {
      await this.answering();
      await this.carryOut(commands);
      await this.settle();
    } catch (problem) {
      throw asHostError(problem);
    }
    return passThrough;
  }

  /** Excel.run has ended: the ranges it made are let go, sheets and handlers live on. */
  end(): void {
    this.hasEnded = true;
  }

  get ended(): boolean {
    return this.hasEnded;
  }

  /** Fails the sync when the host is too old for a member. */
  needs(version: string | undefined, member: string): void {
    if (version === undefined) return;
    this.enqueue("read", () => {
      if (!hasSet(this.records.switches, "ExcelApi", version)) throw new HostError("ApiNotFound", `ExcelApi ${version}`, member);
    });
  }

  /** Counts cells handed over in this sync. @throws {HostError} `ResponsePayloadSizeLimitExceeded` */
  handOver(cells: number): void {
    this.cellsHandedOver += cells;
    if (this.cellsHandedOver > this.records.switches.cellsPerSync) throw new HostError("ResponsePayloadSizeLimitExceeded", `${cells} cells`);
  }

  private async carryOut(commands: readonly Command[]): Promise<void> {
    for (const { kind, run } of commands) {
      if (kind === "read") await this.settle();
      run();
      if (kind === "write") this.unsettled = true;
      await this.carryOut(this.inserted.splice(0));
    }
  }

  private async settle(): Promise<void> {
    if (!this.unsettled) return;
    this.unsettled = false;
    await this.store.settled();
  }

  private async answering(): Promise<void> {
    const { switches } = this.records;
    if (switches.syncDelay > 0) await pause(switches.syncDelay);
    else await Promise.resolve();
    while (switches.cellEditing) {
      if (!this.waitsForCellEdit) throw new HostError("InvalidOperationInCellEditMode");
      await pause(10);
    }
  }
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
