/**
 * How far a vessel is filled safely, as a share of its volume to the brim: the drawing's tick and
 * the caution must be one line. Room for turning, warmth and foam; common practice, no source.
 */
export const safeFillFraction = 0.95
