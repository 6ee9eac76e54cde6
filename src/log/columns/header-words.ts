/**
 * The words over a column, lower case and without accents. English first; German, Spanish, French and Dutch where a word
 * means one thing only. Common practice, no source.
 */

/** What a word over a column speaks of. */
export const headerWords = {
  ec: "ec ecs conductivity cond leitfahigkeit leitfaehigkeit leitwert conductividad ce conductivite geleidbaarheid",
  ph: "ph phs",
  tds: "tds",
  temperature: "t temp temps temperature temperatures temperatur temperatura temperatuur",
  humidity: "rh humidity hum luftfeuchte luftfeuchtigkeit feuchte feuchtigkeit humedad humidite luchtvochtigheid rlf rv",
  volume: "volume volumes vol vols amount amounts quantity qty menge volumen cantidad quantite hoeveelheid",
  date: "date dates day datum fecha dia jour dag datetime timestamp",
  time: "time times clock hour uhrzeit zeit hora heure tijd",
  vessel: "pot pots plant plants vessel container bucket planter bag bed beds bench tray topf pflanze kubel eimer maceta planta plante emmer",
  medium: "medium media substrate substrat sustrato substraat soil slab rootzone root roots",
  notes:
    "note notes comment comments remark remarks observation observations action actions event events activity memo bemerkung " +
    "bemerkungen notiz notizen anmerkung anmerkungen kommentar kommentare nota notas observaciones comentario comentarios " +
    "remarque remarques commentaire commentaires opmerking opmerkingen notities",
  input: "in input inputs inflow influent inlet applied poured zulauf eingang entrada aporte entree apport ingang aanvoer",
  feed:
    "feed feeds feeding fed nutrient nutrients nute nutes fertigation irrigation irrigated water watered watering given drip " +
    "dripper solution reservoir res tank giesswasser nahrlosung naehrloesung wasser dungung riego solucion agua arrosage eau " +
    "voeding gietwater",
  tank: "reservoir res tank mix barrel fass deposito reservorio cuve bac",
  runoff:
    "runoff runoffs drain drains drained drainage leachate leachates out output outlet outflow effluent collected pourthrough " +
    "ablauf auslauf ausgang drainwasser drenaje lixiviado salida lixiviat sortie drainwater uitgang afvoer",
  air: "air room ambient tent luft raum raumluft aire ambiente ambiant salle lucht kamer",
  elsewhere: "leaf leaves canopy outside outdoor blatt hoja feuille blad",
  uncompensated: "uncompensated uncorrected raw",
  filler: "total totals daily of the at per each reading readings value values measured",
  noReading:
    "target targets goal aim ratio difference diff delta change min max minimum maximum limit limits average avg mean median " +
    "sum shift vpd deficit setpoint height weight size count age stage week weeks woche semana semaine dose dosing slope offset " +
    "fraction uptake stock concentrate cal calibration buffer standard flag status trend up down dew dewpoint bulb " +
    "tap source ro osmosis mains rain rainwater leitungswasser",
} as const;

export type Concept = keyof typeof headerWords;

/** Words grown together. */
export const compoundWords: Readonly<Record<string, readonly Concept[]>> = {
  ecin: ["ec", "input"],
  inec: ["ec", "input"],
  ecout: ["ec", "runoff"],
  outec: ["ec", "runoff"],
  phin: ["ph", "input"],
  inph: ["ph", "input"],
  phout: ["ph", "runoff"],
  outph: ["ph", "runoff"],
  lufttemperatur: ["air", "temperature"],
  wassertemperatur: ["feed", "temperature"],
  giessmenge: ["feed", "volume"],
  drainmenge: ["runoff", "volume"],
  ablaufmenge: ["runoff", "volume"],
  zulaufmenge: ["input", "volume"],
};
