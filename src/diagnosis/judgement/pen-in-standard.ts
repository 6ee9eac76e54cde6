/** Standards of conductivity as growers write them, in mS/cm or uS/cm. Common practice. */
const standard = String.raw`1[.,]41\d?|1413|2[.,]7[67]|2760|12[.,]88|12880`;
const figure = String.raw`\d{1,5}(?:[.,]\d+)?`;
const unit = String.raw`(?: ?m?s(?:\/cm)?)?`;

/** "3.8 in the 1.41 standard", "the 1.413 standard reads 2.15", "standard 1413 reads 2150". */
const says = [
  String.raw`\b(?<read>${figure})${unit} in (?:the |a )?(?<standard>${standard})(?!\d)`,
  String.raw`\b(?<standard>${standard})${unit} standard (?:reads|shows|read|showed) (?:as )?(?<read>${figure})`,
  String.raw`\bstandard (?:of )?(?<standard>${standard}) (?:reads|shows|read|showed) (?:as )?(?<read>${figure})`,
].map((pattern) => new RegExp(pattern, "g"));

/** By this share a pen may miss its standard and still be used. Common practice; [usgs-nfm] allows 3 %. */
const mostOff = 0.1;
/** No solution of a pot has so many mS/cm: such a figure is uS/cm. */
const microFrom = 100;
const microPerMilli = 1000;

/** Whether a note tells of a conductivity standard that was read wrong. */
export const isOffInStandard = (said: string): boolean =>
  says.some((pattern) =>
    [...said.matchAll(pattern)].some(({ groups }) => {
      const [read, meant] = [millisiemens(groups?.read), millisiemens(groups?.standard)];
      return Math.abs(read - meant) > mostOff * meant;
    }),
  );

function millisiemens(text: string | undefined): number {
  const value = Number(text?.replace(",", "."));
  return value > microFrom ? value / microPerMilli : value;
}
