import { describe, expect, it } from "vitest";
import { blankDeliveries, type BlankDelivery, type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { type Outcome, type SoundArgument, soundCalls } from "./sound-calls";

const { host, metadata } = loadBundle();
const deliveries = Object.keys(blankDeliveries) as BlankDelivery[];

/** One argument of one function, and the call around it. */
interface Place {
  readonly id: string;
  readonly at: number;
  readonly argument: SoundArgument;
  readonly args: readonly SoundArgument[];
}

const places: readonly (readonly [called: string, place: Place])[] = metadata.functions.flatMap(({ id, parameters }) => {
  const args = soundCalls[id] ?? [];
  return args.map((argument, at) => [`${id}, ${parameters[at]?.name ?? "?"}`, { id, at, argument, args }] as const);
});
const of = (test: (place: Place) => boolean): typeof places => places.filter(([, place]) => test(place));

const matrixOf = ({ good }: SoundArgument): Matrix => (Array.isArray(good) ? good.map((cell: CellValue) => [cell]) : [[good as CellValue]]);
const stretched = ({ good }: SoundArgument, rows: number, columns = 1): Matrix => {
  const cell = (Array.isArray(good) ? good[0] : good) as CellValue;
  return Array.from({ length: rows }, () => new Array<CellValue>(columns).fill(cell));
};

/** The answer to the call with other cells in this place. */
function answer({ id, args }: Pick<Place, "id" | "args">, others: Readonly<Record<number, Matrix>> = {}, blank: BlankDelivery = "empty"): CellValue {
  return host.call(id, args.map((argument, at) => others[at] ?? matrixOf(argument)), blank)[0]?.[0];
}

/** The answer with a fault in this place's only cell, or in the last of its series. */
function faulty(place: Place, cell: CellValue): CellValue {
  const fault = matrixOf(place.argument).map((row, at, rows) => (at === rows.length - 1 ? [cell] : row));
  return answer(place, { [place.at]: fault });
}

const blanked = (place: Place, delivery: BlankDelivery): CellValue =>
  answer(place, { [place.at]: matrixOf(place.argument).map(() => [undefined]) }, delivery);

/** What an answer is, in the words of the table. */
function outcomeOf(cell: CellValue, expected: Outcome): Outcome | { readonly fault: string } {
  if (cell === "") return "blank";
  if (typeof cell !== "object") return typeof expected === "object" ? { says: String(cell) } : "answers";
  const hasReason = /^#(VALUE!|N\/A)$/.test(cell.error) && (cell.reason ?? "").length > 20;
  return hasReason ? "refused" : { fault: `${cell.error} without a reason` };
}
const reasonOf = (cell: CellValue): string => (typeof cell === "object" ? (cell.reason ?? "") : `no error but ${String(cell)}`);

describe("the table of sound calls", () => {
  it("has a row for every worksheet function, with all its arguments", () => {
    const wanted = metadata.functions.map(({ id, parameters }) => [id, parameters.length] as const);
    expect(Object.entries(soundCalls).map(([id, args]) => [id, args.length]).sort()).toEqual(wanted.map((each) => [...each]).sort());
  });

  it.each(Object.entries(soundCalls))("%s answers its sound call", (id, args) => {
    expect(outcomeOf(answer({ id, args }), "answers")).toBe("answers");
  });

  it.each(metadata.functions)("$id answers with every optional argument left out", ({ id, parameters }) => {
    const required = (soundCalls[id] ?? []).filter((_, at) => parameters[at]?.optional !== true);
    expect(outcomeOf(host.call(id, required.map(matrixOf))[0]?.[0], "answers")).toBe("answers");
  });
});

describe("a fault in one argument", () => {
  it.each(places)("%s: a blank delivered as 0, null and \"\"", (_, place) => {
    const { blank } = place.argument;
    expect(deliveries.map((delivery, at) => outcomeOf(blanked(place, delivery), blank[at] ?? "blank"))).toEqual([...blank]);
  });

  it.each(of(({ argument }) => argument.wants === "number"))("%s: the text \"five\" is refused and repeated", (_, place) => {
    expect(reasonOf(faulty(place, "five"))).toContain('"five" is not a number');
  });

  it.each(of(({ argument }) => argument.wants === "word"))("%s: the unknown word \"xyz\" is refused with the known ones", (_, place) => {
    expect(reasonOf(faulty(place, "xyz"))).toMatch(/choose .+,.+,/);
  });

  it.each(of(({ argument }) => argument.wants === "flag"))("%s: \"perhaps\" is refused, TRUE or FALSE asked for", (_, place) => {
    expect(reasonOf(faulty(place, "perhaps"))).toContain("choose TRUE or FALSE");
  });

  it.each(places)("%s: #REF! and #N/A are handed on", (_, place) => {
    expect(reasonOf(faulty(place, { error: "#REF!" }))).toContain("#REF!");
    expect(faulty(place, { error: "#N/A" })).toMatchObject({ error: "#N/A" });
  });

  it.each(places)("%s: -7 and 1E+300", (_, place) => {
    const { negative, huge } = place.argument;
    expect([outcomeOf(faulty(place, -7), negative), outcomeOf(faulty(place, 1e300), huge)]).toEqual([negative, huge]);
  });
});

describe("shapes that do not fit", () => {
  const pairs = of(({ argument, args }) => argument.takes === "cells" && args.filter(({ takes }) => takes === "cells").length > 1);
  it.each(pairs)("%s: 2 x 1 beside 3 x 1 is refused with both shapes", (_, place) => {
    const { at, args, argument } = place;
    const other = args.findIndex(({ takes }, index) => takes === "cells" && index !== at);
    const said = reasonOf(answer(place, { [at]: stretched(argument, 2), [other]: stretched(args[other] ?? argument, 3) }));
    expect(said).toContain("2 x 1");
    expect(said).toContain("3 x 1");
  });

  it.each(of(({ argument }) => argument.takes === "one" || argument.takes === "flag"))("%s: two cells are refused, one asked for", (_, place) => {
    expect(reasonOf(answer(place, { [place.at]: stretched(place.argument, 2) }))).toContain("it must be one cell");
  });

  it.each(of(({ argument }) => argument.takes === "series"))("%s: a square is refused, a column or row asked for", (_, place) => {
    expect(reasonOf(answer(place, { [place.at]: stretched(place.argument, 2, 2) }))).toContain("one column or one row");
  });

  const besides = of(({ argument, args }) => argument.takes === "series" && args.filter(({ takes }) => takes === "series").length > 1);
  it.each(besides)("%s: one reading too many is refused with both counts", (_, place) => {
    const { length } = matrixOf(place.argument);
    const said = reasonOf(answer(place, { [place.at]: stretched(place.argument, length + 1) }));
    expect(said).toContain(String(length));
    expect(said).toContain(String(length + 1));
  });

  it.each(of(({ argument }) => argument.takes === "band"))("%s: three cells are refused, a text or four asked for; an unknown feeder with the known ones", (_, place) => {
    expect(reasonOf(answer(place, { [place.at]: [[5.5, 6.5, 2]] }))).toContain("one text, or four cells");
    expect(reasonOf(faulty(place, "coir, xyz"))).toContain("choose light, medium, heavy");
  });
});
