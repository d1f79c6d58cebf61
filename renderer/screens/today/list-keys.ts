/** The keyboard on a list of tasks: arrows go from line to line, P opens the line's menu of putting off. */
import type { KeyboardEvent } from 'react'

export function moveInList(event: KeyboardEvent, list: HTMLElement | null): void {
  if (event.ctrlKey || event.metaKey || event.altKey || !list) return
  const here = event.target
  if (!(here instanceof HTMLElement) || !list.contains(here)) return
  const links = [...list.querySelectorAll<HTMLElement>('[data-task]')]
  const at = links.findIndex((link) => link.closest('li') === here.closest('li'))
  const to = lineAfter(event.key, at, links.length)
  if (to !== undefined) links[to]?.focus()
  else if (event.key.toLowerCase() === 'p')
    here.closest('li')?.querySelector<HTMLElement>('[data-put-off] button')?.click()
  else return
  event.preventDefault()
}

function lineAfter(key: string, at: number, count: number): number | undefined {
  if (count === 0) return undefined
  switch (key) {
    case 'ArrowDown':
      return Math.min(count - 1, at + 1)
    case 'ArrowUp':
      return Math.max(0, at - 1)
    case 'Home':
      return 0
    case 'End':
      return count - 1
    default:
      return undefined
  }
}
