/** How up to six batches are told apart: by dash and marker first, for many are of one colour. */
export const mostCompared = 6

export const compareDashes = ['none', '9 4', '2 4', '14 4 3 4', '5 3', '20 5'] as const

/** Outlines about 0, 0; every one a different shape. */
export const compareMarkers = [
  'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0z',
  'M-4.5 -4.5h9v9h-9z',
  'M0 -6L5.5 4.5H-5.5z',
  'M0 -6.5L6 0L0 6.5L-6 0z',
  'M0 6L5.5 -4.5H-5.5z',
  'M-5.5 -2h3.5v-3.5h4v3.5h3.5v4h-3.5v3.5h-4v-3.5h-3.5z',
] as const

/** How much of a batch's own colour is in its line; the rest is ink, to be seen on either paper. */
export const compareInk = { light: 0.7, dark: 0.5 } as const

export const compareColour = (colour: string): string =>
  `light-dark(${withInk(colour, compareInk.light)}, ${withInk(colour, compareInk.dark)})`

const withInk = (colour: string, share: number) =>
  `color-mix(in oklab, ${colour} ${share * 100}%, var(--ink))`
