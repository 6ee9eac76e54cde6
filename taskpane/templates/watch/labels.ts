/** The heading over the days of the looks, on the watch sheet and on the flush sheet. */
export const dayHeading = "Date";
