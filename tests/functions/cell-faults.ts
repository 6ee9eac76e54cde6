import { type CellValue, type Matrix } from "../../workbench/host/functions-host";

/** A call that answers, argument by argument; which of them a fault is then put into. */
export interface SoundCall {
  readonly id: string;
  readonly args: readonly CellValue[];
  /** How many of the arguments, from the first, are required. */
  readonly required: number;
  /** Arguments that are words: text in them is an unknown word, not a missing number. */
  readonly words?: readonly number[];
  /** Arguments of which a blank is refused, or stands for a value: left out of the law of blanks, tested one by one. */
  readonly ownBlanks?: readonly number[];
}

export const soundCalls: readonly SoundCall[] = [
  { id: "ECAT25", args: [1.305, 21, 1.91], required: 2 },
  { id: "ECATTEMP", args: [1.413, 21, 1.91], required: 2 },
  { id: "ECUNIT", args: [1413, "uS/cm", "mS/cm"], required: 3, words: [1, 2] },
  { id: "PPM", args: [1.15, 640], required: 2, words: [1], ownBlanks: [1] },
  { id: "ECFROMPPM", args: [1000, 500], required: 2, words: [1], ownBlanks: [1] },
  { id: "PPMRESCALE", args: [1000, 500, 700], required: 3, words: [1, 2], ownBlanks: [1, 2] },
  { id: "PHBUFFER", args: [7, 15], required: 2, words: [0] },
  { id: "PHPROBE", args: [7, -15, 4.01, 160, 25], required: 5, words: [0, 2] },
  { id: "ECMETER", args: [1.37, 1.413, 25], required: 3 },
  { id: "CALDUE", args: [45_000, 14, 45_010], required: 3 },
  { id: "DILUTION", args: [10, 3, 1.8, 0.3], required: 4 },
  { id: "SWAPOUT", args: [10, 3, 1.8, 0.6], required: 4 },
  { id: "STOCKDOSE", args: [20, 1.6, 0.4, 0.3], required: 4 },
  { id: "BLENDEC", args: [10, 1.6], required: 2, ownBlanks: [0, 1] },
  { id: "BLENDSHARE", args: [2.4, 0.4, 1.4], required: 3 },
  { id: "LABELPPM", args: [1, 20, "P2O5"], required: 3, words: [2] },
  { id: "FEEDGRAMS", args: [100, 200, 20, "N"], required: 4, words: [3] },
  { id: "CATIONS", args: [200, 100, 50], required: 3 },
  { id: "RECOVERYFEED", args: [2, 0.4, 3, 0.5, 7], required: 3, ownBlanks: [2] },
  { id: "VPD", args: [25, 60, 23], required: 3 },
  { id: "DEWPOINT", args: [25, 60], required: 2 },
  { id: "DLI", args: [400, 12], required: 2 },
];

/** The call as ranges of one cell, with one argument exchanged. */
export const withCell = ({ args }: SoundCall, at: number, cell: CellValue): Matrix[] =>
  args.map((arg, index) => [[index === at ? cell : arg]]);

/** Every required argument of every call, less those left out. */
export const places = (leftOut: (call: SoundCall) => readonly number[] = () => []): (readonly [id: string, at: number, call: SoundCall])[] =>
  soundCalls.flatMap((call) =>
    Array.from({ length: call.required }, (_, at) => [call.id, at, call] as const).filter(([, at]) => !leftOut(call).includes(at)),
  );
