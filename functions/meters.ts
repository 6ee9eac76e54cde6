import * as engine from "../src/index";
import { type Answer, eachCell, single, table, whole } from "./answers";
import { amount, type Cells, choice, content, flag, one, reading, word } from "./cells";

/**
 * pH of a calibration buffer at its temperature; a buffer is what its label says at 25 C only.
 * @customfunction PHBUFFER
 * @helpurl https://localhost:3000/docs/functions.html#phbuffer
 * @param buffer pH on the label: 4.01, 6.86, 7.00, 7.01, 9.18 or 10.01, cell or range
 * @param temp_c C of the buffer, cell or range
 * @returns pH
 * @remarks Refuses an unknown buffer with the list, and a temperature outside 0 to 50 C. Between the table's rows: a straight line.
 * @example =RUNOFF.PHBUFFER(7, 15) -> 7.036
 * @example =RUNOFF.PHBUFFER("10.01", 20) -> 10.062
 * @see [iupac-ph-2002] [technical-buffers]
 */
export function phbuffer(buffer: any[][], temp_c: any[][]): any[][] {
  return eachCell(
    engine.phBuffer,
    choice(buffer, "buffer", engine.bufferNamed),
    reading(temp_c, engine.solutionCelsius, "buffer temperature"),
  );
}

const probeParts: Readonly<Record<string, (line: engine.ProbeLine) => Answer>> = {
  check: (line) => engine.probeCheck(line).answer,
  slope: (line) => line.slopePercent,
  offset: (line) => line.offsetMillivolts,
};

/**
 * Health of a pH probe from its mV in two buffers: good / clean and repeat / usable, watch it / reject; or its slope or offset.
 * @customfunction PHPROBE
 * @helpurl https://localhost:3000/docs/functions.html#phprobe
 * @param buffer_a label of the first buffer: 4.01, 6.86, 7.00, 7.01, 9.18 or 10.01
 * @param mv_a mV shown in it (a true 0 as 0.1)
 * @param buffer_b label of the second buffer, at least 1 pH away
 * @param mv_b mV shown in it (a true 0 as 0.1)
 * @param temp_c C of both buffers
 * @param [part] "check" if left out; "slope" % of a perfect probe; "offset" mV at pH 7
 * @param [explain] TRUE adds slope, offset and their limits in the cell to the right
 * @returns a word, %, or mV
 * @remarks A mV of exactly 0 beside another is asked about, for a blank cell can arrive as 0: enter a true 0 as 0.1. Good: slope 95 to 102 %, offset within 15 mV; rejected: slope below 85 or above 105 %, offset beyond 60 mV. Two mV that look exchanged are refused.
 * @example =RUNOFF.PHPROBE(7, -15, 4.01, 160, 25) -> good
 * @example =RUNOFF.PHPROBE(7, 15, 4.01, 160, 25) -> reject
 * @example =RUNOFF.PHPROBE(7, -15, 4.01, 160, 25, "offset") -> -15
 * @see [probe-acceptance] [electrode-notes] [iupac-ph-2002]
 */
export function phprobe(
  buffer_a: any[][],
  mv_a: any[][],
  buffer_b: any[][],
  mv_b: any[][],
  temp_c: any[][],
  part?: any[][],
  explain?: any[][],
): any[][] {
  return whole(() => {
    const answer = probePart(one(word(part, "part", "check")) ?? "check");
    const [mvA, mvB] = [millivolts(mv_a, "A"), millivolts(mv_b, "B")];
    const [a, b] = [
      bufferReading(buffer_a, trueMillivolts(mvA, mvB, "A"), "A"),
      bufferReading(buffer_b, trueMillivolts(mvB, mvA, "B"), "B"),
    ];
    const celsius = one(reading(temp_c, engine.solutionCelsius, "buffer temperature"));
    const explained = flag(explain, "explain", false);
    if (a === undefined || b === undefined || celsius === undefined) return single(undefined);
    const line = engine.probeLine(a, b, celsius);
    return table([explained ? [answer(line), engine.probeCheck(line).reasons.join("; ")] : [answer(line)]]);
  });
}

const millivolts = (cells: Cells, which: string): engine.Millivolts | undefined =>
  one(amount(cells, engine.millivolts, `mV in buffer ${which}`));

