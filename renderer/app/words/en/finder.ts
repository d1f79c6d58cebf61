/** Words of the finder, which leads anywhere, and of the keys that are pressed. */
import type { FindingKind } from '../../finder/rank-findings.ts'
import type { ShortcutId } from '../../shortcuts.ts'

const kind = {
  screen: 'screen',
  action: 'action',
  batch: 'batch',
  jar: 'jar',
  lot: 'bottles',
  draft: 'draft',
  fruit: 'fruit',
} as const satisfies Record<FindingKind, string>

const shortcut = {
  find: 'Find a batch, jar, bottle, screen or action',
  settings: 'Open the settings',
  undo: 'Take back what was done last',
  redo: 'Put it back again',
  keys: 'Show these keys',
} as const satisfies Record<ShortcutId, string>

export const finder = {
  open: 'Find',
  title: 'Find anything',
  label: 'A batch, jar, bottle, fruit, screen or action',
  nothing: 'Nothing is called that. Fewer letters find more.',
  kind,
  stocktake: 'Stocktake',
  labels: 'Labels',
  mend: 'Mend a liqueur',
  actions: {
    settings: 'Settings',
    day: 'Show as by day',
    night: 'Show as by night',
    keys: 'Keys',
  },
  keys: {
    title: 'Keys',
    text: 'Tab goes from one thing to the next, arrows move within lists and tabs, Enter presses, Escape leaves a dialog.',
    shortcut,
    done: 'Done',
  },
} as const
