import { type LogQuantity } from "../log";
import { type ColumnReading } from "../reading";

/** Whether a column is read as a quantity, in all of its rows or in those of one side. */
export const holds = ({ read, quantity, bySide }: ColumnReading, wanted: LogQuantity): boolean =>
  read && (quantity === wanted || bySide?.input === wanted || bySide?.runoff === wanted);

/** The place of the column that is read as a quantity; -1 where none is. */
export const columnOf = (columns: readonly ColumnReading[], wanted: LogQuantity): number =>
  columns.findIndex((column) => holds(column, wanted));
