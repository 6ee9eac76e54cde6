import { existsSync } from "node:fs";
import path from "node:path";

/** The project's own folder, the first one upwards with a package.json: a bundled program does not lie where its source does. */
export const projectRoot = upwards(import.meta.dirname);

function upwards(folder: string): string {
  const above = path.dirname(folder);
  return above === folder || existsSync(path.join(folder, "package.json")) ? folder : upwards(above);
}
