import { type Ec25, ec25, fitWashout, type Litres, litres, washoutEc } from "../../src/index";
import { type WashedPoint, type Washout } from "../drawing/washout-drawing";
import { type FlushOnSheet, type FlushView } from "./flush-on-sheet";

/** Points a curve is drawn through: enough to look smooth at the width of a pane. */
const curvePoints = 40;

/** Readings, plan and fit of a flush, ready to be drawn. */
export function washoutOf({ readings, waterEc = 0, band }: FlushOnSheet, { plan, targetEc }: FlushView): Washout {
  let poured = 0;
  const measured = readings.flatMap(({ litres: amount, ec }): WashedPoint[] => {
    poured += amount ?? 0;
    return ec === undefined ? [] : [{ litres: poured, ec }];
  });
  const [first] = measured;
  const planned =
    first === undefined
      ? []
      : [
          { litres: 0, ec: first.ec },
          ...plan.portions.map(({ litresSoFar, expectedEc }) => ({ litres: litresSoFar, ec: expectedEc })),
        ];
  return {
    measured,
    planned,
    fitted: fittedCurve(measured, waterEc, planned.at(-1)?.litres ?? poured),
    targetEc,
    limitEc: band?.ec[1] ?? targetEc,
  };
}

/**
 * The washout model through the pot's own readings, from the first of them on; none where no falling curve can be
 * drawn.
 */
function fittedCurve(measured: readonly WashedPoint[], waterEc: number, upTo: number): WashedPoint[] {
  const [first] = measured;
  if (first === undefined || measured.length < 3) return [];
  const points = measured.map((point) => ({ litresSoFar: litres(point.litres), ec: ec25(point.ec) }));
  const rate = fitWashout(points, ec25(waterEc));
  if (rate === undefined) return [];
  const start = startOf(points, waterEc, rate);
  const last = Math.max(upTo, measured.at(-1)?.litres ?? 0);
  return Array.from({ length: curvePoints + 1 }, (_, i) => {
    const amount = (last * i) / curvePoints;
    return { litres: amount, ec: washoutEc(start, ec25(waterEc), { litres: litres(amount), ratePerLitre: rate }) };
  });
}

/**
 * Where the fitted curve begins: the excess at no water that fits the readings best, weighted as the fit weighs them.
 */
function startOf(
  points: readonly { readonly litresSoFar: Litres; readonly ec: Ec25 }[],
  waterEc: number,
  rate: number,
): Ec25 {
  let [above, below] = [0, 0];
  for (const { litresSoFar, ec } of points) {
    const falls = Math.exp(-rate * litresSoFar);
    above += (ec - waterEc) * falls;
    below += falls * falls;
  }
  return ec25(waterEc + above / below);
}
