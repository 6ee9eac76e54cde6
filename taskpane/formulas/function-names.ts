/** Every worksheet function of the add-in, to know one that has lost its prefix. A test holds the list against functions.json. */
export const functionNames = [
  "ACIDDOSE", "ALKALIDOSE", "BANDLIMIT", "BLENDEC", "BLENDSHARE", "CALDUE", "CATIONS", "DEWPOINT", "DIAGNOSE",
  "DILUTION", "DLI", "DRIFT", "DRIFTALARM", "DRIFTLEFT", "ECAT25", "ECATTEMP", "ECFROMPPM", "ECMETER", "ECUNIT",
  "FEEDGRAMS", "FLUSHLEFT", "FLUSHPLAN", "FLUSHSTOP", "FLUSHVOLUME", "LABELPPM", "LEACHFRACTION", "LEACHNEED",
  "PHBUFFER", "PHPROBE", "PHSHIFT", "PPM", "PPMRESCALE", "RATIOCEILING", "READING", "RECOVERYFEED", "RECOVERYTREND", "ROWFLAG",
  "SALTKEPT", "SALTRATIO", "STOCKDOSE", "SWAPOUT", "UPTAKE", "VPD",
] as const;
