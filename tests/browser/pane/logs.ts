import type { Scalar } from "../../../workbench/host/excel/sheet-store";

type Cells = readonly (readonly Scalar[])[];

export const header = ["Date", "Feed EC (mS/cm)", "Runoff EC (mS/cm)", "Feed pH", "Runoff pH", "Notes"] as const;

/** 46082 is 1 March 2026. Fed at EC 1.5 and pH 5.8; the runoff climbs from EC 2 by 0.3 a day, its pH stays at 6. */
export const climbing = (days = 12): Cells => [
  header,
  ...Array.from({ length: days }, (_, day): Scalar[] => [46_082 + day, 1.5, Math.round((2 + 0.3 * day) * 100) / 100, 5.8, 6, day === 8 ? "flushed with 6 L" : ""]),
];

/** The same runoff as ppm figures of a meter that does not say its scale: 500 ppm to 1 mS/cm in truth. */
export const inPpm = (): Cells => [
  ["Date", "Feed pH", "Runoff TDS (ppm)", "Runoff pH"],
  ...Array.from({ length: 8 }, (_, day): Scalar[] => [46_082 + day, 5.8, 2500 + day, 6]),
];

/** Two pots in turns: the pepper's runoff is far above coir's band, the basil's within it. */
export const twoPots = (): Cells => [
  ["Date", "Pot", "Feed EC (mS/cm)", "Runoff EC (mS/cm)", "Feed pH", "Runoff pH"],
  ...Array.from({ length: 12 }, (_, row): Scalar[] => {
    const isPepper = row % 2 === 0;
    return [46_082 + Math.floor(row / 2), isPepper ? "Pepper" : "Basil", 1.5, isPepper ? 6 : 2.2, 5.8, 6];
  }),
];

/** Mineral wool fed at EC 4 for two months on purpose; the drain keeps its distance of 1 to 2. */
export const strongOnPurpose = (): Cells => [
  header,
  ...Array.from({ length: 6 }, (_, place): Scalar[] => [46_082 + 14 * place, 4, 5.4 + (place % 2) / 5, 5.6, 5.9, "new growth clean"]),
];

/** Headers, a vessel and notes that would run, load or mislead if they ever became markup or formulas. */
export const hostile = (): Cells => {
  const texts = [
    "<img src=x onerror=\"document.title='owned'\">", "</title><script>document.title='owned'</script>", "=HYPERLINK(\"http://example.com\",\"x\")",
    "<svg onload=alert(1)>flush", "\u202Eflushed\u202C \u200Bwith 6 L", "<iframe src=javascript:alert(1)>", "]]></desc><script>1</script>", "<a href=http://example.com>x</a>",
  ];
  return [
    ["Date", "Pot", "Feed EC (mS/cm)", "Runoff EC (mS/cm)", texts[0] ?? "", texts[1] ?? "", "Notes"],
    ...texts.map((text, day): Scalar[] => [46_082 + day, "</option><script>document.title='owned'</script>", 1.5, 3 + day / 10, text, "<b>1</b>", `flushed ${text}`]),
  ];
};

/** Two readings of one pot a day for years. */
export const longLog = (rows: number): Cells => [
  ["Date", "Time", "Feed EC (mS/cm)", "Feed pH", "Runoff EC (mS/cm)", "Runoff pH", "Fed (L)", "Runoff (L)", "Air temp (C)", "RH %", "Solution temp (C)", "Notes"],
  ...Array.from({ length: rows }, (_, row): Scalar[] => [
    36_526 + Math.floor(row / 2), row % 2 === 0 ? 0.354 : 0.74, 1.5, 5.8, 2 + (row % 37) / 20, 6 + (row % 7) / 10, 2, 0.3, 20 + (row % 9), 50 + (row % 23), 20, "",
  ]),
];

/** A pepper in coir whose runoff has climbed far above the band, day by day, while less and less drains; new leaves burn. */
export const crisis = (): Cells => [
  ["Date", "Pot", "Medium", "Feed EC (mS/cm)", "Feed pH", "Runoff EC (mS/cm)", "Runoff pH", "Fed (L)", "Runoff (L)", "Notes"],
  ...Array.from({ length: 14 }, (_, day): Scalar[] => [
    46_082 + day, "Pepper 2", "coir", 1.9, 5.8, Math.round((2.6 + 0.36 * day) * 100) / 100, 5.9, 2, Math.round((0.6 - 0.035 * day) * 100) / 100,
    day === 13 ? "leaf tips burnt" : "",
  ]),
];
