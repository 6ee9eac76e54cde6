/**
 * Every worksheet function with its arguments in order, the optional ones in brackets. Workbooks keep them for years: a line may be
 * added, or an optional argument at a line's end; none may change or go.
 */
export const catalogue: Readonly<Record<string, string>> = {
  // Log: what a cell of it says
  READING: "cell, unit",
  // Readings: can I trust them, and on which scale are they
  ECAT25: "ec, temp_c, [percent_per_c]",
  ECATTEMP: "ec25, temp_c, [percent_per_c]",
  ECUNIT: "value, from, to",
  ALKUNIT: "value, from, to",
  PPM: "ec, scale",
  ECFROMPPM: "ppm, scale",
  PPMRESCALE: "ppm, from_scale, to_scale",
  PHBUFFER: "buffer, temp_c",
  PHPROBE: "buffer_a, mv_a, buffer_b, mv_b, temp_c, [part], [explain]",
  ECMETER: "shown, standard_ec25, temp_c, [compensating], [explain]",
  CALDUE: "last_date, every_days, today",
  // Diagnosis: salt, pH, both, neither
  SALTRATIO: "runoff_ec, input_ec",
  PHSHIFT: "runoff_ph, input_ph",
  LEACHFRACTION: "runoff_volume, input_volume",
  RATIOCEILING: "leaching_fraction",
  SALTKEPT: "input_ec, input_litres, runoff_ec, runoff_litres, [scale]",
  BANDLIMIT: "band, limit",
  ROWFLAG: "input_ph, input_ec, runoff_ph, runoff_ec, band, [ratio_limit]",
  DIAGNOSE: "input_ph, input_ec, runoff_ph, runoff_ec, band, [leaching_fraction], [explain], [dates], [input_litres], [runoff_litres], [notes]",
  WHICHFIRST: "vessels, dates, input_ph, input_ec, runoff_ph, runoff_ec, band, [input_litres], [runoff_litres], [notes]",
  DRIFT: "dates, values",
  DRIFTLEFT: "dates, values, low, high",
  DRIFTALARM: "values, [baseline_count], [explain]",
  // Flush: how much, when to stop
  FLUSHVOLUME: "container_litres, runoff_ec, target_ec, water_ec, medium, [explain]",
  FLUSHPLAN: "container_litres, runoff_ec, target_ec, water_ec, medium, [portion_share]",
  FLUSHSTOP: "runoff_ph, runoff_ec, band, [litres_poured], [container_litres], [explain]",
  FLUSHLEFT: "litres_poured, runoff_ec, target_ec, water_ec, [explain]",
  LEACHNEED: "input_ec, tolerated_ece",
  ACIDDOSE: "litres, alkalinity, ph_now, ph_target, acid, percent_strength, [explain]",
  ALKALIDOSE: "litres, alkalinity, ph_now, ph_target, base, [explain]",
  // Mix: the recovery feed
  DILUTION: "litres, ec_now, ec_target, water_ec",
  SWAPOUT: "litres, ec_now, ec_target, water_ec",
  STOCKDOSE: "litres, ec_target, water_ec, ec_per_ml_per_l",
  BLENDEC: "litres, ecs",
  BLENDSHARE: "ec_a, ec_b, ec_target",
  LABELPPM: "grams_per_litre, percent, analyte",
  FEEDGRAMS: "litres, ppm_target, percent, analyte",
  CATIONS: "k_ppm, ca_ppm, mg_ppm, [explain]",
  RECOVERYFEED: "full_ec, water_ec, days_since_flush, [start_share], [days_to_full]",
  // Recovery and environment
  UPTAKE: "input_litres, runoff_litres, [hours]",
  WATERING: "uptake_litres_a_day, leaching_fraction, [waterings_a_day]",
  RECOVERYTREND: "dates, values, low, high, [explain]",
  VPD: "air_c, humidity_percent, [leaf_c]",
  DEWPOINT: "air_c, humidity_percent",
  DLI: "ppfd, hours",
  LIGHTHOURS: "ppfd, dli",
};
