/** What follows from the moves, and is worked out from them again wherever a book comes from. */
export const derivedTables: ReadonlySet<string> = new Set([
  'pantry_lot',
  'bottle_lot',
  'bottle_place',
])
