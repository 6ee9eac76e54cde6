/** Colours of one look. Meaning never rests on them alone: input and runoff differ by mark and by line as well. */
export interface DrawingTheme {
  readonly paper: string;
  readonly ink: string;
  readonly faintInk: string;
  readonly grid: string;
  readonly band: string;
  readonly bandEdge: string;
  readonly watch: string;
  readonly event: string;
  readonly input: string;
  readonly runoff: string;
}

export type ThemeName = "light" | "dark" | "contrast";

/**
 * Blue and vermilion (light), sky blue and orange (dark) stay apart for colour-blind eyes: M. Okabe and K. Ito, Color
 * Universal Design, 2008. Text keeps 4.5:1 and marks 3:1 against the paper. `contrast` leaves every colour to the
 * system.
 */
export const themes: Readonly<Record<ThemeName, DrawingTheme>> = {
  light: {
    paper: "#ffffff",
    ink: "#1b1f23",
    faintInk: "#57606a",
    grid: "#e3e6ea",
    band: "#e2f1ea",
    bandEdge: "#2f6b52",
    watch: "#f3ecd9",
    event: "#7a5c00",
    input: "#0072b2",
    runoff: "#c44e00",
  },
  dark: {
    paper: "#1f2124",
    ink: "#f0f2f4",
    faintInk: "#b4bbc3",
    grid: "#34383d",
    band: "#22382f",
    bandEdge: "#77c2a0",
    watch: "#3a3420",
    event: "#e7c65a",
    input: "#56b4e9",
    runoff: "#f0a202",
  },
  contrast: {
    paper: "Canvas",
    ink: "CanvasText",
    faintInk: "CanvasText",
    grid: "Canvas",
    band: "Canvas",
    bandEdge: "CanvasText",
    watch: "Canvas",
    event: "CanvasText",
    input: "LinkText",
    runoff: "CanvasText",
  },
};
