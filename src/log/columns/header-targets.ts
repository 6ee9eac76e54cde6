/** Words that make the figure beside them a wish or a limit of the column, not a name of it. */
const wish =
  "(?:targets?|goal|aim|max(?:imum)?|min(?:imum)?|limits?|set(?:point)?|desired|want(?:ed)?|ideal|opt(?:imum|imal)?|range|band|" +
  "should be|under|over|below|above|up to|soll|ziel|max|grenze|grenzwert|objetivo|meta|consigne|cible|doel|streef|obiettivo|cel)";
const figure = "\\d+(?:[.,]\\d+)?";
const span = `${figure}\\s*(?:-|\u2013|\u2014|to|bis|tot|a|\\.\\.+)\\s*${figure}`;

const wishWithFigure = new RegExp(
  `(?<![\\p{L}])${wish}\\.?\\s*[:=]?\\s*(?:[<>\u2264\u2265]=?\\s*)?(?:${span}|${figure})`,
  "giu",
);
const limit = new RegExp(`[<>\u2264\u2265]=?\\s*${figure}`, "gu");
const onlySpan = new RegExp(span, "gu");
const bracket = /[([][^()[\]]*[)\]]/g;

/**
 * The words over a column without the targets and limits that stand beside them: "EC in (target 1.6)" is "EC in". A
 * unit in the same bracket stays: "(goal 1.8 mS/cm)" is "(mS/cm)".
 */
export function withoutTargets(text: string): string {
  if (!/\d/.test(text)) return text;
  return text
    .replace(bracket, (inside) => inside.replace(wishWithFigure, "").replace(onlySpan, "").replace(limit, ""))
    .replace(wishWithFigure, " ");
}
