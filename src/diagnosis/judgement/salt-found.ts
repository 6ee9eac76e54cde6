import { type Urgency } from "./words";

/** How much salt there is, and how sure that is. */
export interface SaltFound {
  /** `little`: weak waterings do; `strong`: a flush today; `extreme`: an emergency. */
  readonly degree: "none" | "little" | "strong" | "extreme";
  /** `once`: a single reading that nothing agrees with yet. */
  readonly sure: "named" | "sole" | "once";
  /** In upper limits. */
  readonly multiple: number;
  readonly far: boolean;
  /** Runoff over feed, where a feed was measured. */
  readonly ratio: number | undefined;
  /** High and steady for long, with clean new growth. */
  readonly harmlessSoFar: boolean;
  /** It falls from sample to sample by more than the meter can be off: what is being done works. */
  readonly falling: boolean;
  /** Strong feed on purpose, and the drain keeps its distance to it. */
  readonly chosen: boolean;
  readonly urgency: Urgency;
}

export const noSalt: SaltFound = {
  degree: "none",
  sure: "named",
  multiple: 0,
  far: false,
  ratio: undefined,
  harmlessSoFar: false,
  falling: false,
  chosen: false,
  urgency: "none",
};
