/** Chance that comes out the same every time: the demo is one story, not a different one a day. */
export interface Noise {
  /** Evenly between two numbers. */
  between: (low: number, high: number) => number
  /** Around zero, bell-shaped enough for an instrument's error. */
  around: (deviation: number) => number
  pick: <T>(list: readonly [T, ...T[]]) => T
  happens: (probability: number) => boolean
}

/** A stream of its own for every name, so that a change in one batch leaves the others as they were. */
export function seededNoise(name: string): Noise {
  let state = hashOf(name)
  // Mulberry32: small, public domain, and good enough for a story.
  const next = () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
  return {
    between: (low, high) => low + (high - low) * next(),
    around: (deviation) => deviation * (next() + next() + next() + next() - 2) * Math.sqrt(3),
    pick: (list) => list[Math.floor(next() * list.length)] ?? list[0],
    happens: (probability) => next() < probability,
  }
}

/** FNV-1a. */
function hashOf(name: string): number {
  let hash = 0x811c9dc5
  for (const character of name)
    hash = Math.imul(hash ^ (character.codePointAt(0) as number), 0x01000193)
  return hash
}
