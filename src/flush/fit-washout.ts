import { type Ec25, type Litres } from "../quantities";

/** A runoff EC and all the water that had been poured when it was read. */
export interface WashPoint {
  readonly litresSoFar: Litres;
  readonly ec: Ec25;
}

/**
 * The washout rate of this very pot, per litre, from its own readings.
 *
 * A straight line through the logarithm of the excess over the water's EC. Each point weighs by its excess squared,
 * because a meter errs alike in EC at every reading, and the logarithm magnifies that near the water's own EC.
 *
 * Formula:  ln(EC - ECw) = a - r L, weighted least squares, weight (EC - ECw)^2
 * Valid:    readings above the water's own EC, taken at two or more volumes; others are left out
 * Source:   the model of `washoutEc`; weights by propagation of error
 *
 * @returns per litre; `undefined` when no falling line can be drawn
 * @example fitWashout([{ litresSoFar: litres(0), ec: ec25(6) }, { litresSoFar: litres(6.5), ec: ec25(3.181) }], ec25(0.4)) // 0.1077
 */
export function fitWashout(points: readonly WashPoint[], waterEc: Ec25): number | undefined {
  const rows = points
    .filter(({ ec }) => ec > waterEc)
    .map(({ litresSoFar, ec }) => ({ x: litresSoFar, y: Math.log(ec - waterEc), weight: (ec - waterEc) ** 2 }));
  const sum = (term: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((total, row) => total + term(row), 0);
  const weight = sum((row) => row.weight);
  const meanX = sum((row) => row.weight * row.x) / weight;
  const spread = sum((row) => row.weight * (row.x - meanX) ** 2);
  const rate = -sum((row) => row.weight * (row.x - meanX) * row.y) / spread;
  return rate > 0 && Number.isFinite(rate) ? rate : undefined;
}
