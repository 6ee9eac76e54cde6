import { type CourseStep } from "./pot-judgement";

/** What stands over a step: what to do and when. "measure again, 24 h after": the act's own "now" is not always so. */
export const stepHeading = ({ act, when }: CourseStep): string => `${act.replace(/ now$/, "")}, ${when}`;
