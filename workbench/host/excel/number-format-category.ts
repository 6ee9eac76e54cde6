/** The host's word for the kind of a number format, read from its code. */
export function categoryOf(code: string): string {
  const bare = code.replace(/"[^"]*"|\\./g, "").toLowerCase();
  if (bare === "" || bare === "general") return "General";
  if (bare === "@") return "Text";
  if (/[dy]|mmm/.test(bare)) return "Date";
  if (/[hs]/.test(bare)) return "Time";
  if (bare.includes("%")) return "Percentage";
  if (/e[+-]/.test(bare)) return "Scientific";
  if (/\?\/|\/\?|#\/#/.test(bare)) return "Fraction";
  if (/[$€£¥]/.test(code)) return code.startsWith("_") ? "Accounting" : "Currency";
  return /^[#0,]*\.?0*$/.test(bare) ? "Number" : "Custom";
}
