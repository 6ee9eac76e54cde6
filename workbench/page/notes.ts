import { UpdateNoteMutation } from "@univerjs/preset-sheets-note";
import { parseArea } from "../host/excel/area";
import type { SheetChange } from "./sheet-change";

const size = { width: 220, height: 90 };

/** Shows the notes that a file keeps on its cells, by address. */
export function showNotes({ run, sheetId }: SheetChange, notes: ReadonlyMap<string, string> | undefined): void {
  for (const [address, note] of notes ?? []) {
    const place = parseArea(address, sheetId);
    if (place === undefined) continue;
    const { row, column: col } = place;
    run(UpdateNoteMutation.id, { row, col, note: { id: `${sheetId}-${address}`, row, col, note, ...size } });
  }
}
