import { holds } from "../formulas/as-entered";
import { isOurs } from "../formulas/repaired";
import { SheetProblem } from "../workbook";
import { type Block, blockAddress, rangeOf } from "./address";
import { addresses, type WrittenCells } from "./done";
import { askLooks, type Dress, dress, type Looks, putLooksBack } from "./looks";
import { wholly } from "./wholly";

/** What is to stand in a place that is empty. */
export interface Filling extends Dress {
  readonly block: Block;
  readonly formulas: readonly (readonly string[])[];
}

/** What goes with it: a Table that has to grow first, and to shrink again. */
export interface Around {
  readonly first: () => void;
  readonly back: (context: Excel.RequestContext) => void;
  /** A Table that grows names its new columns itself, until ours are written: nobody typed those names. */
  readonly namesTops: boolean;
}

/**
 * Fills empty places in one sync, which looks once more whether they are empty: what a person typed there meanwhile is
 * put back as it was.
 *
 * @throws {SheetProblem} `filled` when somebody typed there; else as `wholly`
 */
export async function fillEmpty(
  context: Excel.RequestContext, sheet: Excel.Worksheet, fillings: readonly Filling[], around?: Around,
): Promise<WrittenCells[]> {
  sheet.load("id,name");
  const asked = fillings.map((filling) => askLooks(sheet, filling.block, filling));
  await context.sync();
  const places = fillings.map((filling, i): Place => {
    const looks = asked[i]?.() ?? noLooks;
    // A rule of the person's own stays, and ours is left out.
    return { ...filling, looks, picks: looks.unruled === undefined ? undefined : filling.picks };
  });
  const ranges = (): Excel.Range[] => fillings.map(({ block }) => rangeOf(sheet, block).load("formulas"));
  let [before, after]: Excel.Range[][] = [[], []];
  const write = (): void => {
    before = ranges();
    around?.first();
    for (const place of places) {
      rangeOf(sheet, place.block).formulas = place.formulas as string[][];
      dress(sheet, place.block, place);
    }
    after = ranges();
  };
  const { id, name } = sheet;
  await wholly(context, {
    where: `${addresses(fillings)} of ${name}`,
    write,
    putBack: (again) => emptied(again, id, places, around),
  });
  const seen = (before ?? []).map(({ formulas }) => formulas as unknown[][]);
  await assertNobodyTyped(context, { sheet, places, around }, seen);
  return places.map(({ block, looks, numberFormat, boldTop, picks }, i) => ({
    block,
    looks: { before: looks, after: { numberFormat, boldTop, picks } },
    before: seen[i] ?? [],
    after: (after?.[i]?.formulas ?? []) as unknown[][],
  }));
}

type Place = Filling & { readonly looks: Looks };
const noLooks: Looks = { numberFormat: [], bold: [], widths: [] };

/** Empties what holds something of ours, and nothing else; the looks as before. */
async function emptied(
  context: Excel.RequestContext,
  sheetId: string,
  places: readonly Place[],
  around?: Around,
): Promise<void> {
  const sheet = context.workbook.worksheets.getItem(sheetId);
  const now = places.map(({ block }) => rangeOf(sheet, block).load("formulas"));
  around?.back(context);
  await context.sync();
  for (const [i, { block, formulas, looks }] of places.entries()) {
    const kept = (now[i]?.formulas as unknown[][]).map((line, row) =>
      line.map((cell, column) =>
        (row === 0 && around?.namesTops === true) || isOurs(cell) || holds(cell, formulas[row]?.[column] ?? "")
          ? ""
          : cell,
      ),
    );
    rangeOf(sheet, block).formulas = kept;
    putLooksBack(sheet, block, looks);
  }
  await context.sync();
}

interface Filled {
  readonly sheet: Excel.Worksheet;
  readonly places: readonly Place[];
  readonly around: Around | undefined;
}

async function assertNobodyTyped(
  context: Excel.RequestContext,
  { sheet, places, around }: Filled,
  seen: readonly unknown[][][],
): Promise<void> {
  const typed = places.filter((_, i) => seen[i]?.some((line) => line.some((cell) => cell !== "")));
  const [first] = typed;
  if (first === undefined) return;
  around?.back(context);
  for (const [i, { block, looks }] of places.entries()) {
    rangeOf(sheet, block).formulas = seen[i] ?? [];
    putLooksBack(sheet, block, looks);
  }
  await context.sync();
  throw new SheetProblem(
    "filled",
    `Somebody typed into ${blockAddress(first.block)} meanwhile: what stands there stays, and nothing else was written.`,
  );
}
