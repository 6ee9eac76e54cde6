import { type CellValue } from "../../workbench/host/functions-host";

/** What a fault may come to: a blank, a refusal with its reason, an answer all the same, or exactly these words. */
export type Outcome = "blank" | "refused" | "answers" | { readonly says: string };

/** One argument of a call that answers, and what each fault in it comes to. */
export interface SoundArgument {
  /** One value, or a series of them; a fault then goes into the last. */
  readonly good: CellValue | readonly CellValue[];
  /** How far it stretches: over a range of cells, one cell only, a series, or a band (a text, or four cells). */
  readonly takes: "cells" | "one" | "series" | "band" | "flag";
  /** Delivered as 0, as null and as "". A series is blank from end to end. */
  readonly blank: readonly [zero: Outcome, nothing: Outcome, empty: Outcome];
  /** The word "xyz", where words are known: refused with the list. A text where a number belongs repeats it. Any text will do for a note. */
  readonly wants: "number" | "word" | "flag" | "text";
  /** -7 and 1E+300. */
  readonly negative: Outcome;
  readonly huge: Outcome;
}

type Changes = Partial<SoundArgument>;

const alike = (outcome: Outcome): SoundArgument["blank"] => [outcome, outcome, outcome];
/** Where a desktop host hands a blank over as 0, and 0 is a value. */
const zeroCounts: Changes = { blank: ["answers", "blank", "blank"] };
/** Left blank its default stands, and 0 is refused as a value. */
const zeroRefused: Changes = { blank: ["refused", "answers", "answers"] };

const base = { takes: "cells", wants: "number", blank: alike("blank"), negative: "refused", huge: "refused" } as const;
const cells = (good: CellValue, changes: Changes = {}): SoundArgument => ({ ...base, good, ...changes });
const one = (good: CellValue, changes: Changes = {}): SoundArgument => ({ ...base, takes: "one", good, ...changes });
const word = (good: CellValue, changes: Changes = {}): SoundArgument => ({ ...base, wants: "word", good, ...changes });
const oneWord = (good: CellValue, changes: Changes = {}): SoundArgument => word(good, { takes: "one", ...changes });
const series = (good: readonly CellValue[], changes: Changes = {}): SoundArgument => ({ ...base, takes: "series", good, ...changes });
const anything: Changes = { blank: alike("answers"), negative: "answers", huge: "answers" };
const texts = (good: readonly CellValue[], changes: Changes = {}): SoundArgument => series(good, { ...anything, wants: "text", ...changes });
const volumes = series([1, 1], { blank: alike("answers") });
const readings = (good: readonly CellValue[]): SoundArgument => series(good, anything);
const otherwise: Changes = { blank: alike("answers") };
const band: SoundArgument = { ...base, takes: "band", wants: "word", good: "coir" };
const flag: SoundArgument = { ...base, ...otherwise, takes: "flag", wants: "flag", good: true, negative: "answers", huge: "answers" };
/** A ppm without its scale means nothing. */
const scale = word(640, { blank: alike("refused") });

const judged = (says: string): Changes => ({ blank: alike("answers"), negative: { says }, huge: { says } });
const doubted = judged("check the meter");
const dates = series([46_023, 46_024, 46_025, 46_026, 46_027]);
const anyNumber: Changes = { negative: "answers" };
/** A 0 beside another mV is asked about. */
const mv: Changes = { negative: "answers", blank: ["refused", "blank", "blank"] };
const climbing = series([2, 2.2, 2.4, 2.6, 2.8], anyNumber);

