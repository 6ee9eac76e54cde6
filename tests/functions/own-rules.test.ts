import { describe, expect, it } from "vitest";
import { blankDeliveries, type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
const deliveries = Object.keys(blankDeliveries) as (keyof typeof blankDeliveries)[];

interface Failed {
  readonly error: string;
  readonly reason: string;
}
const first = (answer: CellValue[][]): CellValue => answer[0]?.[0];
const failed = (answer: CellValue[][]): Failed => first(answer) as unknown as Failed;

describe("blanks with a rule of their own", () => {
  it.each(deliveries)("PPM, ECFROMPPM and PPMRESCALE refuse a blank scale with the list (delivered as %s)", (blank) => {
    const reasons = [
      host.call("PPM", [[[2]], [[undefined]]], blank),
      host.call("ECFROMPPM", [[[1000]], [[undefined]]], blank),
      host.call("PPMRESCALE", [[[1000]], [[500]], [[undefined]]], blank),
    ].map((answer) => failed(answer).reason);
    expect(reasons).toEqual(Array.from({ length: 3 }, () => expect.stringContaining("ppm scale is missing: a ppm without its scale means nothing; choose 500 (EC x 0.5), 640") as string));
  });

  it("PPM refuses a scale left out, and is blank beside a blank EC all the same", () => {
    expect(failed(host.call("PPM", [[[2]]])).reason).toContain("choose 500");
    expect(first(host.call("PPM", [[[undefined]]]))).toBe("");
  });

  it.each(deliveries)("BLENDEC refuses a part with half its cells blank (an EC that arrives as 0 is pure water), skips an empty one, is blank without parts (delivered as %s)", (blank) => {
    const blend = (litres: CellValue[], ecs: CellValue[]): CellValue[][] => host.call("BLENDEC", [litres.map((cell) => [cell]), ecs.map((cell) => [cell])], blank);
    if (blank === "zero") expect(first(blend([5, 5], [3, undefined]))).toBe(1.5);
    else expect(failed(blend([5, 5], [3, undefined])).reason).toContain("EC of part 2 is missing");
    expect(failed(blend([5, undefined], [3, 0.6])).reason).toContain("volume of part 2 is missing");
    expect(first(blend([5, undefined, 5], [3, undefined, 0.6]))).toBeCloseTo(1.8, 12);
    expect(first(blend([undefined], [undefined]))).toBe("");
  });

  it("RECOVERYFEED: a blank day is blank, or day 0 (the weakest feed) where the host delivers it as 0", () => {
    const args = [[[2]], [[0.4]], [[undefined]]];
    expect(deliveries.map((blank) => first(host.call("RECOVERYFEED", args, blank)))).toEqual([1.2, "", ""]);
  });

  it("RECOVERYFEED: a start share or days to full of 0 is refused, left out they are 0.5 and 7", () => {
    expect(failed(host.call("RECOVERYFEED", [[[2]], [[0.4]], [[1]], [[0]]])).reason).toContain("above 0");
    expect(failed(host.call("RECOVERYFEED", [[[2]], [[0.4]], [[1]], undefined, [[0]]])).reason).toContain("above 0");
    expect(first(host.call("RECOVERYFEED", [[[2]], [[0.4]], [[7]]]))).toBe(2);
  });

  it("ECMETER: a compensating of 0 may be a blank or a FALSE and is refused; null and \"\" are TRUE", () => {
    const args = [[[1.413]], [[1.413]], [[20]], [[undefined]]];
    expect(failed(host.call("ECMETER", args, "zero")).reason).toContain("choose TRUE or FALSE");
    expect([first(host.call("ECMETER", args, "null")), first(host.call("ECMETER", args, "empty"))]).toEqual([0, 0]);
  });
});

describe("shapes", () => {
  it("BLENDEC says both counts when 2 volumes stand beside 3 ECs, and refuses a square", () => {
    expect(failed(host.call("BLENDEC", [[[1], [2]], [[1], [2], [3]]])).reason).toContain("2 volumes beside 3 ECs");
    expect(failed(host.call("BLENDEC", [[[1, 2], [3, 4]], [[1], [2]]])).reason).toContain("one column or one row");
  });

  it("DILUTION: one water EC stretches along a column, a bad row does not spoil its neighbours", () => {
    const answer = host.call("DILUTION", [[[10], [10], [undefined]], [[3], [1.5], [undefined]], [[1.8]], [[0.3]]], "zero");
    expect([first(answer), failed(answer.slice(1)).error, answer[2]?.[0]]).toEqual([8, "#VALUE!", ""]);
  });
});

describe("explain", () => {
  it("ECMETER: 1.37 in 1.413 at 25 C is 3.0 % low, with the reason to the right", () => {
    const [[percent, reason] = []] = host.call("ECMETER", [[[1.37]], [[1.413]], [[25]], [[true]], [[true]]]);
    expect(percent).toBeCloseTo(-3.0432, 3);
    expect(reason).toBe("a true meter would show 1.413 mS/cm (a compensating meter shows its EC at 25 C); -3.0 % off, beyond 2 %: clean, rinse, calibrate and repeat");
  });

  it("ECMETER: 1.413 in a bottle of 12.88, or of 0.5, is asked about; 40 % low is told", () => {
    const shown = (value: number, standard: number): CellValue[][] => host.call("ECMETER", [[[value]], [[standard]], [[25]], undefined, [[true]]]);
    expect(failed(shown(1.413, 12.88)).reason).toContain("expected about 12.880 mS/cm in a standard of 12.88: check the bottle and the unit");
    expect(failed(shown(1.413, 0.5)).reason).toContain("check the bottle and the unit");
    expect(shown(0.85, 1.413)[0]?.[1]).toContain("check that it is this standard and this unit");
  });

  it("PHPROBE: slope and offset with their limits stand to the right", () => {
    const [[answer, reason] = []] = host.call("PHPROBE", [[[7]], [[-15]], [[4.01]], [[160]], [[25]], undefined, [[true]]]);
    expect([answer, reason]).toEqual(["good", expect.stringContaining("slope 98.8 % of Nernst (good 95 to 102, accepted 85 to 105); offset -15 mV")]);
  });

  it("FLUSHVOLUME: a column of pots has a column of reasons beside it, a blank row none", () => {
    const rows = host.call("FLUSHVOLUME", [[[10], [undefined], [10]], [[6]], [[3]], [[0.4]], [["coir"], ["coir"], ["soil"]], [[true]]], "null");
    expect(rows.map(([litres]) => litres)).toEqual([expect.closeTo(7.1245, 4), "", expect.closeTo(6.7135, 4)]);
    expect(rows.map(([, reason]) => typeof reason === "string" ? reason.slice(0, 40) : reason)).toEqual(["7.12 L of the over-flush limit of 19.5 L", "", "6.71 L of the over-flush limit of 7 L: t"]);
  });

  it("CATIONS: the ratios stand to the right", () => {
    const [[answer, reason] = []] = host.call("CATIONS", [[[200]], [[100]], [[50]], [[true]]]);
    expect(answer).toBe("balanced");
    expect(reason).toContain("K/Ca 2.00 (0.75 to 2.5), K/Mg 4.00 (2 to 7), Ca/Mg 2.00 (2 to 5)");
  });

  it("PHPROBE: an unknown part is refused with the list", () => {
    expect(failed(host.call("PHPROBE", [[[7]], [[-15]], [[4.01]], [[160]], [[25]], [["age"]]])).reason).toContain("choose check, slope, offset");
  });
});
