/** The two lines of sight that cross: each with an ink and a dash of its own. */
export const crossingInk = {
  density: { color: 'var(--ink)', dash: 'none' },
  refraction: { color: 'var(--action)', dash: '7 4' },
} as const
