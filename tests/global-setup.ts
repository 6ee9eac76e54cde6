import { buildIfStale } from "../workbench/build-if-stale";
import { buildWorkbenchIfStale } from "../workbench/build";

/** Tests run on the built bundle and the built workbench, so that what they check is what would be loaded. */
export default async function setup(): Promise<void> {
  await buildIfStale();
  await buildWorkbenchIfStale();
}
