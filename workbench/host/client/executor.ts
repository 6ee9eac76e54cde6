import { asHostError, HostError } from "../excel/host-error";
import type { SheetStore } from "../excel/sheet-store";
import { type HostDocument, HostObject } from "../objects/kind";
import { callMethod, itemCalled, partOf, there, workbook, writeScalar, writingMethods } from "./members";
import { type ActionInfo, actionTypes, type Batch, type BatchAnswer, lowerFirst, type PathInfo, pathTypes } from "./protocol";
import { answerQuery, identity } from "./query";

/** Whether an action changes the workbook; that of a method's object is carried out when it is first named. */
export function isWrite({ ActionType, Name, ObjectPathId }: ActionInfo, { ObjectPaths }: Batch): boolean {
  if (ActionType === actionTypes.set) return true;
  if (ActionType === actionTypes.method) return writingMethods.has(lowerFirst(Name));
  const path = ObjectPaths[ObjectPathId];
  return ActionType === actionTypes.instantiate && path?.ObjectPathType === pathTypes.method && writingMethods.has(lowerFirst(path.Name));
}

/** Methods that find other cells once formulas have answered. */
const dependsOnAnswers = /Spill|Used|Surrounding/;

/** Whether formulas must have answered before an action. */
function readsCells({ ActionType, ObjectPathId }: ActionInfo, { ObjectPaths }: Batch): boolean {
  return ActionType === actionTypes.query || dependsOnAnswers.test(ObjectPaths[ObjectPathId]?.Name ?? "");
}

/** Objects that the library asked the host to keep, by the name under which it asks for them again. */
export class References extends Map<string, HostObject> {
  private count = 0;

  keep(target: HostObject): string {
    this.count += 1;
    this.set(`reference-${this.count}`, target);
    return `reference-${this.count}`;
  }
}

/** Carries one batch out, action by action; at the first failure the rest is dropped, and what went before stands. */
export class BatchRun implements HostDocument {
  private readonly objects = new Map<number, HostObject | null>();
  private readonly referenceOf = new Map<HostObject, string>();
  private cellsHandedOver = 0;
  private isUnsettled = false;

  constructor(readonly store: SheetStore, private readonly batch: Batch, private readonly references: References) {}

  get records(): SheetStore["records"] {
    return this.store.records;
  }

  handOver(cells: number): void {
    this.cellsHandedOver += cells;
    if (this.cellsHandedOver > this.records.switches.cellsPerSync) throw new HostError("ResponsePayloadSizeLimitExceeded", `${cells} cells`);
  }

  /** `beforeWrite` may throw in place of a write. */
  async carryOut(beforeWrite: (write: number) => void): Promise<BatchAnswer> {
    const Results: { ActionId: number; Value: unknown }[] = [];
    const TraceIds: number[] = [];
    let writes = 0;
    for (const [ActionIndex, action] of this.batch.Actions.entries()) {
      try {
        const writing = isWrite(action, this.batch);
        if (writing) beforeWrite(writes++);
        else if (readsCells(action, this.batch)) await this.settle();
        Results.push({ ActionId: action.Id, Value: this.perform(action) });
        if (writing) this.isUnsettled = true;
        if (action.ActionType === actionTypes.trace) TraceIds.push(action.Id);
      } catch (problem) {
        await this.settle();
        const { code, message } = asHostError(problem);
        return { Results, TraceIds, Error: { Code: code, Message: message, Location: "", ActionIndex } };
      }
    }
    await this.settle();
    return { Results, TraceIds };
  }

  private async settle(): Promise<void> {
    if (!this.isUnsettled) return;
    this.isUnsettled = false;
    await this.store.settled();
  }

  private perform(action: ActionInfo): unknown {
    const { ActionType, Name, ObjectPathId, ArgumentInfo, QueryInfo = {} } = action;
    if (ActionType === actionTypes.trace) return null;
    const target = this.objectAt(ObjectPathId);
    // Whatever is asked of a null object is nothing, too.
    if (target === null) return null;
    if (ActionType === actionTypes.instantiate) {
      const reference = this.referenceOf.get(target);
      return reference === undefined ? identity(target, this) : { _ReferenceId: reference };
    }
    if (ActionType === actionTypes.query) return answerQuery(target, QueryInfo, this);
    const given = this.given(ArgumentInfo);
    if (ActionType === actionTypes.set) {
      writeScalar(target, lowerFirst(Name), given[0], this);
      return null;
    }
    if (ActionType === actionTypes.method) return this.method(target, Name, given);
    throw new HostError(`NotInWorkbench: an action of type ${ActionType}`);
  }

  private method(target: HostObject, name: string, given: readonly unknown[]): unknown {
    if (name === "_KeepReference") {
      this.referenceOf.set(target, this.references.keep(target));
      return null;
    }
    if (name === "_RemoveReference") {
      this.references.delete(String(given[0]));
      return null;
    }
    const answer = callMethod(target, lowerFirst(name), given, this);
    return answer instanceof HostObject || answer === undefined ? null : answer;
  }

  private objectAt(id: number): HostObject | null {
    const known = this.objects.get(id);
    if (known !== undefined) return known;
    const path = this.batch.ObjectPaths[id];
    if (path === undefined) throw new HostError("InvalidObjectPath", `path ${id}`);
    const found = this.found(path);
    this.objects.set(id, found);
    return found;
  }

  private found(path: PathInfo): HostObject | null {
    const { ObjectPathType, Name, ParentObjectPathId, ArgumentInfo } = path;
    if (ObjectPathType === pathTypes.nothing) return null;
    if (ObjectPathType === pathTypes.root) return workbook;
    if (ObjectPathType === pathTypes.reference) return there(this.references.get(Name), "InvalidReference", `${Name} was let go`);
    const parent = ParentObjectPathId === undefined ? undefined : this.objectAt(ParentObjectPathId);
    if (parent === undefined) throw new HostError(`NotInWorkbench: a new ${Name}`);
    if (parent === null) return null;
    if (ObjectPathType === pathTypes.property) return partOf(parent, lowerFirst(Name), this);
    const given = this.given(ArgumentInfo);
    if (ObjectPathType === pathTypes.indexer) return there(itemCalled(parent, given[0], this), "ItemNotFound", String(given[0]));
    const answer = callMethod(parent, lowerFirst(Name), given, this);
    if (answer instanceof HostObject || answer === null) return answer;
    throw new HostError(`NotInWorkbench: ${parent.kind}.${Name} as an object`);
  }

  private given(info: PathInfo["ArgumentInfo"]): readonly unknown[] {
    const paths = info?.ReferencedObjectPathIds ?? [];
    return (info?.Arguments ?? []).map((each, i) => {
      const id = paths[i];
      return typeof id === "number" && id > 0 ? this.objectAt(id) : each;
    });
  }
}
