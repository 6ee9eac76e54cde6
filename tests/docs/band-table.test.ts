import { describe, expect, it } from "vitest";
import { type BandLimits, feeders, media, mediaTable, samples } from "../../src/index";
import { filesUnder } from "../rules/project-files";

const [page] = filesUnder("docs", /sources\.md$/);
const section = page?.text.split(/^### The band table$/m)[1]?.split(/^## /m)[0] ?? "";
/** Its rows without the headings: pH of every medium first, then EC by medium and sample. */
const rows = section.split("\n").filter((line) => line.startsWith("| ") && !line.startsWith("| medium |"));
const said = ({ low, high }: BandLimits): string => `${low} to ${high}`;

const phRows = media.map((medium) => {
  const { ph } = mediaTable[medium];
  return `| ${medium} | ${said(ph)} | ${ph.aim} | ${ph.source} |`;
});
const ecRows = media.flatMap((medium) =>
  samples.flatMap((sample) => {
    const limits = (mediaTable[medium].ec as Partial<Record<string, Record<string, BandLimits>>>)[sample];
    if (limits === undefined) return [];
    const cells = feeders.map((feeder) => limits[feeder]);
    const sources = [...new Set(cells.map((each) => each?.source))].join("; ");
    return [`| ${medium} | ${sample} | ${cells.map((each) => (each === undefined ? "" : said(each))).join(" | ")} | ${sources} |`];
  }),
);

describe("the band table in docs/sources.md is the one in src/bands", () => {
  it.each([...phRows, ...ecRows].map((row, at) => [row, rows[at]] as const))("%s", (row, printed) => {
    expect(printed).toBe(row);
  });

  it("has no other row", () => {
    expect(rows).toHaveLength(phRows.length + ecRows.length);
  });
});
