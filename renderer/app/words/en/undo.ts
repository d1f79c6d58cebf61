/** Words of what was done last, with the way back and forth. */
import type { Told } from '../../undo/undo-stack.ts'

const told = {
  recorded: 'Recorded: {{what}}.',
  changed: 'Changed: {{what}}.',
  struck: 'Struck: {{what}}.',
  takenBack: 'Taken back: {{what}}.',
  putBack: 'Put back: {{what}}.',
} as const satisfies Record<Told['act'], string>

export const undo = {
  label: 'What was done last',
  told,
  andMore_one: '{{what}}, and {{count}} more',
  andMore_other: '{{what}}, and {{count}} more',
  undo: 'Undo',
  redo: 'Redo',
  dismiss: 'Hide',
} as const
