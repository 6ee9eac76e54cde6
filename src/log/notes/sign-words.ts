import { type LogEventKind } from "../log";

/** What in a statement says that something was seen at the plant or its pot. Common practice, no source. */
export interface SignWords {
  readonly kind: LogEventKind;
  readonly says: RegExp;
  /** Words that give the statement another meaning. */
  readonly unless?: RegExp;
}

const roots = /\b(?:roots?|wurzeln?|raices|racines|wortels?)\b/;
const pale = "(?:pale|yellow\\w*|chloro\\w*|bleached|gelb\\w*|amarill[oa]s?|jaunes?|gele?|bleich\\w*)";
const newest = "(?:new|young\\w*|newest|top|upper|neue\\w*|jungste\\w*|nuevas?|nouvelles?|jonge|nieuwe)";
const oldest = "(?:old\\w*|lower|bottom|untere\\w*|alte\\w*|viejas|inferiores|vieilles|oude|onderste)";
const brown =
  "(?:burn\\w*|brown\\w*|scorch\\w*|necro\\w*|crisp\\w*|dead|braun|verbrannt\\w*|quemad\\w*|marron\\w*|brule\\w*|brunes?|verbrand\\w*|bruine?)";
const rim = "(?:tips?|edges?|margins?|blattspitzen|blattrand\\w*|puntas|bordes|pointes|bords|bladpunten|bladrand\\w*)";
const pot = "(?:pots?|containers?|slabs?|bags?|topf\\w*|macetas?|medium|substrate)";

/** Both words in one statement, in either order. */
const both = (first: string, second: string): RegExp =>
  new RegExp(`\\b${first}\\b.*\\b${second}\\b|\\b${second}\\b.*\\b${first}\\b`);

/** The colour of a thing at the bench, which says nothing of the plant: "the yellow pen". */
export const colouredThing =
  /\b(?:yellow|gelbe\w*|purple|brown|white|black|red|green|blue|pink|pale|dark) (?=(?:pens?|labels?|tags?|stickers?|traps?|cards?|buckets?|pots?|trays?|caps?|tapes?|probes?|meters?|lids?|saucers?|lamps?|lights?|leds?|bottles?|jugs?|cans?|tents?|hoses?)\b)/g;

