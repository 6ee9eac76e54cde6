import { BooleanNumber } from "@univerjs/core";
import { BaseFunction, FunctionType, type BaseValueObject, type IFunctionInfo } from "@univerjs/engine-formula";
import type { BlankDelivery, CellValue, FunctionMetadata, FunctionCaller, FunctionsMetadata } from "../host/functions-host";
import { functionCall } from "./function-call";
import { fromMatrix, toMatrix } from "./univer-values";

export interface UniverFunction {
  /** As a person types it: `RUNOFF.SALTRATIO`. */
  readonly name: string;
  readonly functionClass: new () => BaseFunction;
  /** What the grid shows while the function is being typed. */
  readonly description: IFunctionInfo;
}

/** The functions of a loaded bundle as Univer takes them; `blank` is asked at every call, so that it can be switched. */
export function univerFunctions(
  host: FunctionCaller,
  metadata: FunctionsMetadata,
  namespace: string,
  blank: () => BlankDelivery,
): UniverFunction[] {
  return metadata.functions.map((each) => {
    const name = `${namespace}.${each.name}`.toUpperCase();
    const call = (args: BaseValueObject[]) => called(host, each, args, blank());
    class WorksheetFunction extends BaseFunction {
      constructor() {
        super(name);
      }
      override calculate(...args: BaseValueObject[]): BaseValueObject {
        return fromMatrix(call(args));
      }
    }
    return { name, functionClass: WorksheetFunction, description: description(name, each) };
  });
}

function called(host: FunctionCaller, each: FunctionMetadata, args: BaseValueObject[], blank: BlankDelivery): CellValue[][] {
  return functionCall(host, each, args.map((arg) => (isLeftOut(arg) ? undefined : toMatrix(arg))), blank);
}

/** `F(1,,3)`: a blank that no cell stands behind. A reference to a blank cell comes as an array. */
function isLeftOut(arg: BaseValueObject): boolean {
  return !arg.isArray() && arg.isNull();
}

function description(functionName: string, { description: text, parameters }: FunctionMetadata): IFunctionInfo {
  const functionParameter = parameters.map(({ name, description: detail, optional }) => ({
    name,
    detail,
    example: "B2:B40",
    require: optional === true ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    repeat: BooleanNumber.FALSE,
  }));
  return { functionName, functionType: FunctionType.User, description: text, abstract: text, functionParameter };
}
