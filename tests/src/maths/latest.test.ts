import { describe, expect, it } from "vitest";
import { lastPlace, latest } from "../../../src/maths/latest";

const rows = [{ ec: 2 }, {}, { ec: 0 }, { ec: 4 }, {}];
const ecOf = ({ ec }: { readonly ec?: number }): number | undefined => ec;

describe("latest(rows, count, valueOf)", () => {
  it("gives the last that were told, the oldest of them first, and passes rows that tell nothing", () => {
    expect(latest(rows, 2, ecOf)).toEqual([0, 4]);
  });

  it("gives all where there are fewer, and none of no rows", () => {
    expect(latest(rows, 9, ecOf)).toEqual([2, 0, 4]);
    expect(latest([], 2, ecOf)).toEqual([]);
  });
});

describe("lastPlace(rows, isSo)", () => {
  it("counts from 0, and is -1 where it is so of none", () => {
    expect(lastPlace(rows, ({ ec }) => ec !== undefined)).toBe(3);
    expect(lastPlace(rows, ({ ec }) => ec === 7)).toBe(-1);
  });
});
