/** A ref that takes the focus once: for the first field of a form the maker has just opened. */
export const focusOnMount = (element: HTMLElement | null): void => element?.focus()
