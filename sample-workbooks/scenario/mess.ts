import { type Entry, sheetDay } from "./diary";

/** A cell as typed in a hurry. */
export type Scribble = string | number | undefined;

/** The columns of the messy log, in order: ppm on the 500 scale, US gallons, degrees Fahrenheit. */
export const messyHeaders = ["date", "time", "plant", "ppm in", "pH in", "ppm out", "pH out", "in", "out", "temp", "comments"] as const;
export const messyUnits = ["", "", "", "(500)", "", "(500)", "", "gal", "gal", "F", ""] as const;

/** What the grower's ppm pen multiplies by, and how many litres and degrees stand behind a gallon and a degree F. */
const ppmPerEc = 500;
const litresPerGallon = 3.785411784;
const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;

type Column = (typeof messyHeaders)[number];

/** The faults of this log: the row of the tidy log, the column, and what was typed instead. */
const scribbles: readonly (readonly [row: number, column: Column, typed: Scribble])[] = [
  [3, "ppm out", "~700"],
  [5, "ppm out", ">1500"],
  [7, "pH out", "5,8"],
  [9, "ppm in", "1000 ppm"],
  [10, "pH out", 0.04],
  [11, "ppm out", 4],
  [14, "temp", "n/a"],
  [17, "ppm out", "-"],
  [18, "ppm in", 2.4],
  [19, "pH in", "NA"],
  [22, "pH out", 212],
  [25, "out", undefined],
  [26, "ppm out", "2900 / 3010"],
  [29, "temp", 21],
  [30, "pH out", 71],
  [33, "ppm out", "?"],
  [37, "in", "1 gal"],
  [38, "ppm out", undefined],
  [41, "date", "1/25/26"],
  [44, "date", "27/01/2026"],
  [46, "date", 20260127],
  [49, "date", "Jan 29"],
  [51, "ppm out", "NaN"],
];

/** How the names of the pots drift over the weeks. */
const spellings: Readonly<Record<string, readonly string[]>> = {
  "Tomato 1": ["Tomato 1", "tomato 1", "Tom 1", "T1"],
  "Pepper 3": ["Pepper 3", "pepper 3", "Pepper3", "P-03"],
  Basil: ["Basil", "basil", "Basil ", "BASIL"],
  "Strawberry 2": ["Strawberry 2", "strawb. 2", "Strawberry 2", "S2"],
};

const times: readonly Scribble[] = [0.3958333333333333, 930, "9:40", "9.45 am", 1530];

const rounded = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(2));
const scaled = (value: number | undefined, factor: number, step: number): number | undefined => (value === undefined ? undefined : rounded(value * factor, step));

/** The log as typed: other units, drifting names, faults, one day twice, two rows swapped. */
export function messyRows(entries: readonly Entry[]): readonly (readonly Scribble[])[] {
  const typed = entries.map((entry, row) => messyHeaders.map((column) => scribbled(row, column) ?? written(entry, row)[column]));
  const twice = typed.slice(12, 16);
  const [early = [], late = []] = typed.slice(20, 22);
  return [...typed.slice(0, 16), ...twice, ...typed.slice(16, 20), late, early, ...typed.slice(22)];
}

function scribbled(row: number, column: Column): Scribble {
  const found = scribbles.find(([atRow, atColumn]) => atRow === row && atColumn === column);
  return found === undefined ? undefined : (found[2] ?? "");
}

function written(entry: Entry, row: number): Readonly<Record<Column, Scribble>> {
  const names = spellings[entry.vessel] ?? [entry.vessel];
  return {
    date: sheetDay(entry),
    time: times[Math.floor(row / 4) % times.length],
    plant: names[Math.floor(row / 16) % names.length],
    "ppm in": scaled(entry.feedEc, ppmPerEc, 10),
    "pH in": entry.feedPh,
    "ppm out": scaled(entry.runoffEc, ppmPerEc, 10),
    "pH out": entry.runoffPh,
    in: scaled(entry.feedLitres, 1 / litresPerGallon, 0.05),
    out: scaled(entry.runoffLitres, 1 / litresPerGallon, 0.01),
    temp: entry.celsius === undefined ? undefined : Math.round(fahrenheit(entry.celsius)),
    comments: entry.note,
  };
}
