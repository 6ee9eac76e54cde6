/** What `load` takes: `"values, address"`, `["values"]` or `{ values: true, format: { fill: { color: true } } }`. */
export type LoadOption = string | readonly string[] | Readonly<Record<string, unknown>>;

/** The property paths that a load option asks for; `all` when it names none. */
export function pathsOf(option: LoadOption | undefined, all: readonly string[]): string[] {
  if (option === undefined || option === "") return [...all];
  if (typeof option === "string") return option.split(",").map((path) => path.trim());
  if (Array.isArray(option)) return (option as string[]).flatMap((path) => pathsOf(path, all));
  return Object.entries(option).flatMap(([name, inner]) => {
    if (name.startsWith("$")) return name === "$all" ? [...all] : [];
    if (inner === true) return [name];
    return typeof inner === "object" && inner !== null ? pathsOf(inner as LoadOption, []).map((path) => `${name}/${path}`) : [];
  });
}
