import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { type Act, type Cause, type Phase, type Urgency, type VerdictWord } from "../../src/index";

/** What an expert would say at a pot, as far as it must hold; several words are all acceptable. */
export interface Expected {
  readonly verdict: readonly VerdictWord[];
  readonly urgency: readonly [least: Urgency, most: Urgency];
  readonly phase?: Phase;
  /** Causes that must be named, and such as must not. */
  readonly causes?: readonly Cause[];
  readonly notCauses?: readonly Cause[];
  /** What the first step may be. */
  readonly first?: readonly Act[];
  readonly must?: readonly Act[];
  /** Of each list at least one. */
  readonly anyOf?: readonly (readonly Act[])[];
  readonly mustNot: readonly Act[];
  /** Patterns that the course or the reasons must hold, whatever the case of letters. */
  readonly tells?: readonly string[];
  /** And such as neither may hold. */
  readonly notTells?: readonly string[];
}

/** A pot, or a bench of pots, as its grower logged it, and what must be said of it. */
export interface PotCase {
  readonly title: string;
  /** As typed for a band: medium, feeder, sample; `limits` instead where the grower has own ones. */
  readonly band?: string;
  readonly limits?: readonly [phLow: number, phHigh: number, ecLow: number, ecHigh: number];
  /** A text table as a grower types it, a row a line. */
  readonly log: readonly string[];
  /** The pot of a bench that comes first, and the order of all where it matters. */
  readonly worst?: string;
  readonly order?: readonly string[];
  readonly say: Expected;
  readonly why: string;
  /** Where it is from and how far that was read, or that it is common practice. */
  readonly source: string;
  /** Why the rules do not say so yet; none may stay without a reason. */
  readonly pending?: string;
}

export interface CaseTheme {
  readonly file: string;
  readonly about: string;
  readonly cases: readonly PotCase[];
}

/** The case book: written by what an adviser would say, before the rules, and never from the program's own answers. */
export function caseBook(folder: string = import.meta.dirname): CaseTheme[] {
  return readdirSync(folder)
    .filter((name) => /^\d\d-.+\.json$/.test(name))
    .sort()
    .map((name) => ({
      ...(JSON.parse(readFileSync(path.join(folder, name), "utf8")) as Omit<CaseTheme, "file">),
      file: path.basename(name, ".json"),
    }));
}
