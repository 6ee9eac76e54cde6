import { describe, expect, it } from "vitest";
import { ecBands, phBands } from "../../src/bands/band-table";
import { feeders, media } from "../../src/bands/media";
import { filesUnder } from "../rules/project-files";

const [page] = filesUnder("docs", /sources\.md$/);
const section = page?.text.split(/^### The band table$/m)[1]?.split(/^## /m)[0] ?? "";
/** Its rows without the headings: the first six are pH, the others EC. */
const rows = section.split("\n").filter((line) => line.startsWith("| ") && !line.startsWith("| medium |"));
const said = ({ low, high }: { readonly low: number; readonly high: number }): string => `${low} to ${high}`;

describe("the band table in docs/sources.md is the one in src/bands", () => {
  it("has every medium twice, and no other row", () => {
    expect(rows.map((row) => row.split(" | ")[0]?.slice(2))).toEqual([...media, ...media]);
  });

  it.each(media.map((medium, at) => [medium, rows[at]] as const))("%s: pH and its source", (medium, row) => {
    const limits = phBands[medium];
    expect(row).toBe(`| ${medium} | ${said(limits)} | ${limits.source} |`);
  });

  it.each(media.map((medium, at) => [medium, rows[at + media.length]] as const))("%s: EC for light, medium and heavy feeders, each with its source", (medium, row) => {
    const cells = feeders.map((feeder) => `${said(ecBands[medium][feeder])}, ${ecBands[medium][feeder].source}`);
    expect(row).toBe(`| ${medium} | ${cells.join(" | ")} |`);
  });
});
