/** What people type where nothing was measured. */
export const missingWords: ReadonlySet<string> = new Set(
  "na n/a n.a. n.a nan null none nil - -- --- – — . .. ? x nm n/m nd n/d missing #n/a"
    .split(" ")
    .concat("not measured"),
);
