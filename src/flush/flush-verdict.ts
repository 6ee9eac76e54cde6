import { type Judgement } from "../judgement";

/** What to do with the watering can, in the words a sheet keeps. */
export type FlushStop =
  | "keep going"
  | "stop: in band"
  | "stop: no longer falling"
  | "stop: enough water"
  | "pause and measure again";

export type FlushVerdict = Judgement<FlushStop>;
