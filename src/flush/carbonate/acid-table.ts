/** One tabulated strength: percent by mass, g/mL at 20 C, and where the figure was read. */
export interface Density {
  readonly percent: number;
  readonly gramsPerMillilitre: number;
  readonly source: string;
}

export interface Acid {
  /** g/mol */
  readonly molarMass: number;
  /** Protons that leave at once in any water. */
  readonly strongProtons: number;
  /** Further protons, given up by degrees of pH. */
  readonly pKas: readonly number[];
  /** A liquid's densities by strength; a crystal (citric) has none and is weighed. */
  readonly densities: readonly Density[] | undefined;
  /** What it leaves in the water besides acidity: element and grams per mole. */
  readonly leaves: { readonly element: string; readonly gramsPerMole: number; readonly mostInFeed: number } | undefined;
  /**
   * % by which a dose is too much where the water holds salts of ionic strength 0.02; by the Davies equation, targets
   * of pH 5.5 to 6.5.
   */
  readonly saltsShare: readonly [least: number, most: number];
  readonly caution: string;
  /** Of the pKas. */
  readonly source: string;
}

const rows = (source: string, pairs: readonly (readonly [percent: number, gramsPerMillilitre: number])[]): Density[] =>
  pairs.map(([percent, gramsPerMillilitre]) => ({ percent, gramsPerMillilitre, source }));

/** 20 C figures read in a public reprint of handbook tables. */
const reprint = "[density-reprint]";
/** 20 C figures of the handbooks, from memory. */
const handbook = "[handbook-densities], from memory";

/** Acids that give all their protons at once; the share is the carbonate's own. */
const strongShare = [2, 9] as const;

const citric = {
  strongProtons: 0,
  pKas: [3.128, 4.761, 6.396],
  densities: undefined,
  leaves: undefined,
  source: "[citric-pka], from memory",
  saltsShare: [9, 16],
} as const;

/**
 * Molar masses: [iupac-weights-2021]. The most that a feed should hold, mg/L: P the cap of [umass-acids] (2.25 fl oz of
 * 75 % phosphoric in 100 gal); N of the Hoagland and S of the Steiner solution, Cl of water without restriction
 * [ayers-westcot-1985], all three from memory.
 */
export const acidTable = {
  sulfuric: {
    molarMass: 98.078,
    strongProtons: 1,
    pKas: [1.988],
    densities: [
      ...rows(reprint, [
        [10, 1.0661],
        [20, 1.1398],
        [30, 1.2191],
        [40, 1.3028],
        [50, 1.3952],
      ]),
      ...rows(handbook, [[60, 1.4983]]),
      ...rows(reprint, [[70, 1.6105]]),
      ...rows(handbook, [
        [80, 1.7272],
        [90, 1.8144],
      ]),
      ...rows("[extension-acid-tables]", [[93, 1.835]]),
      ...rows(handbook, [
        [96, 1.8355],
        [98, 1.8365],
      ]),
    ],
    leaves: { element: "S", gramsPerMole: 32.06, mostInFeed: 112 },
    saltsShare: strongShare,
    caution: "sulfuric acid burns skin and gets hot in water",
    source: "[usgs-phreeqc]",
  },
  phosphoric: {
    molarMass: 97.994,
    strongProtons: 0,
    pKas: [2.168, 7.207, 12.346],
    densities: [
      ...rows(reprint, [
        [10, 1.0531],
        [20, 1.1135],
        [30, 1.1804],
        [40, 1.2536],
      ]),
      ...rows(handbook, [
        [50, 1.335],
        [60, 1.426],
        [70, 1.526],
      ]),
      ...rows(reprint, [
        [75, 1.579],
        [85, 1.685],
      ]),
    ],
    leaves: { element: "P", gramsPerMole: 30.974, mostInFeed: 66 },
    saltsShare: [3, 15],
    caution: "phosphoric acid burns skin and eyes",
    source: "[usgs-phreeqc]",
  },
  nitric: {
    molarMass: 63.012,
    strongProtons: 1,
    pKas: [],
    densities: [
      ...rows(reprint, [
        [10, 1.0543],
        [20, 1.1154],
        [30, 1.1801],
        [40, 1.2466],
      ]),
      ...rows(handbook, [
        [50, 1.31],
        [60, 1.3667],
        [67, 1.4],
        [70, 1.4134],
      ]),
    ],
    leaves: { element: "N", gramsPerMole: 14.007, mostInFeed: 210 },
    saltsShare: strongShare,
    caution: "nitric acid burns, feeds fire and gives off poisonous fumes: keep it from anything that burns",
    source: "strong acid",
  },
  hydrochloric: {
    molarMass: 36.458,
    strongProtons: 1,
    pKas: [],
    densities: rows(reprint, [
      [10, 1.048],
      [20, 1.098],
      [30, 1.149],
      [32, 1.159],
      [34, 1.169],
      [36, 1.179],
      [38, 1.189],
    ]),
    leaves: { element: "Cl", gramsPerMole: 35.45, mostInFeed: 140 },
    saltsShare: strongShare,
    caution: "hydrochloric acid burns, its fumes choke, and its chloride adds to salt",
    source: "strong acid",
  },
  "citric anhydrous": {
    molarMass: 192.123,
    ...citric,
    caution: "citric acid stings eyes, and microbes eat it: its effect fades in days",
  },
  "citric monohydrate": {
    molarMass: 210.138,
    ...citric,
    caution: "citric acid stings eyes, and microbes eat it: its effect fades in days",
  },
} as const satisfies Record<string, Acid>;

export type AcidName = keyof typeof acidTable;
