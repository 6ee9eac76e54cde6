import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

const eventsOf = (note: string): string[] =>
  (readLog({ cells: [["Date", "Runoff EC mS/cm", "Notes"], [45_383, 2.1, note]] }).rows[0]?.events ?? []).map(({ kind }) => kind);

// What a person would say that the note tells of. Common practice, no source.
describe("notes on the plant", () => {
  it.each([
    ["wilting at noon though the pot is heavy", ["wilting", "heavy pot"]],
    ["leaves limp", ["wilting"]],
    ["leaves droop, pots heavy", ["drooping", "heavy pot"]],
    ["tips burnt", ["tip burn"]],
    ["leaf-tips burnt", ["tip burn"]],
    ["new-growth clean", ["clean new growth"]],
    ["edges of old leaves brown", ["tip burn"]],
    ["bronze spots on the lower leaves", ["leaf spots"]],
    ["youngest leaves yellow between green veins", ["interveinal yellowing", "pale new growth"]],
    ["youngest leaves yellow-green", ["pale new growth"]],
    ["lower leaves yellow", ["pale old leaves"]],
    ["stunted, yellow", ["stunted", "pale leaves"]],
    ["roots stubby and dark", ["brown roots"]],
    ["new roots white", ["clean new growth"]],
    ["new growth clean", ["clean new growth"]],
    ["not drinking", ["not drinking"]],
    ["drinks much less", ["not drinking"]],
    ["dry again by evening", ["light pot"]],
    ["crust on the surface", ["crust"]],
    ["hardly any runoff", ["little drain"]],
    ["leaves hang a bit", ["drooping"]],
    ["tray always full of drain water", ["heavy pot"]],
    ["pot stands in water", ["heavy pot"]],
    ["white powder on the leaves", ["leaf spots"]],
    ["dripper blocked again", ["dripper blocked"]],
    ["new leaves tiny and twisted", ["twisted growth"]],
    ["tied with twisted wire", []],
    ["water stands on top", ["heavy pot"]],
    ["papery blotches on the leaves", ["leaf spots"]],
    ["saucer stays dry", ["little drain"]],
    ["barely drained", ["little drain"]],
    ["no runoff measured", []],
    ["no problem with the drain", []],
    ["doesn't drain well", []],
    ["read with the yellow pen", []],
    ["moved to the brown pot", []],
    ["yellow sticker on the tray, leaves yellow", ["pale leaves"]],
    ["old tips still brown; new growth clean", ["clean new growth"]],
    ["old tips still brown", ["tip burn"]],
    ["tips of new leaves brown; growth good otherwise", ["tip burn", "clean new growth"]],
    ["mix holds slow-release fertiliser", ["slow-release mixed in"]],
    ["top-dressed slow-release granules", ["slow-release on top"]],
    ["no new growth", ["stunted"]],
    ["Pflanze welkt", ["wilting"]],
    ["Blattspitzen braun", ["tip burn"]],
    ["hojas amarillas", ["pale leaves"]],
  ])("%s tells of %j", (note, kinds) => {
    expect(eventsOf(note)).toEqual(kinds);
  });

  it.each(["no wilting", "not wilting today", "wilted yesterday", "wilting?", "no tip burn", "light green leaves", "new leaves", "no crust", "let it dry back"])(
    "%s tells of nothing seen",
    (note) => {
      expect(eventsOf(note)).toEqual([]);
    },
  );

  it.each([
    ["topped up with feed", ["topped up"]],
    ["EC meter checked in 1413 standard", ["calibration"]],
    ["new tank mixed in the evening", ["tank changed"]],
    ["plain tap water only", ["plain water"]],
    ["portion 2 of 4", ["flush"]],
    ["pH reset with weak feed", ["pH reset"]],
  ])("%s tells of what was done: %j", (note, kinds) => {
    expect(eventsOf(note)).toEqual(kinds);
  });
});
