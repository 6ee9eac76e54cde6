import { quantities, standing, type Timeline } from "../src/index";

/** The runoff reading that matters, beside its limits. */
export interface HeadFigure {
  readonly name: "EC" | "pH";
  readonly value: string;
  readonly limits: readonly [low: string, high: string] | undefined;
  readonly side: "low" | "inside" | "high";
}

/** The last runoff EC and pH; where one of them stands outside its limits, only what does. */
export function headFigures({ lanes }: Timeline): HeadFigure[] {
  const figures = lanes.flatMap(({ name, series, limits, decimals }): HeadFigure[] => {
    const last = series.find(({ role }) => role === "runoff")?.segments.at(-1)?.at(-1);
    if (last === undefined || (name !== "EC" && name !== "pH")) return [];
    const side =
      limits === undefined
        ? "inside"
        : standing(last.value, limits, quantities[name === "EC" ? "ec" : "ph"].resolution);
    const shown = (value: number): string => value.toFixed(decimals);
    return [
      {
        name,
        value: shown(last.value),
        limits: limits === undefined ? undefined : [shown(limits[0]), shown(limits[1])],
        side,
      },
    ];
  });
  const outside = figures.filter(({ side }) => side !== "inside");
  return outside.length > 0 ? outside : figures;
}
