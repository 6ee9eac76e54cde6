import { type Standing } from "./evidence";
import { type SaltOrigin } from "./salt-origin";
import { type AdviceName } from "./verdict-advice";
import { type VerdictAnswer } from "./verdict-table";

/** What was found on the way to an answer, which decides what to do about it. */
export interface Found {
  readonly ec: Standing;
  readonly ph: Standing;
  readonly origin: SaltOrigin["origin"];
  readonly soil: boolean;
}

/** Which advice goes with a verdict: a flush is named only where it can help, and never for soil in one go. */
export function adviceFor(answer: VerdictAnswer | "cannot say", { ec, ph, origin, soil }: Found): AdviceName {
  const gently = origin === "the feed" || origin === "little leaching";
  switch (answer) {
    case "salt buildup":
      if (origin === "the feed") return "salt from the feed";
      if (origin === "little leaching") return "salt from little leaching";
      return soil ? "salt in soil" : "salt from the pot";
    case "salt buildup and pH out of range":
      return gently ? "salt and pH, no flush yet" : "salt and pH";
    case "cannot say":
      if (ec === "soil unclear" || ph === "soil unclear") return "soil unclear";
      return ec === "low" ? "short of feed" : "measure";
    case "in band":
    case "pH out of range":
    case "confirm with a second reading":
    case "check the meter":
      return answer;
  }
}
