import { type ChartLine, type LineChart } from "./spec";
import { document, element, escaped } from "./xml";

const drawing = "http://schemas.openxmlformats.org/drawingml/2006";

/** Lines are told apart by stroke as well as by colour. */
const strokes: Readonly<Record<ChartLine["look"], { colour: string; dash: string; width: number; dots: boolean }>> = {
  read: { colour: "7A2E12", dash: "solid", width: 22_225, dots: false },
  given: { colour: "5E8A78", dash: "sysDash", width: 19_050, dots: false },
  readings: { colour: "7A2E12", dash: "solid", width: 22_225, dots: true },
};

const acrossId = 1001;
const upId = 1002;
const val = (name: string, value: string | number | boolean): string => element(`c:${name}`, { val: value });

/** A native line chart: the host draws it from the cells, so that it follows what is typed. */
export function chartPart({ title, across, unit, between, lines }: LineChart): string {
  const series = lines.map((line, number) => oneLine(line, number, across.cells));
  const plot = element(
    "c:lineChart",
    {},
    val("grouping", "standard"),
    val("varyColors", false),
    ...series,
    val("marker", true),
    val("axId", acrossId),
    val("axId", upId),
  );
  const chart = element(
    "c:chart",
    {},
    words("title", title, 1200),
    val("autoTitleDeleted", false),
    element("c:plotArea", {}, element("c:layout"), plot, acrossAxis(across), upAxis(unit, between)),
    lines.length === 1 ? "" : element("c:legend", {}, val("legendPos", "b"), val("overlay", false)),
    val("plotVisOnly", true),
    val("dispBlanksAs", "gap"),
  );
  const names = { "xmlns:c": `${drawing}/chart`, "xmlns:a": `${drawing}/main` };
  return document(element("c:chartSpace", names, val("roundedCorners", false), chart));
}

function oneLine({ name, cells, look }: ChartLine, number: number, across: string | undefined): string {
  const { colour, dash, width, dots } = strokes[look];
  const stroke = element("a:ln", { w: width, cap: "rnd" }, fill(colour), element("a:prstDash", { val: dash }), element("a:round"));
  return element(
    "c:ser",
    {},
    val("idx", number),
    val("order", number),
    element("c:tx", {}, element("c:strRef", {}, element("c:f", {}, escaped(name)))),
    element("c:spPr", {}, stroke),
    element("c:marker", {}, ...(dots ? [val("symbol", "circle"), val("size", 6), element("c:spPr", {}, fill(colour))] : [val("symbol", "none")])),
    across === undefined ? "" : element("c:cat", {}, element("c:numRef", {}, element("c:f", {}, escaped(across)))),
    element("c:val", {}, element("c:numRef", {}, element("c:f", {}, escaped(cells)))),
    val("smooth", false),
  );
}

function acrossAxis({ title, format, dates }: LineChart["across"]): string {
  return element(
    dates ? "c:dateAx" : "c:catAx",
    {},
    val("axId", acrossId),
    element("c:scaling", {}, val("orientation", "minMax")),
    val("delete", false),
    val("axPos", "b"),
    words("title", title, 900),
    element("c:numFmt", { formatCode: format, sourceLinked: false }),
    val("majorTickMark", "out"),
    val("minorTickMark", "none"),
    val("tickLblPos", "low"),
    val("crossAx", upId),
    val("crosses", "autoZero"),
    val("auto", dates),
    ...(dates ? [val("baseTimeUnit", "days"), val("majorUnit", 7), val("majorTimeUnit", "days")] : []),
  );
}

function upAxis(unit: string, between: LineChart["between"]): string {
  const ends = between === undefined ? [] : [val("max", between[1]), val("min", between[0])];
  const pale = element("c:spPr", {}, element("a:ln", { w: 6350 }, fill("D5DDD6")));
  return element(
    "c:valAx",
    {},
    val("axId", upId),
    element("c:scaling", {}, val("orientation", "minMax"), ...ends),
    val("delete", false),
    val("axPos", "l"),
    element("c:majorGridlines", {}, pale),
    words("title", unit, 900),
    element("c:numFmt", { formatCode: "0.0", sourceLinked: false }),
    val("majorTickMark", "out"),
    val("minorTickMark", "none"),
    val("tickLblPos", "nextTo"),
    val("crossAx", acrossId),
    val("crosses", "autoZero"),
    val("crossBetween", "midCat"),
  );
}

const fill = (colour: string): string => element("a:solidFill", {}, element("a:srgbClr", { val: colour }));

/** A title of the chart or of an axis; sizes are in hundredths of a point. */
function words(name: string, text: string, size: number): string {
  const look = element("a:rPr", { lang: "en-US", sz: size, b: size > 1000 }, fill("24483E"));
  const paragraph = element("a:p", {}, element("a:r", {}, look, element("a:t", {}, escaped(text))));
  return element(`c:${name}`, {}, element("c:tx", {}, element("c:rich", {}, element("a:bodyPr"), paragraph)), val("overlay", false));
}
