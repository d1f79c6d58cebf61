/** Less than this is rounding: neither a shortage nor a gain. */
export const leastMl = 20
