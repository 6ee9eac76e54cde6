import { urgencies, type Urgency } from "./words";

/** The most pressing of several. */
export const mostUrgent = (...given: readonly Urgency[]): Urgency =>
  given.reduce((most, each) => (urgencies.indexOf(each) > urgencies.indexOf(most) ? each : most), "none");
