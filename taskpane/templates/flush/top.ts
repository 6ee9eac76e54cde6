import { drainedMedia, pourLiquids } from "../../../src/index";
import { heading, result } from "../lines";
import { type Line, type TemplateCell } from "../sheet-template";
import { ecsTo, firstPortion, litresTo, phsTo, plannedLitres, portionKey } from "./keys";
import { flushLabels as labels } from "./labels";

/** A choice by medium, as a formula: what the engine's table says of the medium in its box. */
const byMedium = (pick: "liquid" | "why"): string =>
  drainedMedia.reduceRight(
    (otherwise, medium) => `IF({medium}="${medium}","${pourLiquids[medium][pick]}",${otherwise})`,
    '""',
  );

/** Nothing is planned or checked before all five are there; a blank would pass for pure water. */
export const isMissing = 'OR(COUNT({container},{water},{ecNow},{phNow})<4,{medium}="")';

const unlessMissing = (formula: string): string =>
  `IF(COUNT({container})=0,"fill in the container",IF(COUNT({water})=0,"fill in the EC of what you pour",IF(${isMissing},"fill in the pot's readings",${formula})))`;

/** Steps smaller than half of the meter's last digit are none. */
const halfDigit = "0.005";

/** The stop check down to a row; "in band" goes on until the reading is a little inside the limit. */
export function stopCheck(band: string, key?: string, lastEc = `{${String(key)}:E}`): string {
  const check = `RUNOFF.FLUSHSTOP(${phsTo(key)},${ecsTo(key)},${band},${litresTo(key)},{container})`;
  return `IF(AND(${check}="stop: in band",N(${lastEc})>{target}+${halfDigit}),"keep going",${check})`;
}

const lastEc = `INDEX(${ecsTo()},SUMPRODUCT(MAX((${ecsTo()}<>"")*(ROW(${ecsTo()})-ROW({${portionKey(0)}:E})+1))))`;

const why = (value: string): TemplateCell => ({ value, style: "wrapped" });
const label = (value: string): TemplateCell => ({ value, style: "largeLabel" });
const large = (formula: string, numberFormat: string): TemplateCell => ({ formula, style: "large", numberFormat });
const text = (formula: string): TemplateCell => ({ formula, style: "largeText" });

const pourNext: Line = {
  key: "next",
  cells: [
    label(labels.next),
    large(
      `IF({says}<>"keep going","",MIN({${firstPortion}:K},IF(ISNUMBER({left}),{left},{${firstPortion}:K})))`,
      "0.0",
    ),
    label("at pH"),
    large("{pourPh}", "0.0"),
    label("of"),
    text(byMedium("liquid")),
    { formula: byMedium("why"), style: "wrapped" },
  ],
};

const poured: Line = {
  key: "poured",
  cells: [
    label(labels.poured),
    large(`SUM(${litresTo()})`, "0.0"),
    label("of"),
    large(`IF(COUNT(${plannedLitres})=0,"",MAX(${plannedLitres}))`, "0.0"),
    undefined,
    undefined,
    why("as planned; the readings decide, not the plan"),
  ],
};

const now: Line = {
  key: "now",
  cells: [
    label(labels.now), large(`IF(COUNT(${ecsTo()})=0,"",${lastEc})`, "0.00"), label("to"), large("{target}", "0.00"),
    undefined, undefined, why("a little inside the limit, so that it does not come back above it"),
  ],
};

const stopWhen: Line = {
  key: "stopWhen",
  cells: [
    label(labels.stop),
    text(
      'IF(COUNT({target})=0,"",FIXED({target},2,TRUE)&" or less at pH "&FIXED({limits:B},1,TRUE)&" to "&FIXED({limits:C},1,TRUE))',
    ),
    undefined,
    undefined,
    undefined,
    undefined,
    why("or the EC no longer falls, or the check says enough water: then stop, whatever it reads"),
  ],
};

const says = (band: string): Line => ({
  key: "says",
  cells: [
    label(labels.says),
    text(unlessMissing(stopCheck(band, undefined, "{now}"))),
    undefined,
    undefined,
    undefined,
    undefined,
    {
      formula: `IF(${isMissing},"",INDEX(RUNOFF.FLUSHSTOP(${phsTo()},${ecsTo()},${band},${litresTo()},{container},TRUE),1,2))`,
      style: "wrapped",
      lines: 5,
    },
  ],
});

const left: Line = result("left", labels.left, {
  formula: `IF(${isMissing},"",RUNOFF.FLUSHLEFT(${litresTo()},${ecsTo()},{target},{water}))`,
  numberFormat: "0.0",
  how: "from this pot's own readings, three at least",
});

/**
 * What a wet hand has to see from a step away: how much, at what pH, how much so far, when to stop, and what the check
 * says now.
 */
export const top = (band: string): readonly Line[] => [
  heading("Now", "", "", "", "", "", "Why"), pourNext, poured, now, stopWhen, says(band), left,
];
