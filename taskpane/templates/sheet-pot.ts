import { type Feeder, type Medium } from "../../src/index";

/** What is known of the pot that a sheet is made for; what is not known stays an empty box. */
export interface SheetPot {
  readonly name?: string | undefined;
  readonly medium?: Medium | undefined;
  readonly feeder?: Feeder | undefined;
  /** The grower's own limits: pH low, pH high, EC low, EC high. */
  readonly limits?: readonly [number, number, number, number] | undefined;
  /** A sheet date with its time of day. */
  readonly day?: number | undefined;
  /** mS/cm at 25 C, like every EC here. */
  readonly runoffEc?: number | undefined;
  readonly runoffPh?: number | undefined;
  readonly feedEc?: number | undefined;
  readonly feedPh?: number | undefined;
  readonly waterEc?: number | undefined;
  readonly containerLitres?: number | undefined;
  /** What the course says to reach and to pour at. */
  readonly targetEc?: number | undefined;
  readonly pourPh?: number | undefined;
  readonly daysSinceFlush?: number | undefined;
}
