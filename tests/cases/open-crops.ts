import { readFileSync } from "node:fs";
import path from "node:path";

/** A crop of the open data, as its log would be kept. */
export interface OpenCrop {
  readonly name: string;
  readonly keptBy: "growers" | "team";
  readonly band: string;
  /** What of the data is here, and what is not in it. */
  readonly note: string;
  readonly log: readonly string[];
  /** Days on which a build-up has to be named. */
  readonly buildup?: readonly string[];
}

export interface OpenCrops {
  readonly about: string;
  readonly source: string;
  readonly crops: readonly OpenCrop[];
}

/** What professionally run crops really drained: an outside check of bands and judgement. */
export const openCrops = (): OpenCrops =>
  JSON.parse(readFileSync(path.join(import.meta.dirname, "open-crops.json"), "utf8")) as OpenCrops;
