import { type Scalar } from "../check-values/check-file";
import { acid, base, protons } from "./dose-pieces";
import { cusumWords, fittedRate, interpolated, medianSlope } from "./formula-pieces";

/** What a grower without the add-in would type, from the published equation, and arguments to try it on. */
export interface PlainFormula {
  readonly id: string;
  /** `A` is the first argument's cell, `B` the second's; `A#` a whole series, `A.2` its second cell. */
  readonly formula: string;
  readonly rows: readonly (readonly (Scalar | readonly Scalar[])[])[];
  /** Row and column of the answer that is meant, from 1; the first cell if left out. */
  readonly at?: readonly [row: number, column: number];
}

const ecFactor = (unit: string): string => `CHOOSE(MATCH(${unit},{"mS/cm","uS/cm","dS/m","mS/m","S/m","CF"},0),1,0.001,1,0.01,10,0.1)`;

/** meq/L in each unit: CaCO3 and CaO of two equivalents a mole, HCO3 of one; a degree is 10 mg/L of CaO. */
const alkFactor = (unit: string): string =>
  `CHOOSE(MATCH(${unit},{"mg/L CaCO3","mg/L HCO3","meq/L","mmol/L HCO3","dH"},0),2/100.087,1/61.017,1,1,10/(56.077/2))`;

/** Atomic weights of IUPAC 2021 to six figures. */
const share = (name: string): string =>
  `CHOOSE(MATCH(${name},{"N","P2O5","K2O","CaO","MgO","SO3","NO3","NH4"},0),1,` +
  "2*30.9738/(2*30.9738+5*15.999),2*39.0983/(2*39.0983+15.999)," +
  "40.078/(40.078+15.999),24.305/(24.305+15.999),32.06/(32.06+3*15.999)," +
  "14.007/(14.007+3*15.999),14.007/(14.007+4*1.008))";

/** Buffers of IUPAC 2002, table 2, and the technical 7.00, at 0 to 50 C. */
const bufferCelsius = "{0,5,10,15,20,25,30,37,40,50}";
const phthalate = interpolated("B", bufferCelsius, "{4,3.998,3.997,3.998,4.001,4.005,4.011,4.022,4.027,4.05}");
const carbonate = interpolated("B", bufferCelsius, "{10.317,10.245,10.179,10.118,10.062,10.012,9.966,9.91,9.889,9.828}");

/** 7.00 and 4.01 at 15, 20, 25 and 30 C; Nernst's slope with the constants of CODATA 2018. */
const ph7 = "CHOOSE(MATCH(E,{15,20,25,30},0),7.036,7.016,7,6.987)";
const ph4 = "CHOOSE(MATCH(E,{15,20,25,30},0),3.998,4.001,4.005,4.011)";
const perPh = `((D-B)/(${ph4}-${ph7}))`;
const nernst = "(LN(10)*8.31446261815324*(E+273.15)/96485.3321233100184*1000)";
const probes = [[7, -15, 4.01, 160, 25], [7, 8, 4.01, 181.5, 20], [7, -2.5, 4.01, 168, 30], [7, 31, 4.01, 190, 15]] as const;

/** KCl 0.01 mol/kg by NIST: uS/cm at 15, 18, 20, 25 and 30 C. */
const kcl = "(CHOOSE(MATCH(C,{15,18,20,25,30},0),1141.45,1219.93,1273.03,1408.23,1546.63)/1408.23)";

/** FAO 56, equation 11. */
const saturated = (celsius: string): string => `0.6108*EXP(17.27*${celsius}/(${celsius}+237.3))`;
const dewGamma = "(LN(B/100)+17.27*A/(237.3+A))";

/** Water held and mixing efficiency by medium, as docs/formulas.md states them. */
const media = '{"coir","peat","bark","mineral wool","inert","soil"}';
const washing = (medium: string): string => `(CHOOSE(MATCH(${medium},${media},0),0.65/0.7,0.65/0.7,0.5/0.6,0.8/0.85,0.3/0.6,0.35/0.4))`;
const held = `CHOOSE(MATCH(E,${media},0),0.65,0.65,0.5,0.8,0.3,0.35)`;
const portions = `ROUNDUP(LN((B-D)/(C-D))*A*${washing("E")}/(F*A*${held}),0)`;

