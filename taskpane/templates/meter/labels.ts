import { sheetTitles } from "../titles";

/** The words beside the boxes of the meter sheet. */
export const meterLabels = {
  title: sheetTitles.meter,
  probe: "pH pen",
  meter: "EC meter",
  next: "Next calibration",
  note: "Write into the log's notes",
  every: "Calibrate every (days)",
  shows: "The pH pen shows",
  corrects: "EC meter corrects to 25 C",
  today: "Today",
  record: (number: number): string => `no. ${number}`,
} as const;

/** Half a year of calibrations every fortnight, and a few over. */
export const mostRecords = 16;
