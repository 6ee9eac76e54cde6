// The words of a judgement, in the order in which they are listed. Workbooks and scripts test them: they are never
// renamed.

export const verdictWords = [
  "in band",
  "salt buildup",
  "pH out of range",
  "salt buildup and pH out of range",
  "short of feed",
  "too much water",
  "confirm with a second reading",
  "check the meter",
  "cannot say",
] as const;
export type VerdictWord = (typeof verdictWords)[number];

/** How soon something is to be done, least first. */
export const urgencies = ["none", "watch", "next watering", "today", "now"] as const;
export type Urgency = (typeof urgencies)[number];

export const phases = ["quiet", "flushing", "after a flush"] as const;
export type Phase = (typeof phases)[number];

/** Why, as far as the readings tell. */
export const causeWords = [
  "feed too strong",
  "feed mixed wrong",
  "water itself salty",
  "slow-release in the medium",
  "too little runoff",
  "too little water",
  "input pH out of band",
  "alkalinity suspected",
  "acid feed suspected",
  "too much water",
  "washed out",
  "rebound after a flush",
  "meter doubted",
  "plants drink more water than salt",
  "plants take more salt than water",
  "not known",
] as const;
export type Cause = (typeof causeWords)[number];

/** What a person can be told to do. */
export const actWords = [
  "carry on",
  "measure again now",
  "check the meter",
  "flush",
  "go on flushing",
  "stop flushing",
  "feed by the ramp",
  "lower the feed",
  "raise the feed",
  "let more run off",
  "water less",
  "water more often",
  "mend the input pH",
  "treat the alkalinity",
  "steer the pH",
  "reset the pH",
  "dilute the tank",
  "change the tank",
  "test the medium",
  "look at the plant",
  "ease the load",
  "repot",
  "take off what lies on top",
  "re-wet slowly",
] as const;
export type Act = (typeof actWords)[number];

export const whenWords = [
  "now",
  "within the hour",
  "at the next watering",
  "24 h after",
  "48 h after",
  "in 3 to 7 days",
  "in a week",
] as const;
export type When = (typeof whenWords)[number];
