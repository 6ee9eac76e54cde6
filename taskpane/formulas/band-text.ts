import { type Band, isOwnBand } from "../../src/index";

/** The band as a worksheet function takes it: the medium's name, or the grower's own four limits. */
export const bandText = ({ medium, feeder, ph, ec, source }: Band): string =>
  medium === undefined || isOwnBand({ source }) ? `{${[...ph, ...ec].join(",")}}` : `"${medium}, ${feeder ?? "medium"}"`;
