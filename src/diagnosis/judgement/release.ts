import { type Facts } from "./facts";

const releases = ["slow-release mixed in", "slow-release on top", "slow-release"] as const;

/** Where slow-release fertiliser lies, by any note of the log; the latest note wins. */
export function releaseOf({ entries }: Facts): (typeof releases)[number] | undefined {
  for (let at = entries.length - 1; at >= 0; at--) {
    const found = releases.find((kind) => entries[at]?.events.some((event) => event.kind === kind));
    if (found !== undefined) return found;
  }
  return undefined;
}
