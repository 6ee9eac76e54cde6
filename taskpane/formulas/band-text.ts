import { type Band } from "../../src/index";

/** The band as a worksheet function takes it: the medium's name, or the grower's own four limits. */
export const bandText = ({ medium, feeder, ph, ec }: Band): string =>
  medium === undefined ? `{${[...ph, ...ec].join(",")}}` : `"${medium}, ${feeder ?? "medium"}"`;