export const signWords: readonly SignWords[] = [
  {
    kind: "wilting",
    says: /\b(?:wilt\w*|limp|damping off|damped off|(?:fall|falls|falling|fell|fallen|keel(?:s|ed|ing)?|topple[sd]?|toppling) over|flopp\w*|collaps\w*|welk\w*|verwelk\w*|schlaff\w*|marchit\w*|fane\w*|fletri\w*|slap hangend)\b/,
  },
  {
    kind: "drooping",
    says: /\b(?:droop\w*|sagging|leaves (?:\w+ )?hang\w*|hang(?:s|ing)? (?:down|limp)|blatter hangen|hangende? bl\w+|hojas caidas|feuilles (?:re)?tombantes)\b/,
  },
  {
    kind: "not drinking",
    says: /\b(?:not|isnt|hardly|barely|stopped|no longer|doesnt|dont) (?:\w+ )?drink\w*|\bdrink\w* (?:\w+ )?less\b|\buptake (?:is )?(?:down|low|dropped|fell)\b|\btrinkt (?:nicht|kaum|weniger)\b|\bno beben?\b|\bne boit (?:pas|plus)\b|\bdrinkt niet\b/,
  },
  { kind: "tip burn", says: both(rim, brown), unless: roots },
  { kind: "tip burn", says: /\b(?:tip ?burn|leaf burn|leaves burn\w*|scorched leaves|salt burn)\b/ },
  {
    kind: "leaf spots",
    says: /\bwhite powder\b|\bmildew\w*|\b(?:burnt|dead|brown) patches\b|\b(?:spots?|spott(?:y|ed|ing)|speckl\w*|bronz\w*|blotch\w*|flecken|manchas|taches|vlekken)\b.*\b(?:lea\w*|foliage|bl\w+|hojas|feuilles)\b|\b(?:lea\w+|foliage)\b.*\b(?:spots?|spotted|speckl\w*|bronz\w*|blotch\w*)\b/,
  },
  {
    kind: "interveinal yellowing",
    says: /\binter ?veinal\b|\b(?:between|zwischen|entre|tussen) (?:\w+ ){0,2}(?:veins?|blattadern|adern|nervios|venas|nervures|nerven)\b/,
  },
  { kind: "pale new growth", says: both(newest, pale) },
  { kind: "pale old leaves", says: both(oldest, pale) },
  {
    kind: "pale leaves",
    says: new RegExp(`\\b${pale}\\b`),
    unless: new RegExp(`\\b(?:${newest}|${oldest}|veins?|fruits?|flowers?|sticky|traps?)\\b`),
  },
  {
    kind: "purple leaves",
    says: /\b(?:purpl\w*|violett?e?|paarse?)\b/,
    unless: /\b(?:flowers?|fruits?|basil|light)\b/,
  },
  { kind: "dying leaves", says: both("(?:leaf|leaves|plants?)", "(?:dead|dying|dropp\\w*|shed\\w*)") },
  {
    kind: "blossom end rot",
    says: /\b(?:blossom|bottom|end) (?:end )?rot\b|\b(?:black|dark|brown) (?:bottoms?|ends?)\b.*\bfruits?\b|\bfruits?\b.*\b(?:black|dark|brown) (?:bottoms?|ends?)\b|\bblutenendfaule\b/,
  },
  {
    kind: "stunted",
    says: /\b(?:stunt\w*|no new growth|growth (?:has )?stopped|not growing|stopped growing|kummerwuchs|wachst nicht)\b/,
  },
  {
    kind: "clean new growth",
    says: /\b(?:clean|healthy|good|fine|nice|strong|lush)\b.*\b(?:growth|leaf|leaves|tips|shoots|foliage)\b|\b(?:growth|leaf|leaves|tips|shoots|foliage)\b.*\b(?:clean|healthy|good|fine|nice|well)\b|\bplants? (?:\w+ )?(?:fine|well|good|healthy|great)\b|\bdrink(?:s|ing)? well\b|\bwhite roots?\b|\broots? (?:\w+ )?white\b|\bgrow(?:s|ing) well\b|\bno (?:symptoms?|signs?)\b|\bsetting well\b|\b(?:recovered|recovering|perk(?:ed|ing) up|pick(?:s|ed|ing)? up)\b|\bneuer austrieb (?:gesund|sauber|gut)\b|\bcrecimiento nuevo sano\b|\bnouvelles pousses saines\b/,
    unless: new RegExp(`\\b(?:${pale}|light green|burn\\w*)\\b`),
  },
  {
    kind: "brown roots",
    says: /\broots?\b.*\b(?:brown|dark|black|rot\w*|stubby|mushy|slim[ey]\w*|dead|dying)\b|\b(?:brown|dark|black|rott\w+|slimy|dead|dying|stubby) roots?\b|\broot rot\b|\bpythium\b|\bbraune wurzeln\b|\bwurzelfaule\b|\braices (?:marrones|negras)\b|\bracines (?:brunes|noires)\b|\bbruine wortels\b/,
  },
  {
    kind: "bad smell",
    says: /\b(?:smell\w*|stink\w*|odou?r|riecht|huele|odeur|stinkt)\b/,
    unless: /\b(?:fine|fresh|good|earthy|flowers?|no)\b/,
  },
  {
    kind: "pests",
    says: /\b(?:gnats?|aphids?|mites?|thrips|whitefl\w+|spiders?|webs?|webbing|sticky leaves|pests?|mealybugs?|trauermucken|blattlause|plagas?|ravageurs?)\b/,
  },
  {
    kind: "light pot",
    says: new RegExp(
      `\\b${pot}\\b (?:\\w+ ){0,2}(?:light|dry|leicht|trocken|ligera|seca)\\b|\\b(?:light|dry) ${pot}\\b`,
    ),
    unless: /\b(?:though|although|but|dry ?back|dry weight|never|(?:not|isnt) (?:\w+ )?(?:light|dry))\b/,
  },
  {
    kind: "light pot",
    says: /\bdr(?:y|ied)\b(?! ?back)/,
    unless:
      /\b(?:though|although|but|never|(?:not|isnt) (?:\w+ )?dry|dry ?back|dry weight|air|room|humidity|saucer|tray|lea\w+|tips?|edges?|margins?|crisp\w*|fert\w*)\b/,
  },
  {
    kind: "heavy pot",
    says: new RegExp(
      `\\b${pot}\\b (?:\\w+ ){0,2}(?:heavy|wet|soaked|soggy|waterlogged|schwer|nass|pesada)\\b|\\b(?:heavy|wet|soggy|waterlogged) ${pot}\\b|\\b(?:overwater\\w*|waterlogged|soggy|standing water|water (?:\\w+ )?(?:stands?|pools|sits) (?:on|in)|stay(?:s|ing)? wet|(?:tray|saucer)s? (?:\\w+ )?full|${pot} stands? in (?:\\w+ )?water|always wet|never dr(?:y|ies)|though wet|but wet)\\b`,
    ),
  },
  {
    kind: "heavy pot",
    says: /\b(?:algae|algal|moss\w*|algen|moos|algas|musgo|algues|mousse|mos)\b/,
    unless: /\b(?:tank|reservoir|lines?|pipes?|hoses?|peat|sphagnum|extract|seaweed|kelp)\b/,
  },
  {
    kind: "heavy pot",
    says: /\b(?:(?:fungus|sciarid) (?:gnats?|fl(?:y|ies))|trauermucken|sciarides?|rouwmuggen|sodden|squelchy)\b/,
  },
  {
    kind: "little drain",
    says: /\b(?:no|hardly any|barely any|scarcely any|almost no|next to no|very little|little|zero|kein|kaum) (?:drain(?:age)?|run ?off|ablauf|abfluss)\b|\b(?:hardly|barely|scarcely|doesnt|does not|didnt|did not|never) (?:\w+ )?(?:drain\w*|runs? off|ran off)\b|\bnothing (?:\w+ )?(?:drain\w*|runs? off|ran off)\b|\b(?:saucer|tray) (?:\w+ ){0,2}dry\b/,
    unless:
      /\b(?:measur\w*|taken|read\w*|sampl\w*|log\w*|test\w*|ec|ph|data|meter|collect\w*|problems?|issues?|drain\w* (?:well|properly|freely|fast|away|out))\b/,
  },
  {
    kind: "twisted growth",
    says: /\b(?:twist\w*|crinkl\w*|distort\w*|deform\w*|pucker\w*|verkruppelt\w*)\b/,
    unless: /\b(?:wires?|ties?|stems? round|drippers?|lines?|hoses?)\b/,
  },
  {
    kind: "dripper blocked",
    says: /\b(?:drippers?|emitters?|nozzles?|drip lines?|tropfer)\b.*\b(?:block\w*|clog\w*|plugg\w*|stuck|verstopft)\b|\b(?:block|clog|plugg)\w* (?:drippers?|emitters?|nozzles?|drip lines?)\b/,
  },
  { kind: "crust", says: /\b(?:crust\w*|(?:white|salt) deposits?|salzkruste|kruste|costra|croute|korst)\b/ },
];

/** Fertiliser that lies in the pot and gives off salt by itself. */
export const slowRelease =
  /\b(?:(?:slow|controlled|timed?) ?release|crf|prills?|coated fertili[sz]er|fertili[sz]er (?:granules|pellets|spikes|sticks)|langzeitdunger|depotdunger|liberacion lenta|liberation lente|langzaam werkende)\b/;
export const liesOnTop = /\b(?:top ?dress\w*|on top|on the surface|strewn|sprinkled|scattered|obenauf)\b/;
export const isMixedIn =
  /\b(?:incorporated|mixed in\w*|in the (?:mix|medium|soil|substrate|pot)|mix (?:holds|contains|has)|pre ?mixed|blended|untergemischt)\b/;
