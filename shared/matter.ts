/**
 * What the ledger keeps: grams of each kind of matter. Mass is conserved and volume is not
 * (water and spirit contract), so volume is always derived and never stored.
 */
export interface Matter {
  readonly ethanolG: number
  readonly waterG: number
  readonly sugarG: number
  readonly acidG: number
  readonly solublesG: number
  readonly pulpG: number
}

export type MatterKind = keyof Matter

export const matterKinds = [
  'ethanolG',
  'waterG',
  'sugarG',
  'acidG',
  'solublesG',
  'pulpG',
] as const satisfies readonly MatterKind[]

export const noMatter: Matter = Object.freeze({
  ethanolG: 0,
  waterG: 0,
  sugarG: 0,
  acidG: 0,
  solublesG: 0,
  pulpG: 0,
})

function eachKind(amountOf: (kind: MatterKind) => number): Matter {
  return {
    ethanolG: amountOf('ethanolG'),
    waterG: amountOf('waterG'),
    sugarG: amountOf('sugarG'),
    acidG: amountOf('acidG'),
    solublesG: amountOf('solublesG'),
    pulpG: amountOf('pulpG'),
  }
}

/** A matter of the given amounts, the others zero. */
export const matterOf = (amounts: Partial<Matter>): Matter => ({ ...noMatter, ...amounts })

export const addMatter = (a: Matter, b: Matter): Matter => eachKind((kind) => a[kind] + b[kind])

export const subtractMatter = (a: Matter, b: Matter): Matter =>
  eachKind((kind) => a[kind] - b[kind])

export const scaleMatter = (matter: Matter, factor: number): Matter =>
  eachKind((kind) => matter[kind] * factor)

export const sumMatter = (matters: Iterable<Matter>): Matter => {
  let sum = noMatter
  for (const matter of matters) sum = addMatter(sum, matter)
  return sum
}

/** Combines matters kind by kind, for rules that treat each kind by its own law. */
export const mapMatter = (matter: Matter, rule: (amountG: number, kind: MatterKind) => number) =>
  eachKind((kind) => rule(matter[kind], kind))

/** Total mass in grams. */
export const massOf = (matter: Matter): number =>
  matter.ethanolG + matter.waterG + matter.sugarG + matter.acidG + matter.solublesG + matter.pulpG

/**
 * Splits matter into a share and the rest. The rest is found by subtraction, so the two
 * always add up to the whole; a share of 1 takes everything and leaves exact zeros.
 */
export function splitMatter(matter: Matter, share: number): { part: Matter; rest: Matter } {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`share is ${share}, must be 0 to 1`)
  if (share === 1) return { part: matter, rest: noMatter }
  const part = scaleMatter(matter, share)
  return { part, rest: subtractMatter(matter, part) }
}
