import { Application, Runtime } from "./application";
import type { ObjectMakers } from "./object-makers";
import { Range } from "./range";
import { RangeAreas } from "./range-areas";
import { RequestContext } from "./request-context";
import type { SheetStore } from "./sheet-store";
import { Table } from "./table";
import { TableCollection } from "./table-collection";
import { Workbook } from "./workbook";
import { Worksheet } from "./worksheet";
import { HostError } from "./host-error";

const makers: ObjectMakers = {
  workbook: (context) => new Workbook(context),
  application: (context) => new Application(context),
  runtime: (context) => new Runtime(context),
  range: (...args) => new Range(...args),
  rangeAreas: (...args) => new RangeAreas(...args),
  worksheet: (...args) => new Worksheet(...args),
  table: (...args) => new Table(...args),
  tables: (...args) => new TableCollection(...args),
};

interface RunOptions {
  readonly delayForCellEdit?: boolean;
  readonly mergeUndoGroup?: boolean;
}

type Batch = (context: RequestContext) => Promise<unknown>;

/** The global `Excel` over a grid: `Excel.run([options | context], batch)`. */
export function excelOver(store: SheetStore): { readonly run: (first: unknown, batch?: Batch) => Promise<unknown>; readonly RequestContext: unknown } {
  const start = (options: RunOptions): RequestContext => new RequestContext(store, makers, options.delayForCellEdit === true);
  return {
    run: async (first, second) => {
      const batch = second ?? first;
      if (typeof batch !== "function") throw new HostError("InvalidArgument", "Excel.run takes a function");
      const options = (second === undefined || typeof first !== "object" || first === null ? {} : first) as RunOptions;
      const again = contextOf(first);
      const context = again ?? start(options);
      if (options.mergeUndoGroup === true) store.undoGroup("start");
      try {
        const answer = await (batch as Batch)(context);
        await context.sync();
        return answer;
      } finally {
        if (options.mergeUndoGroup === true) store.undoGroup("end");
        if (again === undefined) context.end();
      }
    },
    RequestContext: class extends RequestContext {
      constructor() {
        super(store, makers);
      }
    },
  };
}

/** A context handed over to go on with: itself, or that of an object or of a handler. */
function contextOf(given: unknown): RequestContext | undefined {
  if (given instanceof RequestContext) return given;
  const inner: unknown = typeof given === "object" && given !== null && "context" in given ? given.context : undefined;
  return inner instanceof RequestContext ? inner : undefined;
}
