/** The keyboard on a list of tasks: arrows go from line to line, P opens the line's menu of putting off. */
import type { KeyboardEvent } from 'react'

export interface ListKeys {
  readonly list: HTMLElement | null
  /** Called with the id of the line's task. */
  readonly onPutOff: (taskId: string) => void
}

export function keyInList(event: KeyboardEvent, { list, onPutOff }: ListKeys): void {
  if (event.ctrlKey || event.metaKey || event.altKey || !list) return
  const here = event.target
  // Keys in a menu or a dialog of a line bubble here too, and are not ours.
  if (!(here instanceof HTMLElement) || !list.contains(here)) return
  const links = [...list.querySelectorAll<HTMLElement>('[data-task]')]
  const line = here.closest('li')
  const at = links.findIndex((link) => link.closest('li') === line)
  const to = lineAfter(event.key, at, links.length)
  const taskId = links[at]?.dataset['task']
  if (to !== undefined) links[to]?.focus()
  else if (event.key.toLowerCase() === 'p' && taskId !== undefined) onPutOff(taskId)
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
