import { describe, expect, it, vi } from "vitest";
import { sampleFiles } from "../../sample-workbooks/index";
import { committed, committedFiles } from "./committed";

const rebuilt = await sampleFiles();

describe("committed sample files", () => {
  it("are exactly the files that `npm run samples` writes", () => {
    expect(committedFiles).toEqual([...rebuilt.keys()].sort((a, b) => committedFiles.indexOf(a) - committedFiles.indexOf(b)));
    expect(rebuilt.size).toBeGreaterThan(0);
  });

  it.each(["Pacific/Kiritimati", "America/St_Johns", "UTC"])("come out the same in the time zone %s", async (zone) => {
    vi.stubEnv("TZ", zone);
    for (const [name, bytes] of await sampleFiles()) expect(Buffer.compare(bytes, rebuilt.get(name) ?? new Uint8Array())).toBe(0);
    vi.unstubAllEnvs();
  });

  it.each(committedFiles)("%s holds the very bytes that the script writes today; if not, run `npm run samples` and look at what changed", (name) => {
    expect(Buffer.compare(committed(name), rebuilt.get(name) ?? new Uint8Array())).toBe(0);
  });
});