const bands = "{5.5,6.5,1.2,3.5;5.4,6.4,1.2,3.5;5,6,0.5,1;5,6.5,1.5,4;5,6.5,1.2,2.8;6.2,6.8,0.8,3}";
const flags = [
  ["C<5.5", "runoff pH low"], ["C>6.5", "runoff pH high"], ["D<1.2", "runoff EC low"], ["D>3.5", "runoff EC high"],
  ["AND(D>3.5,D/B>1.5)", "salt ratio high"], ["A<5.5", "input pH low"], ["A>6.5", "input pH high"], ["B>3.5", "input EC high"],
] as const;
const cationBreaches = [
  ["A/B>2.5", "K high against Ca"], ["A/B<0.75", "Ca high against K"], ["A/C>7", "K high against Mg"], ["A/C<2", "Mg high against K"],
  ["B/C>5", "Ca high against Mg"], ["B/C<2", "Mg high against Ca"],
] as const;
const joined = (tests: readonly (readonly [when: string, word: string])[], none: string): string => {
  const all = tests.map(([when, word]) => `IF(${when},"; ${word}","")`).join("&");
  return `IF(${all}="","${none}",MID(${all},3,99))`;
};

const bench = [46023, 46025, 46026, 46030, 46033];
const climbing = [2.1, 2.3, 2.25, 2.9, 3.05];

