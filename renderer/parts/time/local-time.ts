/** Between the instants of the book (UTC) and what a date-and-time input holds (local, minutes). */

/** `2026-11-25T18:05` in the time zone of this machine. */
export function localInputOf(instant: string): string {
  const date = new Date(instant)
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
  return `${day}T${two(date.getHours())}:${two(date.getMinutes())}`
}

const two = (part: number) => String(part).padStart(2, '0')

/** The instant, or undefined when the text is no whole date and time. */
export function instantOf(localInput: string): string | undefined {
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.test(localInput)) return undefined
  const date = new Date(localInput)
  return Number.isNaN(date.getTime()) ? undefined : date.toISOString()
}
