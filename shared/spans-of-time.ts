/** Lengths of time in milliseconds, for instants kept as numbers. */
export const msPerHour = 3_600_000
export const msPerDay = 24 * msPerHour
