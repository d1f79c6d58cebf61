/** The kinds that the library knows; a maker's own fruit may be of another. */
export const knownKinds = [
  'berry',
  'stoneFruit',
  'drupe',
  'pome',
  'citrus',
  'hip',
  'stalk',
  'nut',
  'flower',
  'root',
  'spice',
  'dry',
  'dried',
  'other',
] as const
export type KnownKind = (typeof knownKinds)[number]

export const isKnownKind = (kind: string): kind is KnownKind =>
  knownKinds.some((known) => known === kind)