/** Every worksheet function with arguments that it answers, in order. */
export const soundCalls: Readonly<Record<string, readonly SoundArgument[]>> = {
  READING: [cells(1.8, { negative: "refused" }), word("mS/cm")],
  ECAT25: [cells(1.305), cells(21), cells(1.91, otherwise)],
  ECATTEMP: [cells(1.413), cells(21), cells(1.91, otherwise)],
  ECUNIT: [cells(1413), word("uS/cm"), word("mS/cm")],
  ALKUNIT: [cells(150, zeroCounts), word("mg/L CaCO3"), word("meq/L")],
  PPM: [cells(1.15), scale],
  ECFROMPPM: [cells(1000), scale],
  PPMRESCALE: [cells(1000), scale, scale],
  PHBUFFER: [word(7), cells(15)],
  PHPROBE: [oneWord(7), one(-15, mv), oneWord(4.01), one(160, mv), one(25), oneWord("check", otherwise), flag],
  ECMETER: [one(1.37), one(1.413), one(25), { ...flag, ...zeroRefused }, flag],
  CALDUE: [cells(45_000), cells(14), cells(45_010)],
  SALTRATIO: [cells(2.4), cells(1.6)],
  PHSHIFT: [cells(5.4), cells(5.9)],
  LEACHFRACTION: [cells(0.4, zeroCounts), cells(2)],
  RATIOCEILING: [cells(0.2)],
  SALTKEPT: [cells(2), cells(10), cells(4), cells(2, { blank: ["refused", "blank", "blank"] }), cells(640, otherwise)],
  BANDLIMIT: [band, oneWord("ec high")],
  ROWFLAG: [
    cells(5.9, judged("check reading")), cells(1.6, judged("check reading")),
    cells(6.1, judged("check reading")), cells(2.2, judged("check reading")), band, one(1.5, otherwise),
  ],
  DIAGNOSE: [
    series([5.9, 5.9], doubted), series([2, 2], doubted), series([6, 6.1], doubted), series([2.8, 3], doubted), band, one(0.3, otherwise), flag,
    series([46_023, 46_024], { blank: alike("answers") }), volumes, volumes, texts(["calibrated", "new growth clean"]),
  ],
  WHICHFIRST: [
    texts(["A", "A"], { blank: alike("blank") }), series([46_023, 46_024], { blank: alike("answers") }), readings([5.9, 5.9]), readings([2, 2]),
    readings([6, 6.1]), readings([2.8, 3]), band, volumes, volumes, texts(["calibrated", "new growth clean"]),
  ],
  DRIFT: [dates, climbing],
  // One reading of -7 hides the drift: it is no longer told from chance.
  DRIFTLEFT: [dates, { ...climbing, negative: "blank" }, one(2, { ...anyNumber, ...zeroCounts }), one(3.5)],
  DRIFTALARM: [series([6, 6.02, 5.98, 6.01, 5.99, 6, 6.02], anyNumber), one(5, otherwise), flag],
  FLUSHVOLUME: [cells(10), cells(6), cells(3), cells(0.4, zeroCounts), word("coir"), flag],
  FLUSHPLAN: [one(10), one(6), one(3), one(0.4, zeroCounts), oneWord("coir"), one(0.25, otherwise)],
  FLUSHSTOP: [
    series([6, 6, 6], judged("cannot say")), series([6, 5.2, 4.4], judged("cannot say")), band, series([0, 2, 2], otherwise), one(10, otherwise), flag,
  ],
  FLUSHLEFT: [series([0, 2, 2], otherwise), series([8.4, 4.4, 2.4], judged("cannot say")), one(1.4), one(0.4, zeroCounts), flag],
  LEACHNEED: [cells(1, zeroCounts), cells(2.5)],
  ACIDDOSE: [one(1000), one(150), one(7.5), one(5.8), oneWord("sulfuric"), one(93), flag],
  ALKALIDOSE: [one(1000), one(10), one(5), one(6), oneWord("potassium hydroxide"), flag],
  DILUTION: [cells(10), cells(3), cells(1.8), cells(0.3, zeroCounts)],
  SWAPOUT: [cells(10), cells(3), cells(1.8), cells(0.6, zeroCounts)],
  STOCKDOSE: [cells(20), cells(1.6), cells(0.4, zeroCounts), cells(0.3)],
  BLENDEC: [series([10, 5], { blank: alike("refused") }), series([1.6, 0.4], { blank: ["answers", "refused", "refused"] })],
  BLENDSHARE: [cells(2.4, { blank: ["refused", "blank", "blank"] }), cells(0.4, zeroCounts), cells(1.4)],
  LABELPPM: [cells(1), cells(20), word("P2O5")],
  FEEDGRAMS: [cells(100), cells(200), cells(20), word("N")],
  CATIONS: [one(200), one(100), one(50), flag],
  RECOVERYFEED: [cells(2), cells(0.4, zeroCounts), cells(3, zeroCounts), cells(0.5, zeroRefused), cells(7, zeroRefused)],
  UPTAKE: [cells(2), cells(0.5, zeroCounts), cells(24)],
  WATERING: [cells(1.2), cells(0.2, zeroCounts), cells(3)],
  RECOVERYTREND: [dates, climbing, one(2, { ...anyNumber, ...zeroCounts }), one(3.5), flag],
  VPD: [cells(25), cells(60), cells(23)],
  DEWPOINT: [cells(25), cells(60)],
  DLI: [cells(400), cells(12)],
  LIGHTHOURS: [cells(400), cells(12)],
};
