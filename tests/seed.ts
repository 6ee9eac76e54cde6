import fc from "fast-check";
import { isSearch, times } from "./laws/times";

/** One seed, so that a suite is green or red for its code and not for its luck; `npm run laws` draws new ones. */
const seed = 20_260_513;

fc.configureGlobal({ ...times(100), ...(isSearch ? {} : { seed }) });
