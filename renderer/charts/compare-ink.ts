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

/** A batch's own colour, brought near enough to the ink to be seen on either paper. */
export const compareColour = (colour: string): string =>
  `light-dark(color-mix(in oklab, ${colour} 78%, var(--ink)), color-mix(in oklab, ${colour} 50%, var(--ink)))`
