/** The first date that a zip can hold, in local time as zips have it: the same files give the same bytes. */
export const ZIP_DATE = new Date(1980, 0, 1);
