// Pieces of plain formulas that would be tiresome to type: each writes out what a grower would spread over helper columns.

const places = (count: number): number[] => Array.from({ length: count }, (_, at) => at + 1);

/** A straight line between the two rows of a table around `x`. */
export function interpolated(x: string, across: string, up: string): string {
  const [before, after] = [`MATCH(${x},${across})`, `MATCH(${x},${across})+1`];
  const [x0, x1] = [`INDEX(${across},${before})`, `INDEX(${across},${after})`];
  const [y0, y1] = [`INDEX(${up},${before})`, `INDEX(${up},${after})`];
  return `(${y0}+(${x}-${x0})*(${y1}-${y0})/(${x1}-${x0}))`;
}

/** Sen's slope: the median of the slopes of all pairs. */
export function medianSlope(days: string, values: string, count: number): string {
  const pairs = places(count).flatMap((i) => places(count).slice(i).map((j) => `(${values}.${j}-${values}.${i})/(${days}.${j}-${days}.${i})`));
  return `MEDIAN(${pairs.join(",")})`;
}

/** The washout rate: minus the slope of ln(EC - water) on the litres so far, by least squares of weight (EC - water)^2. */
export function fittedRate(litres: string, ecs: string, water: string, count: number): string {
  const points = places(count).map((i) => {
    const x = `(${places(i).map((j) => `${litres}.${j}`).join("+")})`;
    return { weight: `(${ecs}.${i}-${water})^2`, x, y: `LN(${ecs}.${i}-${water})` };
  });
  const sum = (term: (x: string, y: string) => string): string => `(${points.map(({ weight, x, y }) => `${weight}*${term(x, y)}`).join("+")})`;
  const [w, wx, wy, wxy, wxx] = [sum(() => "1"), sum((x) => x), sum((_, y) => y), sum((x, y) => `${x}*${y}`), sum((x) => `${x}^2`)];
  return `((${wx}*${wy}-${w}*${wxy})/(${w}*${wxx}-${wx}^2))`;
}

/** Tabular CUSUM against the first readings, k = 0.5 and h = 5 standard deviations (2 % of the mean at least), a reading at most 4 off. */
export function cusumWords(values: string, baseline: number, count: number): string {
  const first = `${values}.1:${values}.${baseline}`;
  const scores = places(count).slice(baseline).map((i) => `MAX(-4,MIN(4,(${values}.${i}-AVERAGE(${first}))/MAX(0.05,0.02*AVERAGE(${first}),STDEV(${first}))))`);
  const up = scores.reduce((sum, score) => `MAX(0,${sum}+${score}-0.5)`, "0");
  const down = scores.reduce((sum, score) => `MAX(0,${sum}-${score}-0.5)`, "0");
  return `IF(${up}>5,"drifting up",IF(${down}>5,"drifting down","steady"))`;
}
