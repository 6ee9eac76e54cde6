import { IUndoRedoService, type IDisposable } from "@univerjs/core";
import { unitId } from "./book-data";
import type { Grid } from "./grid";

/** Steps of undo that take in several commands. Runs overlap: the pane reads while another writes, and must not end its step. */
export class UndoGroups {
  private batch: IDisposable | undefined;
  private open = 0;

  constructor(private readonly grid: Grid) {}

  mark(mark: "start" | "end"): void {
    if (mark === "end" && this.open <= 1) {
      this.end();
      return;
    }
    this.open += mark === "start" ? 1 : -1;
    // eslint-disable-next-line @typescript-eslint/no-deprecated -- the component offers no other way yet
    this.batch ??= this.grid.univer.__getInjector().get(IUndoRedoService).__tempBatchingUndoRedo(unitId);
  }

  end(): void {
    this.open = 0;
    this.batch?.dispose();
    this.batch = undefined;
  }
}
