import { describe, expect, it } from "vitest";
import { readOnce } from "../../../src/cells/read-once";

describe("readOnce(read)", () => {
  it("answers as the reading itself does, however many different texts there are", () => {
    const length = readOnce((text) => text.length);
    const texts = Array.from({ length: 6000 }, (_, at) => "x".repeat(at % 7) + String(at));
    expect([...texts, ...texts].map(length)).toEqual([...texts, ...texts].map((text) => text.length));
  });

  it("reads a text that comes again only once, also where nothing was read", () => {
    const read: string[] = [];
    const nothing = readOnce((text) => { read.push(text); });
    for (const text of ["n/a", "1.8", "n/a", "n/a", "1.8"]) nothing(text);
    expect(read).toEqual(["n/a", "1.8"]);
  });
});
