import { type LogUnit } from "../cells/units";
import { type PotJudgement } from "../diagnosis/judgement/pot-judgement";
import { type ColumnReading } from "../log/reading";
import { ecUnits } from "../readings/ec-units";
import { fahrenheitPerCelsius, freezingFahrenheit } from "../readings/temperature";
import { litresPerUnit } from "../readings/volume";

/** One kind of figure as advice writes it, and what stands behind it in the log's own unit. */
interface Beside {
  readonly figure: RegExp;
  readonly own: (value: number) => number;
  readonly digits: number;
  readonly unit: string;
}

/** "4.6 mS/cm" and "EC 1.1" or "EC 0.5 to 1", as `ecText` and `feedText` write them. */
const ecFigure = /(?:(?<=\bEC )\d+(?:\.\d+)?(?: to \d+(?:\.\d+)?)?(?! ?mS|[\d.]*\d)|\b\d+(?:\.\d+)?(?= mS\/cm))(?: mS\/cm)?/g;
/** "1.4 L", as `litresText` writes it. */
const litresFigure = /\b\d+(?:\.\d+)? L\b/g;
/** "36 C" and "18 to 22 C". */
const celsiusFigure = /\b\d+(?: to \d+)? C\b/g;

/**
 * The judgement with each EC, volume and temperature also in the unit that the log is kept in, in brackets: a grower
 * who reads ppm, gallons or degrees Fahrenheit acts on those. Figures in the fields stay as they are.
 *
 * Errs to saying both: nothing is replaced. A log in mS/cm, dS/m, litres and C is left as it is.
 */
export function inLogUnits(judgement: PotJudgement, columns: readonly ColumnReading[]): PotJudgement {
  const besides = besidesOf(columns);
  if (besides.length === 0) return judgement;
  const said = (text: string): string => besides.reduce(withOwn, text);
  const [firstStep, ...steps] = judgement.course;
  const [firstReason, ...reasons] = judgement.reasons;
  const stepSaid = <S extends { readonly says: string }>(each: S): S => ({ ...each, says: said(each.says) });
  return {
    ...judgement,
    course: [stepSaid(firstStep), ...steps.map(stepSaid)],
    reasons: [said(firstReason), ...reasons.map(said)],
  };
}

function withOwn(text: string, { figure, own, digits, unit }: Beside): string {
  return text.replace(figure, (found) => {
    const values = (found.match(/\d+(?:\.\d+)?/g) ?? []).map((value) => own(Number(value)));
    return `${found} (${values.map((value) => rounded(value, digits)).join(" to ")} ${unit})`;
  });
}

/** To so many digits: more cannot be acted on. */
const rounded = (value: number, digits: number): string => String(Number(value.toPrecision(digits)));

function besidesOf(columns: readonly ColumnReading[]): readonly Beside[] {
  const unitOf = (...names: readonly ColumnReading["quantity"][]): LogUnit | undefined =>
    names.flatMap((name) => columns.find(({ quantity, read }) => read && quantity === name)?.unit ?? [])[0];
  const ec = ecBeside(unitOf("runoff EC", "input EC"));
  const volume = unitOf("input volume", "runoff volume");
  const isFahrenheit = unitOf("solution temperature", "air temperature") === "F";
  return [
    ...(ec === undefined ? [] : [ec]),
    ...(volume === "gal" || volume === "qt" || volume === "fl oz"
      ? [{ figure: litresFigure, own: (litres: number) => litres / litresPerUnit[volume], digits: 2, unit: volume }]
      : []),
    ...(isFahrenheit ? [{ figure: celsiusFigure, own: fahrenheit, digits: 2, unit: "F" }] : []),
  ];
}

const fahrenheit = (celsius: number): number => celsius * fahrenheitPerCelsius + freezingFahrenheit;

function ecBeside(unit: LogUnit | undefined): Beside | undefined {
  const [, scale] = /^ppm (\d+)$/.exec(unit ?? "") ?? [];
  if (scale !== undefined) return { figure: ecFigure, own: (ec) => ec * Number(scale), digits: 3, unit: "ppm" };
  if (unit !== "uS/cm" && unit !== "CF" && unit !== "mS/m") return undefined;
  return { figure: ecFigure, own: (ec) => ec * ecUnits[unit], digits: 3, unit };
}
