import { type LogEventKind } from "../log";

/**
 * What in a note says that something was done to the pot. A word of `alone` says it by itself; otherwise a word of
 * `thing` and a word of `done` must stand in one clause, or the clause holds the `phrase`. Common practice, no source.
 */
export interface EventWords {
  readonly kind: LogEventKind;
  readonly alone?: RegExp;
  readonly thing?: RegExp;
  readonly done?: RegExp;
  readonly phrase?: RegExp;
}

const changed =
  /^(?:chang(?:e|ed|ing)|switch(?:ed)?|swapp?(?:ed)?|new|rais(?:ed?|ing)|lower(?:ed|ing)?|reduc(?:ed?|ing)|increas(?:ed?|ing)|cut|doubled|halved|adjusted|moved|geandert|gewechselt|neue?r?|gesenkt|erhoht|cambi(?:o|ado|e)|nuev[oa]|change|nouvelle|gewijzigd|verlaagd|verhoogd|nieuwe?)$/;

export const eventWords: readonly EventWords[] = [
  {
    kind: "flush",
    alone:
      /^(?:flush(?:ed|es|ing)?|leached|leaching|rinsed?|gespult|gespuelt|spulung|lavado|lave|enjuagado|rincage|rince|gespoeld|doorgespoeld)$/,
    phrase: /\bportion\b/,
  },
  { kind: "pH reset", phrase: /\bph (?:reset|rinse|flush)\b|\breset (?:the )?ph\b|\brins(?:ed|ing) for (?:the )?ph\b/ },
  { kind: "drench", alone: /^(?:drench(?:ed)?)$/ },
  {
    kind: "feed change",
    thing:
      /^(?:feed|nutrients?|nutes|fertili[sz]er|reservoir|recipe|stock|dunger|duenger|nahrlosung|abono|nutrientes|engrais|voeding)$/,
    done: new RegExp(`${changed.source}|^(?:half|quarter|full|stronger|weaker|bloom|mixed)$`),
  },
  {
    kind: "plain water",
    phrase:
      /\b(?:plain|only|just|tap|rain|clear|pure|well|ro|osmosis|irrigation|distilled) (?:tap )?water\b(?! (?:has |is |at |with )?(?:alk|hardness|hard\b|soft\b|ph\b|ec\b|caco3|test|report|analysis|sample|quality|source))|\bwater only\b|\b(?:klares|nur) wasser\b|\bagua sola\b|\beau (?:claire|pure)\b|\balleen water\b/,
  },
  { kind: "tank diluted", alone: /^(?:diluted|thinned|verdunnt|diluido|verdund)$/ },
  {
    kind: "tank changed",
    thing: /^(?:tank|reservoir|res|tanque|deposito|cuve)$/,
    done: /^(?:chang(?:e|ed|ing)|new|fresh|dump(?:ed)?|empti(?:ed)|drained|refilled|mixed|gewechselt|neuer?|cambiado|nuevo|changee?|gewisseld|nieuwe?)$/,
  },
  {
    kind: "topped up",
    phrase: /\btopp?(?:ed|ing)? (?:up|off)\b|\b(?:nachgefullt|aufgefullt|rellenado|bijgevuld|aangevuld)\b/,
  },
  {
    kind: "calibration",
    phrase: /\b(?:check|test|verif)\w*\b.*\b(?:standards?|buffers?|puffer|tampon|ijkvloeistof)\b/,
    alone:
      /^(?:re)?(?:calibrat(?:ed|ion|ing)|kalibriert|kalibrierung|calibrado|calibracion|etalonn(?:e|age)|gekalibreerd|geijkt)$/,
  },
  {
    kind: "repotting",
    alone:
      /^(?:repot(?:ted|ting)?|uppot(?:ted)?|transplant(?:ed|ing)?|umgetopft|trasplantado|trasplante|rempote|rempotage|verpot)$/,
  },
  {
    kind: "light change",
    alone: /^(?:dimmed)$/,
    thing: /^(?:lights?|lamps?|leds?|licht|lampen?|luz|luces|lampara|lumiere|lampe)$/,
    done: new RegExp(`${changed.source}|^(?:dim|dimmed|up|down|hung|weggehangt)$`),
  },
  {
    kind: "foliar spray",
    alone: /^(?:sprayed|foliar|bespruht|gespritzt|pulverizad[oa]|pulverise|bespoten)$/,
    phrase: /\bspray(?:ing)? (?:the |on (?:the )?)?(?:leaves|leaf|foliage|plants?)\b/,
  },
];

/** What a medium was soaked in, and distilled water that a sample was taken with, was not what the pot was given. */
export const waterElsewhere =
  /\b(?:soaked|hydrated|expanded|eingeweicht|remojad[oa]s?|trempee?s?|geweekt) (?:in|with|en|dans) (?:[a-z]+ ){0,2}(?:water|wasser|agua|eau)\b|\b(?:pour ?-?through|extract|1:2)\b.*\bdistilled water\b|\bdistilled water\b.*\b(?:pour ?-?through|extract|1:2)\b/;

/** Shortly before the word, or as the answer after it, these say that it was not done. */
export const notDone =
  /^(?:no|not|never|without|didnt|dont|wont|isnt|wasnt|hasnt|havent|skip|skipped|skipping|avoid|instead|kein|keine|keinen|nicht|ohne|sin|pas|sans|geen|niet|zonder|nunca)$/;

/** In the same clause, these say that it is still to come, or was another day. */
export const notToday =
  /^(?:tomorrow|will|should|shall|need|needs|must|plan|planned|planning|todo|maybe|might|consider|considering|if|due|soon|later|want|next|going|before|until|after|since|post|pre|last|yesterday|ago|previous|unless|when|ready|time|overdue|forgot|forgotten|wanted|cancelled|canceled|postponed|delayed|thinking|think|cannot|cant|couldnt|could|would|hope|unable|waiting|morgen|manana|demain|muss|sollte|gestern|ayer|hier|gisteren|nach|vor|despues|apres|avant|na)$/;

/**
 * After the word these belong to its own sentence ("flushed after lunch"), so they speak against it only when they
 * come first.
 */
export const onlyBefore =
  /^(?:before|until|after|since|post|pre|last|previous|when|time|nach|vor|despues|apres|avant|na)$/;

/** Where one statement ends and the next begins. */
export const clauseEnds =
  /[.;,!\n\r()+&]+(?!\d)|\s-\s(?!not\b)|\b(?:and|but|then|so|because|und|aber|dann|y|pero|et|mais|en|maar)\b/;
