import path from "node:path";
import { parseArgs } from "node:util";
import {
  type Band, bandFor, bandNamed, ec25, feederNamed, type Litres, litres, type LogAnswers, type LogQuantity, logQuantities, mediumNamed, ownBand, ph, ppmScaleNamed,
  potVolume, sampleNamed,
} from "../../src/index";
import { orElse } from "../files/file-problem";

export interface TimelineRequest {
  /** One or more. */
  readonly files: readonly string[];
  readonly sheet: string | undefined;
  readonly range: string | undefined;
  readonly vessel: string | undefined;
  readonly band: Band | undefined;
  readonly container: Litres | undefined;
  readonly svg: string | undefined;
  readonly json: boolean;
  /** Answers by the sheet's own column letters: "C" holds "runoff EC". */
  readonly columns: ReadonlyMap<string, LogQuantity>;
  readonly answers: Omit<LogAnswers, "columns">;
}

const usage =
  "usage: npm run timeline -- FILE.xlsx|FILE.csv ... [--sheet NAME] [--range A1:H60] [--pot NAME] [--medium coir] [--feeder heavy] " +
  '[--sample pour-through] [--band "coir, heavy"|5.5,6.5,1.5,3] [--container 11] [--svg OUT.svg] [--json] [--ppm-scale 500] [--ec-unit uS/cm] [--volume-unit gal] [--temperature-unit F] ' +
  '[--date-order "day first"] [--header-row 3] [--column "C=runoff EC"]';

/** Arguments that ask for nothing that can be done. */
export class TimelineUsage extends Error {
  override readonly name = "TimelineUsage";
  constructor(message: string) {
    super(`${message}; ${usage}`);
  }
}

const text = { type: "string" } as const;
const options = {
  sheet: text, range: text, vessel: text, pot: text, medium: text, feeder: text, sample: text, band: text, container: text, svg: text, json: { type: "boolean" },
  "ppm-scale": text, "ec-unit": text, "volume-unit": text, "temperature-unit": text, "date-order": text, "header-row": text,
  column: { type: "string", multiple: true },
} as const;

/** Reads the command line; paths count from the folder the person stands in. */
export function timelineRequest(args: string[], folder: string): TimelineRequest {
  const { values, positionals } = parsed(args);
  if (positionals.length === 0) throw new TimelineUsage("one file or more is wanted, none is given");
  if (positionals.length > 1 && values.svg !== undefined) throw new TimelineUsage("--svg draws one file");
  return {
    files: positionals.map((given) => path.resolve(folder, given)),
    sheet: values.sheet,
    range: values.range,
    vessel: values.pot ?? values.vessel,
    band: asked(() => bandOf(values)),
    container: values.container === undefined ? undefined : asked(() => potVolume(litres(Number(values.container), "--container"))),
    svg: values.svg === undefined ? undefined : path.resolve(folder, values.svg),
    json: values.json ?? false,
    columns: new Map((values.column ?? []).map(columnAnswer)),
    answers: asked(() => answersOf(values)),
  };
}

/** A refusal of the engine, such as an unknown medium, is a fault of the command line here. */
const asked = <Answer>(work: () => Answer): Answer => orElse(TimelineUsage, work);
const parsed = (args: string[]) => asked(() => parseArgs({ args, options, allowPositionals: true }));

type Values = ReturnType<typeof parsed>["values"];

/** Four numbers are the grower's own limits; otherwise the band is named, in one text or option by option. */
function bandOf({ medium, feeder, sample, band }: Values): Band | undefined {
  const of = {
    medium: medium === undefined ? undefined : mediumNamed(medium),
    feeder: feeder === undefined ? undefined : feederNamed(feeder),
    sample: sample === undefined ? undefined : sampleNamed(sample),
  };
  if (band !== undefined && /^[\d.,;\s]+$/.test(band)) {
    const [phLow = NaN, phHigh = NaN, ecLow = NaN, ecHigh = NaN] = band.split(/[,;]/).map(Number);
    return ownBand(ph(phLow, "pH low"), ph(phHigh, "pH high"), ec25(ecLow, "EC low"), ec25(ecHigh, "EC high"), of);
  }
  if (band !== undefined) {
    const named = bandNamed(band);
    return named.medium === undefined ? named : bandFor(of.medium ?? named.medium, of.feeder ?? named.feeder, of.sample ?? named.sample);
  }
  return of.medium === undefined ? undefined : bandFor(of.medium, of.feeder, of.sample);
}

function answersOf(values: Values): TimelineRequest["answers"] {
  const headerRow = values["header-row"];
  return {
    ...(values["ppm-scale"] === undefined ? {} : { ppmScale: ppmScaleNamed(values["ppm-scale"]) }),
    ...chosen("ecUnit", values["ec-unit"], ["mS/cm", "uS/cm", "dS/m", "mS/m", "S/m", "ppm 500", "ppm 640", "ppm 700"]),
    ...chosen("volumeUnit", values["volume-unit"], ["L", "mL", "gal", "qt", "fl oz"]),
    ...chosen("temperatureUnit", values["temperature-unit"], ["C", "F"]),
    ...chosen("dateOrder", values["date-order"], ["day first", "month first"]),
    ...(headerRow === undefined ? {} : { headerRow: headerRow === "none" ? -1 : wholeNumber(headerRow) - 1 }),
  };
}

function chosen<Name extends string, const Value extends string>(name: Name, given: string | undefined, known: readonly Value[]): { [K in Name]?: Value } {
  if (given === undefined) return {};
  const found = known.find((each) => each.toLowerCase() === given.trim().toLowerCase());
  if (found === undefined) throw new TimelineUsage(`"${given}" is not known; choose ${known.join(", ")}`);
  return { [name]: found } as { [K in Name]?: Value };
}

function wholeNumber(given: string): number {
  if (/^[1-9]\d*$/.test(given)) return Number(given);
  throw new TimelineUsage(`--header-row is a row of the sheet such as 3, or none, not ${given}`);
}

function columnAnswer(given: string): [letters: string, quantity: LogQuantity] {
  const [, letters, words] = /^\s*([A-Za-z]{1,3})\s*=\s*(.+?)\s*$/.exec(given) ?? [];
  const quantity = logQuantities.find((each) => each.toLowerCase() === words?.toLowerCase());
  if (letters !== undefined && quantity !== undefined) return [letters.toUpperCase(), quantity];
  throw new TimelineUsage(`--column is a letter and what the column holds, as "C=runoff EC"; one of ${logQuantities.join(", ")}`);
}
