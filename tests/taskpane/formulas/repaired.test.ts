import { expect, test } from "vitest";
import { functionNames } from "../../../taskpane/formulas/function-names";
import { isOurs, repaired } from "../../../taskpane/formulas/repaired";
import { loadBundle } from "../../../workbench/host/load-bundle";

const lost = "#NAME?";

test.each([
  ["=_xldudf_RUNOFF_SALTRATIO(A1,B1)", lost, "=RUNOFF.SALTRATIO(A1,B1)"],
  ["=_xldudf_RUNOFF_SALTRATIO(A1,B1)", 2, "=RUNOFF.SALTRATIO(A1,B1)"],
  ["=[1]!RUNOFF.SALTRATIO(A1,B1)", lost, "=RUNOFF.SALTRATIO(A1,B1)"],
  ["='C:\\my sheets\\old.xlam'!RUNOFF.PHSHIFT(A1,B1)", lost, "=RUNOFF.PHSHIFT(A1,B1)"],
  ["=@RUNOFF.SALTRATIO(A1,B1)", lost, "=RUNOFF.SALTRATIO(A1,B1)"],
  ["=SALTRATIO(A1,ECFROMPPM(B1,500))", lost, "=RUNOFF.SALTRATIO(A1,RUNOFF.ECFROMPPM(B1,500))"],
  ["=RUNOFF.SALTRATIO(A1,B1)", lost, "=RUNOFF.SALTRATIO(A1,B1)"],
  ['=IF(A1="_xldudf_RUNOFF_PPM(","SALTRATIO(",_xldudf_RUNOFF_PPM(A1,500))', lost, '=IF(A1="_xldudf_RUNOFF_PPM(","SALTRATIO(",RUNOFF.PPM(A1,500))'],
])("%s showing %j is entered as %s", (formula, shows, mended) => {
  expect(repaired(formula, shows)).toBe(mended);
});

test.each([
  ["=RUNOFF.SALTRATIO(A1,B1)", 2],
  ["=@RUNOFF.SALTRATIO(A1,B1)", 2],
  ["=RUNOFF.SALTRATIO(A1,B1)", "#VALUE!"],
  ["=SUMM(A1)", lost],
  ['="RUNOFF.SALTRATIO(A1)"&X', lost],
  ["RUNOFF.SALTRATIO(A1,B1)", lost],
  [3, lost],
])("%j showing %j is left alone", (formula, shows) => {
  expect(repaired(formula, shows)).toBeUndefined();
});

test("a text that only speaks of a function is no formula of ours", () => {
  expect(isOurs('="see RUNOFF.PPM"')).toBe(false);
  expect(isOurs("=1+RUNOFF.PPM(A1,500)")).toBe(true);
});

test("the list of names is that of the functions", () => {
  expect([...functionNames]).toEqual(loadBundle().metadata.functions.map(({ id }) => id).sort());
});
