import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

/** What a column over figures of 1.6 is read as, and in which unit. */
function readAs(header: string, figure = 1.6): string {
  const { columns } = readLog({ cells: [["Date", header, "Runoff pH"], [45_778, figure, 6], [45_779, figure, 6.1]] });
  return `${columns[1]?.quantity ?? "nothing"} ${columns[1]?.unit ?? ""}`;
}

// A wish that stands beside a column's name, as growers write it. Common practice, no source.
describe("the target over a column", () => {
  it.each([
    "target", "targets", "goal", "aim", "max", "maximum", "min", "minimum", "limit", "limits", "set", "setpoint", "desired", "want", "wanted",
    "ideal", "opt", "optimum", "optimal", "range", "band", "should be", "under", "over", "below", "above", "up to", "soll", "Ziel", "Grenze",
    "Grenzwert", "objetivo", "meta", "consigne", "cible", "doel", "streef", "obiettivo", "cel",
  ])("EC in (%s 1.6) is the EC in", (wish) => {
    expect(readAs(`EC in (${wish} 1.6)`)).toBe("input EC mS/cm");
  });

  it.each([
    "EC in, target 1.6", "EC in (1.4-1.8)", "EC in (target: 1.4 to 1.8)", "EC in (goal 1,6)", "EC in [<2]", "EC in (max. 2)", "EC in (soll 1,4 bis 1,8)",
    "EC in (aim = 1.6)",
  ])("%s is the EC in", (header) => {
    expect(readAs(header)).toBe("input EC mS/cm");
  });

  it("may hold the column's unit, which stays", () => {
    expect(readAs("EC in (goal 1800 uS/cm)", 1800)).toBe("input EC uS/cm");
  });

  it("without a figure makes the column one of targets, which is not read", () => {
    expect(readAs("EC in target")).toBe("other ");
  });
});
