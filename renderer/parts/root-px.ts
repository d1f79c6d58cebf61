/** Pixels to a rem: more in a wide window, and where the reader has set larger text. */
export const rootPx = (): number =>
  Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16
