import { ecText, percentText, phText } from "./figures";

export const plantSays = {
  carryOn: "Nothing to mend. Carry on as you are.",
  keepShare: (share: number): string =>
    `Nothing to mend. Keep ${percentText(share)} running off and carry on as you are.`,
  chosenFeed: (ec: number, long: string, [low, high]: readonly [number, number]): string =>
    `Carry on. The feed has stood at ${ecText(ec)} for ${long}: a strong feed by choice. ` +
    `Limits of your own fit it better, runoff EC ${low} to ${high}: the log is then held against those.`,
  lookAt: (words: string): string =>
    `The readings do not explain the plant${words === "" ? "" : ` (${words})`}: look at the roots, at water, temperature and pests.`,
  noCalcium: (words: string): string =>
    `Fruit that rots at its end${words === "" ? "" : ` (${words})`} gets too little calcium, which EC and pH cannot show: water evenly, never dry and never soaked, and let no salt build up. ` +
    "Check that the feed holds calcium; coir that was never buffered keeps it back. A stronger feed makes it worse.",
  lookAtRoots: (words: string): string =>
    `Look at the plant and its roots${words === "" ? "" : ` (${words})`}: dark, stubby roots cannot take up what is given.`,
  rootsRot: (words: string, isTank: boolean): string =>
    `Roots that are slimy, soft or smell are rotting${words === "" ? "" : ` (${words})`}: set the plant apart, cut away with a clean blade what is dead, ` +
    `${isTank ? "see that air bubbles at the roots and the water stays at 18 to 22 C" : "let in air, and pour no more than it drinks"}. ` +
    (/crown/i.test(words)
      ? "A crown that is brown inside does not recover: take that plant out, and look at its neighbours. "
      : "") +
    "No stronger feed. Clean what touched it before the next plant; if it spreads, have a plant clinic name the disease.",
  twisted: (words: string): string =>
    `New leaves that twist or harden at good readings${words === "" ? "" : ` (${words})`}: look at the growing tips with a lens for mites too small for the eye, and think of a spray that drifted. Treat by the label; feed and water stay as they are.`,
  metalExcess: (words: string, ph: number): string =>
    `Specks and burnt edges${words === "" ? "" : ` (${words})`} at ${phText(ph)} are iron and manganese taken up in excess: the pH is what is mended. Look at the roots too. No iron in the feed meanwhile; spoiled leaves do not mend.`,
  heavyAfterFlush:
    "Flushed a day or two ago and still heavy: the roots lack air, and a plant hangs a little then. No water until the pot is clearly lighter.",
  saltShy: (crop: string): string =>
    `The notes name ${crop}, which is salt-shy: hold it against the light feeder's limits (choose "light") and look at its leaf edges.`,
  easeLoad: (vpd: number | undefined): string =>
    "Ask less of the leaves while the roots are in trouble: about a third less light a day for 3 to 4 days (LIGHTHOURS), no heat peaks, air that moves, " +
    (vpd === undefined
      ? "a moderate vapour pressure deficit, 0.5 to 1 kPa."
      : `and the vapour pressure deficit, ${vpd.toFixed(1)} kPa at the last reading, between 0.5 and 1 kPa.`),
  rootsCold: (celsius: number): string =>
    `The roots stand at ${celsius.toFixed(0)} C: below about 15 C they take up little, phosphorus least (purple leaves). Warm them to 18 to 22 C; no extra feed.`,
  rootsHot: (celsius: number, atMost: number): string =>
    `The roots stand at ${celsius.toFixed(0)} C: above about ${atMost} C water holds little air and roots begin to rot. Cool and shade pot or tank to 18 to 22 C, and move air or water.`,
  airHot: (celsius: number, vpd: number | undefined): string =>
    `The air stood at ${celsius.toFixed(0)} C${vpd === undefined ? "" : `, a vapour pressure deficit of ${vpd.toFixed(1)} kPa`}: leaves lose more than roots can bring, and droop by day. ` +
    "Cool, shade, move and moisten the air; look again in the cool of the night. A plant that stands up then has nothing wrong at its roots.",
  sprayed: (words: string): string =>
    `The leaves were sprayed${words === "" ? "" : ` (${words})`}: spots and burnt edges that follow a spray come from it, most of all in strong light. The readings are good; watch the leaves that grow now.`,
  pests: (words: string): string =>
    `The notes tell of pests (${words}): look under the leaves with a lens, and treat by the label. The readings are good; nothing at the roots is to be changed.`,
  ironLocked: (words: string, ph: number): string =>
    `Young leaves that pale${words === "" ? "" : ` (${words})`} at ${phText(ph)} lack iron, which is there and locked up: the pH is what is mended. Look at the roots too: dark ones take up none at any pH. A chelate made for a high pH helps them meanwhile, by its label; more feed does not.`,
  potKeepsPh: (poured: number, times: number): string =>
    `What is poured stands at ${phText(poured)}, and the pot has kept its own pH ${times} times: leave it. ` +
    "Have the water's alkalinity measured; above 150 mg/L CaCO3 it pushes the pH up in the end.",
  rewet:
    "The pot is dry: re-wet it slowly with weak feed, a little every 15 minutes, wait an hour, then read. A dry pot reads too high.",
} as const;