export const plainFormulas: readonly PlainFormula[] = [
  { id: "READING", formula: "(A-32)/1.8", rows: [[70, "F"], [41, "F"]] },
  { id: "READING", formula: "A*3.785411784", rows: [[5, "gal"]] },
  { id: "ECAT25", formula: "A/(1+0.0191*(B-25))", rows: [[1.305, 21], [2.4, 18.5], [0.31, 33]] },
  { id: "ECAT25", formula: "A/(1+C/100*(B-25))", rows: [[1.305, 21, 2], [2.4, 18.5, 1.85]] },
  { id: "ECATTEMP", formula: "A*(1+0.0191*(B-25))", rows: [[1.413, 21], [2.8, 12.5]] },
  { id: "ECATTEMP", formula: "A*(1+C/100*(B-25))", rows: [[1.413, 21, 2.1]] },
  { id: "ECUNIT", formula: `A*${ecFactor("B")}/${ecFactor("C")}`,
    rows: [[1413, "uS/cm", "mS/cm"], [2.4, "dS/m", "mS/m"], [0.24, "S/m", "uS/cm"], [18, "CF", "uS/cm"]] },
  { id: "ALKUNIT", formula: `A*${alkFactor("B")}/${alkFactor("C")}`,
    rows: [[150, "mg/L CaCO3", "meq/L"], [5, "dH", "mg/L HCO3"], [3.1, "mmol/L HCO3", "dH"]] },
  { id: "PPM", formula: "A*B", rows: [[1.15, 640], [2.37, 500], [1.9, 700]] },
  { id: "ECFROMPPM", formula: "A/B", rows: [[1000, 500], [1234, 700]] },
  { id: "PPMRESCALE", formula: "A/B*C", rows: [[1000, 500, 700], [873, 640, 500]] },
  { id: "PHBUFFER", formula: phthalate, rows: [["4.01", 2.5], ["4.01", 20], ["4.01", 22.4], ["4.01", 38]] },
  { id: "PHBUFFER", formula: carbonate, rows: [["10.01", 15], ["10.01", 27.5], ["10.01", 45]] },
  { id: "PHPROBE", formula: `-100*${perPh}/${nernst}`, rows: probes.map((probe) => [...probe, "slope"]) },
  { id: "PHPROBE", formula: `B+${perPh}*(7-${ph7})`, rows: probes.map((probe) => [...probe, "offset"]) },
  { id: "ECMETER", formula: "100*(A/B-1)", rows: [[1.37, 1.413, 25], [1.45, 1.413, 20]] },
  { id: "ECMETER", formula: `100*(A/(B*${kcl})-1)`,
    rows: [[1.3, 1.413, 20, false], [1.21, 1.413, 18, false], [1.5, 1.413, 30, false]] },
  { id: "CALDUE", formula: "A+B-C", rows: [[46000, 14, 46010], [46000, 7, 46031]] },
  { id: "SALTRATIO", formula: "A/B", rows: [[2.4, 1.6], [4.87, 1.93]] },
  { id: "PHSHIFT", formula: "A-B", rows: [[5.43, 5.9], [6.7, 6.05]] },
  { id: "LEACHFRACTION", formula: "A/B", rows: [[0.37, 1.9], [0, 2]] },
  { id: "RATIOCEILING", formula: "1/A", rows: [[0.2], [0.37]] },
  { id: "BANDLIMIT", formula: `INDEX(${bands},MATCH(A,${media},0),MATCH(B,{"ph low","ph high","ec low","ec high"},0))`,
    rows: ["coir", "peat", "bark", "mineral wool", "inert", "soil"].flatMap((medium) =>
      ["ph low", "ph high", "ec low", "ec high"].map((limit) => [medium, limit])) },
  { id: "ROWFLAG", formula: joined(flags, "in band"),
    rows: [[5.9, 2, 6.1, 2.8, "coir"], [5.9, 1.6, 5.2, 4.1, "coir"], [7.1, 2, 6.9, 1.1, "coir"], [5.9, 3.8, 6, 3.9, "coir"], [5.2, 1, 6, 2.6, "coir"]] },
  { id: "SALTKEPT", formula: "0.64*(A*B-C*D)", rows: [[2.1, 9.5, 3.7, 1.8], [0.3, 10, 4, 8]] },
  { id: "SALTKEPT", formula: "E/1000*(A*B-C*D)", rows: [[2.1, 9.5, 3.7, 1.8, 700]] },
  { id: "DRIFT", formula: medianSlope("A", "B", 5), rows: [[bench, climbing], [bench, [6.1, 6.05, 5.2, 5.9, 5.8]]] },
  { id: "DRIFTLEFT", formula: `(D-MEDIAN(B#)-${medianSlope("A", "B", 5)}*(A.5-MEDIAN(A#)))/${medianSlope("A", "B", 5)}`,
    rows: [[bench, [2.1, 2.2, 2.25, 2.9, 3.05], 2, 3.5]] },
  { id: "DRIFTALARM", formula: cusumWords("A", 5, 9),
    rows: [[6, 5.99, 6.02, 6.03], [6.3, 6.29, 6.32, 6.33], [5.7, 5.66, 5.65, 5.6]].map((since) => [[6, 6.04, 5.97, 6.01, 5.98, ...since]]) },
  { id: "FLUSHVOLUME", formula: `LN((B-D)/(C-D))*A*${washing("E")}`,
    rows: [[10, 6, 3, 0.4, "coir"], [7.5, 4.4, 2.6, 0.25, "inert"], [12, 5.1, 2.9, 0.6, "soil"]] },
  { id: "FLUSHPLAN", formula: `D+(B-D)*((C-D)/(B-D))^(2/${portions})`,
    rows: [[10, 6, 3, 0.4, "coir", 0.25], [7.5, 4.4, 2.6, 0.25, "inert", 0.5]], at: [3, 4] },
  { id: "FLUSHPLAN", formula: `LN((B-D)/(C-D))*A*${washing("E")}/${portions}`,
    rows: [[10, 6, 3, 0.4, "peat", 0.25], [12, 5.1, 2.9, 0.6, "bark", 0.4]], at: [2, 2] },
  { id: "FLUSHLEFT", formula: `LN((B.4-D)/(C-D))/${fittedRate("A", "B", "D", 4)}`,
    rows: [[[0, 2, 2, 1.5], [8.4, 4.5, 2.45, 1.7], 1.1, 0.4], [[1, 1, 1, 1], [6.2, 4.9, 3.7, 2.95], 2, 0.3]] },
  { id: "LEACHNEED", formula: "A/(5*B-A)", rows: [[1, 2.5], [1.7, 1.3]] },
  { id: "ACIDDOSE", formula: acid(63.012, 1.3667, "1"), rows: [[1000, 150, 7.5, 5.8, "nitric", 60], [37, 210, 7.9, 6.2, "nitric", 60]] },
  { id: "ACIDDOSE", formula: acid(36.458, 1.179, "1"), rows: [[1000, 90, 7.2, 5.5, "hydrochloric", 36]] },
  { id: "ACIDDOSE", formula: acid(98.078, 1.835, `(1+${protons(1.988)})`), rows: [[1000, 150, 7.5, 5.8, "sulfuric", 93], [640, 275, 8.2, 6.1, "sulfuric", 93]] },
  { id: "ACIDDOSE", formula: acid(97.994, 1.579, protons(2.168, 7.207, 12.346)), rows: [[1000, 150, 7.5, 5.8, "phosphoric", 75], [75, 180, 7.7, 6.4, "phosphoric", 75]] },
  { id: "ACIDDOSE", formula: acid(192.123, 1, protons(3.128, 4.761, 6.396)), rows: [[1000, 150, 7.5, 5.8, "citric", 99.5]] },
  { id: "ALKALIDOSE", formula: base(56.105, 1, 0), rows: [[1000, 10, 5, 6, "potassium hydroxide"], [430, 25, 5.6, 6.3, "potassium hydroxide"]] },
  { id: "ALKALIDOSE", formula: base(138.204, 2, 1), rows: [[1000, 20, 5.5, 6.2, "potassium carbonate"]] },
  { id: "ALKALIDOSE", formula: base(100.114, 1, 1), rows: [[1000, 20, 5.5, 6.1, "potassium bicarbonate"]] },
  { id: "DILUTION", formula: "A*(B-C)/(C-D)", rows: [[10, 3, 1.8, 0.3], [37.5, 2.65, 1.43, 0.42]] },
  { id: "SWAPOUT", formula: "A*(B-C)/(B-D)", rows: [[10, 3, 1.8, 0.6], [37.5, 2.65, 1.43, 0.42]] },
  { id: "STOCKDOSE", formula: "A*(B-C)/D", rows: [[20, 1.6, 0.4, 0.3], [37.5, 2.1, 0.37, 0.215]] },
  { id: "BLENDEC", formula: "SUMPRODUCT(A#,B#)/SUM(A#)", rows: [[[38, 12], [2.5, 0.4]], [[5, 7.5, 1.25], [3.1, 0.42, 1.8]]] },
  { id: "BLENDSHARE", formula: "(C-B)/(A-B)", rows: [[2.4, 0.4, 1.4], [0.42, 3.1, 1.77]] },
  { id: "LABELPPM", formula: `10*A*B*${share("C")}`,
    rows: ["N", "P2O5", "K2O", "CaO", "MgO", "SO3", "NO3", "NH4"].map((analyte) => [0.85, 15.5, analyte]) },
  { id: "FEEDGRAMS", formula: `A*B/1000/(C/100*${share("D")})`,
    rows: [[100, 200, 20, "N"], [37.5, 31, 52, "P2O5"], [20, 180, 50, "K2O"]] },
  { id: "CATIONS", formula: joined(cationBreaches, "balanced"),
    rows: [[200, 100, 50], [400, 100, 45], [150, 260, 90], [90, 100, 80]] },
  { id: "RECOVERYFEED", formula: "B+(A-B)*MIN(1,0.5+0.5*C/7)", rows: [[2, 0.4, 0], [2.3, 0.37, 3], [2, 0.4, 12]] },
  { id: "RECOVERYFEED", formula: "B+(A-B)*MIN(1,D+(1-D)*C/E)", rows: [[2.3, 0.37, 4, 0.3, 10]] },
  { id: "UPTAKE", formula: "A-B", rows: [[2, 0.5], [1.83, 0.27]] },
  { id: "UPTAKE", formula: "(A-B)/C*24", rows: [[2, 0.5, 48], [1.83, 0.27, 17]] },
  { id: "VPD", formula: `${saturated("A")}*(1-B/100)`, rows: [[25, 60], [18.5, 83]] },
  { id: "VPD", formula: `${saturated("C")}-${saturated("A")}*B/100`, rows: [[25, 60, 23], [28, 55, 29.5]] },
  { id: "DEWPOINT", formula: `237.3*${dewGamma}/(17.27-${dewGamma})`, rows: [[25, 60], [18.5, 83]] },
  { id: "WATERING", formula: "A/(1-B)/C", rows: [[1.2, 0.2, 3], [2.7, 0.35, 0.5]] },
  { id: "LIGHTHOURS", formula: "B*1000000/(A*3600)", rows: [[400, 17.28], [655, 21.3]] },
  { id: "DLI", formula: "A*B*3600/1000000", rows: [[400, 12], [655, 16.5]] },
];

/** What a line of plain arithmetic cannot say, and what says it instead. */
export const notPlain: Readonly<Record<string, string>> = {
  DIAGNOSE: "a judgement over readings in order: tests/functions/diagnose.test.ts and the case book in tests/cases",
  WHICHFIRST: "a judgement of each pot: tests/functions/diagnose.test.ts",
  FLUSHSTOP: "a judgement over readings in order: tests/src/flush/flush-stop.test.ts",
  RECOVERYTREND: "exact probabilities of Kendall's S: counted by hand and by another program in tests/src/maths/trend.test.ts",
};
