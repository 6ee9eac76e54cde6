import { type Band, type LogQuantity } from "../../src/index";
import { plainEc, plainLeaching, plainRatio, plainSaltKept, plainShift, plainUptake, plainVpd } from "./plain-columns";
import { plainFlags } from "./plain-flags";
import { type PlainReading, type PlainRow } from "./plain-reading";

/** Formulas that call the functions, or formulas of the sheet that compute the same without them. */
export type FormulaKind = "functions" | "plain";

/** What the person says about the log as a whole, for its formulas. */
export interface FormulaOptions {
  /** The band as a formula takes it: `"coir, medium"` or `{5.6,6.4,1.5,3}`; `undefined` while none is chosen. */
  readonly band: string | undefined;
  /** The same band's limits, for plain formulas. */
  readonly limits?: Band | undefined;
  /** The meter shows EC as it is at the solution's temperature, so that every EC goes through ECAT25 first. */
  readonly uncompensated: boolean;
  /** Formulas that call the functions unless plain ones are asked for. */
  readonly kind?: FormulaKind;
}

/** A column that can be put beside a log. */
export interface ComputedColumn {
  /** The words in its header cell; the log reader takes none of them for a reading, but for the two of EC at 25 C. */
  readonly header: string;
  /** What it tells, for the person who ticks it. */
  readonly about: string;
  readonly numberFormat: string;
  /** Every quantity of which a column has to be there. */
  readonly needs: readonly LogQuantity[];
  readonly formula: (row: RowText) => string;
  /** The same as a formula of the sheet; `undefined` where the log lacks a column for it. */
  readonly plain: (row: PlainRow<LogQuantity>, limits: Band | undefined) => string | undefined;
}

/** The readings of one row as text of a formula, in the engine's units; `""` where the log has no such column. */
export type RowText = (quantity: LogQuantity | "band") => string;

const call = (name: string, ...quantities: readonly (LogQuantity | "band")[]) => (row: RowText): string =>
  `RUNOFF.${name}(${quantities.map(row).join(",")})`;

/** As many readings as any column takes. */
type Readings = [PlainReading, PlainReading, PlainReading, PlainReading];

/** A plain formula from readings that have to be there. */
const plain = (formula: (...readings: Readings) => string, ...names: readonly LogQuantity[]) =>
  (row: PlainRow<LogQuantity>): string | undefined => {
    const readings = names.flatMap((name) => row(name) ?? []);
    return readings.length === names.length ? formula(...readings as Readings) : undefined;
  };

/**
 * Readings of a meter that does not compensate, brought to 25 C; the log reader takes these columns for the EC ones.
 */
export const compensatedColumns = {
  "input EC": {
    header: "Input EC at 25 C (mS/cm)", about: "feed EC, brought to 25 C", numberFormat: "0.00",
    needs: ["input EC", "solution temperature"], formula: (row: RowText): string => row("input EC"),
    plain: plain(plainEc, "input EC"),
  },
  "runoff EC": {
    header: "Runoff EC at 25 C (mS/cm)", about: "runoff EC, brought to 25 C", numberFormat: "0.00",
    needs: ["runoff EC", "solution temperature"], formula: (row: RowText): string => row("runoff EC"),
    plain: plain(plainEc, "runoff EC"),
  },
} as const satisfies Record<string, ComputedColumn>;

export const flagHeader = "Row flags";

export const computedColumns: readonly ComputedColumn[] = [
  {
    header: "Salt ratio",
    about: "runoff EC over feed EC",
    numberFormat: "0.00",
    needs: ["runoff EC", "input EC"],
    formula: call("SALTRATIO", "runoff EC", "input EC"),
    plain: plain(plainRatio, "runoff EC", "input EC"),
  },
  {
    header: "pH shift",
    about: "runoff pH less feed pH",
    numberFormat: "+0.00;-0.00;0.00",
    needs: ["runoff pH", "input pH"],
    formula: call("PHSHIFT", "runoff pH", "input pH"),
    plain: plain(plainShift, "runoff pH", "input pH"),
  },
  {
    header: "Leaching fraction",
    about: "share of what was poured that drained",
    numberFormat: "0%",
    needs: ["runoff volume", "input volume"],
    formula: call("LEACHFRACTION", "runoff volume", "input volume"),
    plain: plain(plainLeaching, "runoff volume", "input volume"),
  },
  {
    header: "Salt kept (g)",
    about: "salt that this watering left in the pot",
    numberFormat: "0.00",
    needs: ["input EC", "input volume", "runoff EC", "runoff volume"],
    formula: call("SALTKEPT", "input EC", "input volume", "runoff EC", "runoff volume"),
    plain: plain(plainSaltKept, "input EC", "input volume", "runoff EC", "runoff volume"),
  },
  {
    header: "Taken up per watering (L)",
    about: "poured less drained: the plant's and the air's share",
    numberFormat: "0.00",
    needs: ["input volume", "runoff volume"],
    formula: call("UPTAKE", "input volume", "runoff volume"),
    plain: plain(plainUptake, "input volume", "runoff volume"),
  },
  {
    header: "VPD (kPa)",
    about: "how hard the air pulls water out of the leaf",
    numberFormat: "0.00",
    needs: ["air temperature", "humidity"],
    formula: call("VPD", "air temperature", "humidity"),
    plain: plain(plainVpd, "air temperature", "humidity"),
  },
  {
    header: flagHeader,
    about: "what of the row lies outside the limits",
    numberFormat: "General",
    needs: [],
    formula: call("ROWFLAG", "input pH", "input EC", "runoff pH", "runoff EC", "band"),
    plain: (row, limits) => (limits === undefined ? undefined : plainFlags(row, limits)),
  },
];
