import { buildIfStale } from "../tools/build-if-stale";

/** Tests run on the built bundle, so that what they check is what the host would load. */
export default async function setup(): Promise<void> {
  await buildIfStale();
}
