import path from "node:path";
import fc from "fast-check";
import { expect, it } from "vitest";
import { functionsThroughRuntime } from "../../workbench/host/client/load-client";
import { type BlankDelivery, type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { distFolder, loadBundle } from "../../workbench/host/load-bundle";
import { soundCalls } from "../functions/sound-calls";
import { times } from "./times";

const { host, metadata } = loadBundle();
const runtime = functionsThroughRuntime(path.join(distFolder, "functions.js"));

const oddCell: fc.Arbitrary<CellValue> = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.integer(),
  fc.string(),
  fc.boolean(),
  fc.constantFrom<CellValue>(undefined, "1,8", "n/a", "coir", "peat, heavy", "mS/cm", "TRUE", { error: "#N/A" }, { error: "#VALUE!" }, { error: "#DIV/0!" }),
);

/** An argument that answers, now and then with one of its cells replaced by an odd one, or left out. */
function argument(good: CellValue | readonly CellValue[]): fc.Arbitrary<Matrix | undefined> {
  const sound: CellValue[][] = (Array.isArray(good) ? (good as CellValue[]) : [good]).map((cell) => [cell as CellValue]);
  const odd = fc.tuple(fc.nat({ max: sound.length - 1 }), oddCell).map(([place, cell]) => sound.map((row, i) => (i === place ? [cell] : row)));
  const other = fc.array(fc.array(oddCell, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 4 });
  return fc.oneof({ weight: 6, arbitrary: fc.constant(sound) }, { weight: 2, arbitrary: odd }, { weight: 1, arbitrary: other }, { weight: 1, arbitrary: fc.constant(undefined) });
}

const calls = metadata.functions.map(({ id, parameters }) => fc.record({
  id: fc.constant(id),
  args: fc.tuple(...parameters.map((_, i) => argument(soundCalls[id]?.[i]?.good ?? 1))),
  blank: fc.constantFrom<BlankDelivery>("zero", "null", "empty"),
}));
const callsOfEach = 8;
const wave = fc.tuple(...calls.flatMap((call) => Array.from({ length: callsOfEach }, () => call)));

/** A call travels to the runtime and back as JSON, which knows no -0. */
const travelled = (answer: CellValue[][]): unknown => JSON.parse(JSON.stringify(answer));

it("for every function and any cells, what the host's runtime sends back equals the direct call", async () => {
  await fc.assert(
    fc.asyncProperty(wave, async (asked) => {
      const answers = await runtime.call(asked);
      const direct = asked.map(({ id, args, blank }) => travelled(host.call(id, args, blank)));
      expect(answers).toHaveLength(callsOfEach * metadata.functions.length);
      answers.forEach((answer, i) => { expect(answer, JSON.stringify(asked[i])).toEqual(direct[i]); });
    }),
    times(5),
  );
});
