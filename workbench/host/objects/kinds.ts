import { conditionalFormatKinds } from "./conditional-format";
import { ruleKinds } from "./conditional-rule";
import { dataValidation } from "./data-validation";
import { drawingKinds } from "./drawing";
import { keptKinds } from "./kept";
import type { Kinds } from "./kind";
import { namedKinds } from "./named-item";
import { range } from "./range";
import { areasKinds } from "./range-areas";
import { formatKinds } from "./range-format";
import { rangeView } from "./range-view";
import { tableKinds } from "./table";
import { tableLineKinds } from "./table-lines";
import { workbookKinds } from "./workbook";
import { worksheetKinds } from "./worksheet";
import { worksheetPartKinds } from "./worksheet-parts";

/** All that the workbench knows of the host's objects: what is missing here is an error that names it. */
export const kinds: Kinds = {
  ...workbookKinds,
  ...worksheetKinds,
  ...worksheetPartKinds,
  Range: range,
  RangeView: rangeView,
  ...areasKinds,
  ...formatKinds,
  DataValidation: dataValidation,
  ...conditionalFormatKinds,
  ...ruleKinds,
  ...tableKinds,
  ...tableLineKinds,
  ...namedKinds,
  ...keptKinds,
  ...drawingKinds,
};
