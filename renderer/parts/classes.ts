/** Class names joined; what is absent or false is left out. */
export const classes = (...names: readonly (string | false | undefined)[]): string =>
  names.filter(Boolean).join(' ')
