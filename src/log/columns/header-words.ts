/**
 * The words over a column, lower case and without accents: English, German, Dutch, French, Spanish, Italian, Portuguese
 * and Polish where a word means one thing only; a word of any other language is asked about. Common practice, no
 * source.
 */

const words = (...lines: readonly string[]): readonly string[] => lines.flatMap((line) => line.split(" "));

/** What a word over a column speaks of. */
export const headerWords = {
  ec: words(
    "ec ecs conductivity cond leitfahigkeit leitfaehigkeit leitwert ce conductividad conductivite geleidbaarheid",
    "conducibilita conduttivita condutividade przewodnosc",
  ),
  /** Conductivity factor: ten times mS/cm. */
  cf: words("cf"),
  ph: words("ph phs"),
  tds: words("tds"),
  temperature: words(
    "t temp temps temperature temperatures temperatur temperatura temperatuur temperaturen temperaturas",
  ),
  humidity: words(
    "rh humidity hum luftfeuchte luftfeuchtigkeit feuchte feuchtigkeit humedad humidite luchtvochtigheid rlf rv hr",
    "umidita umidade humidade wilgotnosc ur",
  ),
  volume: words(
    "volume volumes vol vols amount amounts quantity qty menge volumen cantidad quantite hoeveelheid quantita quantidade",
    "objetosc ilosc",
  ),
  date: words("date dates day datum fecha dia jour dag datetime timestamp data giorno dzien tag"),
  time: words("time times clock hour uhrzeit zeit hora heure tijd ora orario godzina godz"),
  vessel: words(
    "pot plant vessel container bucket planter bag topf pflanze kubel kuebel eimer maceta planta plante emmer",
    "vaso pianta doniczka roslina bed bench tray",
  ),
  /** Several of them: over figures it is a count. */
  several: words(
    "pots plants beds buckets bags pflanzen macetas plantas plantes planten vasi piante rosliny doniczki heads",
  ),
  number: words("no nr number numbers num anzahl aantal nombre numero numeros liczba quantidade"),
  person: words("by person operator staff grower initials signed reader observer"),
  /** The day on which the reading itself was taken. */
  readingDay: words(
    "read reading measured measurement sampled sample logged recorded tested gemessen messdatum meetdatum",
  ),
  /** The day of something else. */
  otherDay: words(
    "sowing sown seeded planting planted transplant transplanted transplanting potted repotted start started end ended finish",
    "harvest harvested calibration calibrated cal flush flushed last next due expiry expires expected germination born aussaat",
    "gesat gepflanzt ernte siembra semis recolte zaai oogst semina raccolta",
  ),
  /** Tells rows apart only where the log needs it: a kind of plant, or where it stands. */
  place: words(
    "strain variety varieties cultivar crop crops species site tent bay zone line lines spot location position where label",
    "id house greenhouse compartment section block table shelf sorte art kultur ort platz reihe haus abteil variedad",
    "cultivo sitio zona carpa nave lugar variete culture emplacement serre ras gewas plek kas afdeling varieta coltura serra",
    "posto variedade estufa local odmiana uprawa miejsce namiot rzad row rack room",
  ),
  medium: words(
    "medium media substrate substrat sustrato substraat soil slab slabs rootzone root roots substrato podloze matte bag",
    "coir peat",
  ),
  /** How the plant looks, by the grower's own scale of 0 to 3. */
  newGrowth: words("newgrowth neuaustrieb"),
  posture: words("posture turgor wilt wilting droop drooping haltung"),
  symptoms: words("symptom symptoms spread spots burn tipburn chlorosis yellowing necrosis"),
  rootLook: words("rootlook"),
  notes: words(
    "note notes obs seen diary journal comment comments remark remarks observation observations action actions event events activity memo bemerkung",
    "bemerkungen notiz notizen anmerkung anmerkungen kommentar kommentare nota notas observaciones comentario comentarios",
    "remarque remarques commentaire commentaires opmerking opmerkingen notities osservazioni commenti observacoes",
    "comentarios uwagi notatki",
  ),
  input: words(
    "in input inputs inflow influent inlet applied poured zulauf eingang entrada aporte entree apport ingang aanvoer ingresso",
    "apporto doplyw",
  ),
  feed: words(
    "feed feeds feeding fed nutrient nutrients nute nutes fertigation irrigation irrigated water watered watering given drip",
    "dripper dripped drippers solution giesswasser giess giessen gabe nahrlosung naehrloesung wasser dungung tropfer riego",
    "solucion agua gotero goteo arrosage eau goutteur solution gift voeding gietwater gieten druppel druppelwater water",
    "irrigazione fertirrigazione soluzione acqua gocciolatore alimentazione rega alimentacao solucao gotejador podlewanie",
    "pozywka woda kroplownik",
  ),
  tank: words("reservoir res tank mix barrel fass deposito reservorio cuve bac serbatoio vasca tanque zbiornik"),
  /** Among the words of the feed: it may be what was poured, or the water before any feed is in it. */
  anyWater: words("water wasser eau agua acqua woda"),
  /** How full a tank is. */
  level: words("level levels fullstand nivel niveau livello peil poziom"),
  /** What was added to a tank. */
  topUp: words("topup topups refill refilled nachgefullt"),
  runoff: words(
    "runoff runoffs drain drains drained drainage leachate leachates out output outlet outflow effluent collected",
    "pourthrough ablauf auslauf ausgang drainwasser draenage drenaje drenado lixiviado escurrido salida lixiviat sortie",
    "percolat drainwater uitgang afvoer drenaggio scarico percolato lisciviato uscita drenagem saida escorrimento drenaz",
    "wyciek odciek przelew dran draen leaching",
  ),
  air: words(
    "air room ambient tent luft raum raumluft aire ambiente ambiant salle lucht kamer aria ar powietrze sala klima climate",
  ),
  /** Measured in the plant, or where the pot is not. */
  elsewhere: words(
    "leaf leaves foliar canopy outside outdoor blatt hoja feuille blad sap xylem petiole tissue plantsap bladsap foglia folha",
    "lisc aussen buiten",
  ),
  /** A sample of the medium with water added: it has limits of its own. */
  extract: words(
    "extract extracted extraction saturated sme slurry paste extrakt extracto extrait extractie estratto extrato",
  ),
  /** Taken from the medium in another way than by running off. */
  method: words("press pressed squeeze spw suspension pore porewater bulk presswasser"),
  /** Water before any feed is in it. */
  sourceWater: words(
    "tap base source ro osmosis mains rain rainwater leitungswasser well borehole bore city makeup background plain",
    "regenwasser brunnenwasser brunnen grondwater regenwater kraanwater pozo lluvia robinet pluie forage rubinetto pozzo",
    "pioggia poco chuva kranowka studnia deszczowka butt raw",
  ),
  uncompensated: words("uncompensated uncorrected raw"),
  /** Which meter, not which water. */
  device: words(
    "sensor sensors probe probes pen meter meters device logger handheld instrument electrode sonde messgerat medidor sensore",
    "capteur czujnik channel ch port",
  ),
  /** Before or after something: only its keeper knows which of the two the pot got. */
  partOfDay: words(
    "morning midday noon afternoon evening night am pm morgen morgens mittag mittags abend abends nachmittag matin midi soir",
    "manana tarde noche ochtend middag avond mattina sera manha noite rano wieczor",
  ),
  moment: words("after before post pre nach vor apres avant despues antes dopo prima depois po przed na voor"),
  filler: words(
    "total totals daily of the at per each reading readings value values measured today the and from my del de la il do da",
    "des du van von der scale ppm heute ist gemessen measurement measurements level unit units electrical elektrische",
    "electrica electrique elektrische eletrica elettrica relative relativ relativa relative rel solucao is on for",
  ),
  noReading: words(
    "target targets goal aim ratio difference diff delta \u03b4 change min max minimum maximum limit limits average avg mean",
    "median sum shift vpd deficit setpoint set setpt desired want wanted wish ideal optimum optimal recommended guideline",
    "planned plan expected predicted forecast estimate estimated est calc calculated recipe threshold alarm tolerance",
    "previous yesterday last error accuracy correction factor upper lower low high rise increase gain drop",
    "fall loss decrease deviation stdev std sd height weight size count age stage week weeks woche semana semaine dose dosing",
    "slope offset fraction uptake stock concentrate cal calibration buffer standard flag status trend up down dew dewpoint",
    "bulb soll sollwert ziel zielwert grenze grenzwert differenz defizit objetivo meta consigna limite diferencia consigne",
    "cible objectif difference doel streef streefwaarde limiet verschil gestern obiettivo differenza alvo diferenca cel",
    "roznica zadana absolute abs saturation battery voltage signal rssi pressure flow rate minutes shots shot pulses",
    "acid absolut maximo minimo massimo moyenne media promedio mittelwert gemiddelde gemiddeld srednia",
  ),
  /** One element or ion: a laboratory's figure, never a conductivity. */
  element: words(
    "n p k ca mg s na cl fe mn zn cu mo si nh calcium magnesium potassium sodium nitrate nitrogen ammonium phosphate",
    "phosphorus chloride sulphate sulfate iron kalium natrium nitrat bicarbonate hco alkalinity hardness oxygen",
  ),
} as const satisfies Record<string, readonly string[]>;

export type Concept = keyof typeof headerWords;
