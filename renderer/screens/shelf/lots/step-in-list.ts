/** To which row of a list a key leads; undefined where the key is not for walking it. */
export function stepInList(
  key: string,
  index: number,
  count: number,
  page: number,
): number | undefined {
  const within = (wanted: number) => Math.min(count - 1, Math.max(0, wanted))
  switch (key) {
    case 'ArrowDown':
      return within(index + 1)
    case 'ArrowUp':
      return within(index - 1)
    case 'PageDown':
      return within(index + page)
    case 'PageUp':
      return within(index - page)
    case 'Home':
      return 0
    case 'End':
      return count - 1
    default:
      return undefined
  }
}