/** A 0 is a blank while the other is blank too; beside a reading it may be either, and is asked about. */
function trueMillivolts(
  mv: engine.Millivolts | undefined,
  other: number | undefined,
  which: string,
): engine.Millivolts | undefined {
  if (mv !== 0) return mv;
  if ((other ?? 0) === 0) return undefined;
  const next = "a cell of exactly 0 can be a blank one: fill it in, and a true 0 as 0.1";
  throw new engine.Refusal("missing", { quantity: `mV in buffer ${which}`, next });
}

function bufferReading(
  buffer: Cells,
  mv: engine.Millivolts | undefined,
  which: string,
): engine.BufferReading | undefined {
  const label = one(word(buffer, `buffer ${which}`));
  return label === undefined || mv === undefined ? undefined : { buffer: engine.bufferNamed(label), millivolts: mv };
}

function probePart(text: string): (line: engine.ProbeLine) => Answer {
  const found = Object.entries(probeParts).find(([name]) => name === text.trim().toLowerCase());
  if (found !== undefined) return found[1];
  throw new engine.Refusal("unknown-choice", {
    quantity: "part",
    given: text,
    allowed: Object.keys(probeParts).join(", "),
  });
}

/**
 * How far an EC meter is off, in % of the standard it stands in; + shows too much, - too little.
 * @customfunction ECMETER
 * @helpurl https://localhost:3000/docs/functions.html#ecmeter
 * @param shown mS/cm on the meter
 * @param standard_ec25 mS/cm at 25 C on the standard's label, such as 1.413
 * @param temp_c C of the standard
 * @param [compensating] TRUE if left out: the meter itself corrects to 25 C
 * @param [explain] TRUE adds what a true meter would show in the cell to the right
 * @returns %
 * @remarks For KCl standards, 0 to 50 C. Within 2 % a meter is trusted (our judgement); one that shows too little makes feeds too strong. Refuses less than half or more than twice the standard: another bottle or unit.
 * @example =RUNOFF.ECMETER(1.37, 1.413, 25) -> -3.04
 * @example =RUNOFF.ECMETER(1.3, 1.413, 20, FALSE) -> 1.77
 * @see [pratt2001]; the 2 % are our judgement
 */
export function ecmeter(
  shown: any[][], standard_ec25: any[][], temp_c: any[][], compensating?: any[][], explain?: any[][],
): any[][] {
  return whole(() => {
    const seen = one(reading(shown, engine.ecAsRead, "EC shown"));
    const standard = one(reading(standard_ec25, engine.ec25, "standard EC"));
    const celsius = one(reading(temp_c, engine.solutionCelsius, "standard's temperature"));
    const corrects = compensates(compensating);
    const explained = flag(explain, "explain", false);
    if (seen === undefined || standard === undefined || celsius === undefined) return single(undefined);
    const { errorPercent, reason } = engine.ecMeter(seen, standard, { celsius, compensating: corrects });
    return explained ? table([[errorPercent, reason]]) : single(errorPercent);
  });
}

/** A number 0 may be a blank cell and may mean FALSE, which differ by 15 % here: it is refused rather than guessed. */
function compensates(cells: Cells | null | undefined): boolean {
  if (content(cells?.[0]?.[0]) !== 0) return flag(cells, "compensating", true);
  throw new engine.Refusal("unknown-choice", { quantity: "compensating", given: 0, allowed: "TRUE or FALSE" });
}

/**
 * Days left until the next calibration; negative means overdue.
 * @customfunction CALDUE
 * @helpurl https://localhost:3000/docs/functions.html#caldue
 * @param last_date sheet date of the last calibration, cell or range
 * @param every_days days between calibrations
 * @param today sheet date, such as a cell that holds TODAY()
 * @returns days
 * @remarks Refuses a last calibration after today, and an interval of more than a year. Give TODAY() a cell of its own rather than writing it into hundreds of formulas.
 * @example =RUNOFF.CALDUE(45000, 14, 45010) -> 4
 * @example =RUNOFF.CALDUE(45000, 14, 45020) -> -6
 * @see common practice
 */
export function caldue(last_date: any[][], every_days: any[][], today: any[][]): any[][] {
  return eachCell(
    engine.calibrationDue,
    reading(last_date, engine.sheetDate, "date of the last calibration"),
    reading(every_days, engine.days, "days between calibrations"),
    reading(today, engine.sheetDate, "today"),
  );
}
