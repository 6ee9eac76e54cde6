import { plain } from "../../cells/text";
import { type Entry } from "./entry";
import { isOffInStandard } from "./pen-in-standard";

const instrument = String.raw`\b(?:pen|meter|probe|electrode)\w*\b`;

/** What a grower writes of a meter that was found to be off, in one statement. Common practice, no source. */
const saysOff = new RegExp(
  [
    String.raw`${instrument}.*\b(?:is|was|were|reads?|read|shows?|showed|seems?)\b.*\b(?:off|wrong|broken|faulty|unstable)\b`,
    String.raw`${instrument}.*\bdrift(?:s|ed|ing)\b`,
    String.raw`${instrument} (?:reads?|read|shows?|showed)(?: \d[\d.,]*)? (?:too )?(?:high|low)\b`,
    String.raw`${instrument}.*\bbattery\b|\bbattery\b.*\b(?:low|flat|empty|dying|weak|flash\w*)\b`,
    String.raw`${instrument} (?:was |got |is )?(?:dropped|fell|fouled)\b|\bdropped (?:the )?(?:ph |ec )?${instrument}`,
    String.raw`\bcalibrat\w+\b.*\bfail\w*|\bfail\w* (?:to |the )?calibrat\w+`,
    String.raw`\b\d[\d.,]* too (?:high|low)\b`,
    String.raw`\b(?:readings?|figures?|values?)\b.*\b(?:were|was|are) wrong\b`,
  ].join("|"),
);
const isDenied = /\b(?:no|not|never|isnt|wasnt|doesnt|didnt|without|if|whether)\b/;

/** "7.8 in the 7.00 buffer": what a pen shows in a buffer, and the buffer. */
const inBuffer =
  /\b(\d{1,2}(?:[.,]\d+)?) in (?:the |a )?(?:ph )?(4[.,]0\d?|6[.,]86|7[.,]0\d?|9[.,]18|10[.,]0\d?|(?:4|7|10)(?= ?(?:buffer|standard|puffer)))(?!\d)/g;

/** "the other pen says 2.2 in the same cup". */
const otherPen = /\bother (?:ec |ph )?(?:pen|meter|probe)\b.*\b(?:says|reads|shows|read|showed)\b.*\d/;

/** "the other pen says the same"; "in the same cup" says where. */
const agrees = /\b(?:same|too|agrees?)\b(?! (?:cup|sample))/;

const tellsOfBuffer = /\b(?:ph|buffers?|pen|meter|probe|electrode|calibrat\w*|reads?|shows?)\b/;

/** pH by which a pen may miss its buffer and still be used. Common practice. */
const mostOff = 0.2;

/** Whether a note says that the meter does not read right. */
export function isMeterOff({ notes }: Entry): boolean {
  if (notes === undefined) return false;
  const said = plain(notes).replace(/['’]/g, "");
  const statements = said.split(/[;!?\n]|[.,](?!\d)/);
  if (statements.some((each) => saysOff.test(each) && !isDenied.test(each))) return true;
  if (statements.some((each) => otherPen.test(each) && !agrees.test(each)) || isOffInStandard(said)) return true;
  const figure = (text: string | undefined): number => Number(text?.replace(",", "."));
  const ofBuffers = statements.filter((each) => tellsOfBuffer.test(each)).join(";");
  return [...ofBuffers.matchAll(inBuffer)].some(
    ([, read, buffer]) => Math.abs(figure(read) - figure(buffer)) > mostOff,
  );
}
