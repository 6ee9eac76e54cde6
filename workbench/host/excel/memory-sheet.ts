import { type Area, areaAt } from "./area";
import { Bounds, type Line, span, touches } from "./area-maths";
import type { Box, CellLook, Entry, Scalar, SheetInfo, Visibility } from "./sheet-store";

interface MemoryCell {
  value: Scalar;
  formula?: string;
  /** The spilling formula that filled this cell. */
  spilledFrom?: Area;
}

/** The size of a cell that nobody has changed. */
export const usualPoints: Readonly<Record<Line, number>> = { row: 15, column: 48 };

const keyOf = (row: number, column: number): string => `${row},${column}`;

/** One sheet of a workbook in memory. */
export class MemorySheet implements SheetInfo {
  visibility: Visibility = "Visible";
  readonly hidden: Readonly<Record<Line, Set<number>>> = { row: new Set(), column: new Set() };
  private readonly sizes: Readonly<Record<Line, Map<number, number>>> = { row: new Map(), column: new Map() };
  private readonly cells = new Map<string, MemoryCell>();
  private readonly formats = new Map<string, string>();
  private readonly looks = new Map<string, CellLook>();
  private spills: Area[] = [];

  constructor(readonly id: string, public name: string) {}

  cell(row: number, column: number): MemoryCell | undefined { return this.cells.get(keyOf(row, column)); }
  value(row: number, column: number): Scalar { return this.cell(row, column)?.value ?? ""; }
  format(row: number, column: number): string { return this.formats.get(keyOf(row, column)) ?? "General"; }
  look(row: number, column: number): CellLook { return this.looks.get(keyOf(row, column)) ?? {}; }

  enter(row: number, column: number, value: Entry | undefined): void {
    if (value === undefined) return;
    if (value === "") this.cells.delete(keyOf(row, column));
    else if (typeof value === "object") this.cells.set(keyOf(row, column), { value: 0, formula: value.formula });
    else this.cells.set(keyOf(row, column), { value });
  }

  setFormat(row: number, column: number, format: string | undefined): void {
    if (format !== undefined) this.formats.set(keyOf(row, column), format);
  }

  setLook(row: number, column: number, look: CellLook | undefined): void {
    if (look === undefined) this.looks.delete(keyOf(row, column));
    else {
      const before = this.look(row, column);
      const borders = look.borders === undefined ? {} : { borders: { ...before.borders, ...look.borders } };
      this.looks.set(keyOf(row, column), { ...before, ...look, ...borders });
    }
  }

  filled(onlyValues: boolean): Area | undefined {
    const keys = [...this.cells.keys(), ...(onlyValues ? [] : [...this.looks.keys(), ...this.formats.keys()])];
    const bounds = new Bounds();
    for (const key of keys) {
      const [row = 0, column = 0] = key.split(",").map(Number);
      bounds.include(row, column);
    }
    return bounds.on(this.id);
  }

  box({ row, column, rowCount, columnCount }: Area): Box {
    const size = (line: Line, first: number, count: number): number =>
      Array.from({ length: count }, (_, i) => this.sizes[line].get(first + i) ?? usualPoints[line]).reduce((sum, each) => sum + each, 0);
    return { left: size("column", 0, column), top: size("row", 0, row), width: size("column", column, columnCount), height: size("row", row, rowCount) };
  }

  setSize(area: Area, line: Line, points: number): void {
    const { first, count } = span(area, line);
    for (let i = 0; i < count; i += 1) this.sizes[line].set(first + i, points);
  }

  setHidden(area: Area, line: Line, isHidden: boolean): void {
    const { first, count } = span(area, line);
    for (let each = first; each < first + count; each += 1) this.hidden[line][isHidden ? "add" : "delete"](each);
  }

  formulaCells(): { row: number; column: number; formula: string }[] {
    return [...this.cells].flatMap(([key, { formula }]) => {
      const [row = 0, column = 0] = key.split(",").map(Number);
      return formula === undefined ? [] : [{ row, column, formula }];
    });
  }

  forgetSpills(): void {
    for (const [key, cell] of this.cells) if (cell.spilledFrom !== undefined) this.cells.delete(key);
    this.spills = [];
  }

  /** Lays a result over the cells it needs, or #SPILL! when one of them is filled. */
  spill(anchor: Area, result: readonly (readonly Scalar[])[]): void {
    const formulaCell = this.cell(anchor.row, anchor.column);
    if (formulaCell === undefined) return;
    const area = areaAt(this.id, anchor.row, anchor.column, result.length, result[0]?.length ?? 1);
    const places = result.flatMap((line, i) => line.map((value, j) => ({ row: anchor.row + i, column: anchor.column + j, value }))).slice(1);
    if (places.some(({ row, column }) => this.cell(row, column) !== undefined)) {
      formulaCell.value = "#SPILL!";
      return;
    }
    formulaCell.value = result[0]?.[0] ?? 0;
    for (const { row, column, value } of places) this.cells.set(keyOf(row, column), { value, spilledFrom: anchor });
    if (places.length > 0) this.spills.push(area);
  }

  spillOver(row: number, column: number): Area | undefined {
    return this.spills.find((area) => touches(area, areaAt(this.id, row, column)));
  }
}
