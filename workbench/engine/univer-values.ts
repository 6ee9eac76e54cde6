import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import type { CellValue, Matrix } from "../host/functions-host";

const errorTypes = new Map<string, ErrorType>(Object.values(ErrorType).map((type) => [type, type]));

/** An argument of Univer's engine as a matrix of cells: blanks are `undefined`, text stays text. */
export function toMatrix(argument: BaseValueObject): CellValue[][] {
  if (!argument.isArray()) return [[toCell(argument)]];
  return argument.getArrayValue().map((row) => Array.from(row, toCell));
}

function toCell(value: Nullable<BaseValueObject>): CellValue {
  if (!value || value.isNull()) return undefined;
  return value.isError() ? { error: String(value.getValue()) } : value.getValue();
}

/** A function's answer, a rectangle, as Univer takes it. */
export function fromMatrix(rows: Matrix): BaseValueObject {
  const columnCount = rows[0]?.length ?? 0;
  const calculateValueList = rows.map((row) => row.map(fromCell));
  const only = calculateValueList[0]?.[0];
  if (only !== undefined && rows.length === 1 && columnCount === 1) return only;
  return ArrayValueObject.create({ calculateValueList, rowCount: rows.length, columnCount, unitId: "", sheetId: "", row: -1, column: -1 });
}

/** The reason of an error rides along as custom data, which Univer keeps beside the value in the cell: see `reasonOf`. */
function fromCell(value: CellValue): BaseValueObject {
  if (typeof value === "number") return NumberValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (typeof value !== "object") return StringValueObject.create(value ?? "");
  const type = errorTypes.get(value.error);
  // The component has no error of its own for what waits (#BUSY!): it is shown as it is written.
  if (type === undefined) return StringValueObject.create(value.error);
  const error = new ErrorValueObject(type, value.reason);
  return value.reason === undefined ? error : error.withCustomData({ reason: value.reason });
}

/** Why a computed cell holds an error, where the function said so. */
export function reasonOf({ custom }: ICellData): string | undefined {
  const reason: unknown = custom ? custom["reason"] : undefined;
  return typeof reason === "string" ? reason : undefined;
}

/** A value as Univer keeps it in a cell. */
export function cellData(value: CellValue): ICellData {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: typeof value === "object" ? value.error : (value ?? ""), t: CellValueType.STRING };
}
