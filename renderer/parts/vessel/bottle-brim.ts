/** A bottle of a size holds a little more to the brim: 2 to 4 % by common practice. */
const brimPerSize = 1.03

export const bottleBrimMl = (sizeMl: number): number => sizeMl * brimPerSize

/** What stands on the bottle, of one that is drawn to its brim. */
export const bottleSizeMl = (brimMl: number): number => brimMl / brimPerSize
