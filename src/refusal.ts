/** Why a formula gave no number. Each code is a promise: what went wrong, and what the person can do next. */
export type RefusalCode =
  | "missing"
  | "not-a-number"
  | "wrong-unit"
  | "impossible"
  | "implausible"
  | "outside-validity"
  | "not-enough-readings"
  | "unknown-choice"
  | "order";

export interface RefusalDetails {
  /** The quantity in words, as the person would say it: "runoff EC". */
  readonly quantity: string;
  /** What came. */
  readonly given?: string | number | undefined;
  /** What is allowed, in words or as a range: "0 to 14". */
  readonly allowed?: string | undefined;
  readonly unit?: string | undefined;
  /** What to do next, when the catalogue's own advice does not fit. */
  readonly next?: string | undefined;
}

/** The quantity, what came and its unit, in that order; what is not known leaves no gap. */
const subject = ({ quantity, given, unit }: RefusalDetails): string =>
  [quantity, given ?? "", unit ?? ""].filter((part) => part !== "").join(" ");

/** The one catalogue of texts: what came, what is allowed, what to do next. */
const catalogue: Record<RefusalCode, (d: RefusalDetails) => readonly [said: string, next: string]> = {
  missing: (d) => [`${d.quantity} is missing`, "measure it, or leave the row empty"],
  "not-a-number": (d) => [`${d.quantity} "${d.given ?? ""}" is not a number`, "type it as a plain number such as 1.8"],
  "wrong-unit": (d) => [
    `${subject(d)} looks like another unit`,
    d.allowed === undefined ? "check the unit" : `expected ${d.allowed}`,
  ],
  impossible: (d) => [
    `${subject(d)} cannot be`,
    d.allowed === undefined ? "check the reading" : `it must be ${d.allowed}`,
  ],
  implausible: (d) => [
    `${subject(d)} is hard to believe`,
    d.allowed === undefined ? "measure again" : `usual is ${d.allowed}; measure again`,
  ],
  "outside-validity": (d) => [
    `${subject(d)} is outside what this formula holds for`,
    d.allowed === undefined ? "no number is given" : `it holds for ${d.allowed}`,
  ],
  "not-enough-readings": (d) => [
    `${d.quantity}: ${d.given ?? 0} ${d.given === 1 ? "reading is" : "readings are"} too few`,
    `at least ${d.allowed ?? "one more"} needed`,
  ],
  "unknown-choice": (d) => [`${d.quantity} "${d.given ?? ""}" is not known`, `choose ${d.allowed ?? "another"}`],
  order: (d) => [`${subject(d)} is out of order`, `it must be ${d.allowed ?? "in order"}`],
};

/** A formula's honest "no": thrown instead of a wrong number, and shown to the person as its message. */
export class Refusal extends Error {
  readonly code: RefusalCode;
  readonly details: RefusalDetails;

  constructor(code: RefusalCode, details: RefusalDetails) {
    const [said, next] = catalogue[code](details);
    super(`${said}: ${details.next ?? next}`);
    this.name = "Refusal";
    this.code = code;
    this.details = details;
  }
}
