/** What goes wrong, as in every real book. */
export type Mishap =
  | 'sugarMistyped'
  | 'crushUndone'
  | 'spilled'
  | 'spoiled'
  | 'bottleBroken'
  | 'bottlesMiscounted'
  | 'alcoholometerInSweet'
  | 'drawnTwice'
  | 'fruitLeftOver'
