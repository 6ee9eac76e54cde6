import { airCelsius, bandFor, ec25, humidityPercent, litres, type LogRow, ph, timeline } from "../../../src/index";
import { drawTimeline } from "../../../taskpane/drawing/timeline-drawing";
import { svgNode } from "../../../taskpane/view/picture-node";

/** A reading a day of everything that has a lane, a note now and then. */
const longLog = (days: number): LogRow[] =>
  Array.from({ length: days }, (_, day) => ({
    row: day + 1,
    day: 36_526 + day,
    vessel: undefined,
    inputEc: ec25(1.4 + (day % 5) / 20),
    inputPh: ph(5.8 + (day % 3) / 10),
    runoffEc: ec25(2 + (day % 37) / 20),
    runoffPh: ph(5.7 + (day % 11) / 10),
    inputLitres: litres(2),
    runoffLitres: litres(0.3 + (day % 7) / 50),
    solutionCelsius: undefined,
    airCelsius: airCelsius(20 + (day % 9)),
    humidityPercent: humidityPercent(50 + (day % 23)),
    notes: undefined,
    events: day % 60 === 59 ? [{ kind: "flush", words: "flushed with 6 L" }] : [],
  }));

/** Milliseconds of each of several rounds of: model, picture, picture in the page with its layout done. */
function drawingTimes(days: number, rounds: number): number[] {
  const rows = longLog(days);
  const place = document.createElement("div");
  document.body.append(place);
  return Array.from({ length: rounds }, () => {
    const start = performance.now();
    const drawing = drawTimeline(timeline(rows, { band: bandFor("coir") }), { width: 380, theme: "light", title: "Bench" });
    place.replaceChildren(svgNode(drawing.svg));
    place.getBoundingClientRect();
    return performance.now() - start;
  });
}

Object.assign(globalThis, { drawingTimes });
