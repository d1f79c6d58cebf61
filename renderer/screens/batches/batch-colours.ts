/** Colours of liquids to start from, as the fruit gives them; named in the words by key. */
export const batchColours = {
  sourCherry: '#8e1b2f',
  raspberry: '#b32448',
  rose: '#c4553d',
  damson: '#5a1f45',
  blackcurrant: '#431a3c',
  sloe: '#6b2036',
  quince: '#d9a441',
  apricot: '#dd8a3c',
  orange: '#cf6f1d',
  honey: '#b9821f',
  walnut: '#4d2f1a',
  herb: '#6b7a2a',
} as const

export type BatchColourName = keyof typeof batchColours

export const batchColourNames = Object.keys(batchColours) as BatchColourName[]
