/** A task in the words of a calendar: what, of which batch, and until when it keeps. */
import type { Loss, Task, TaskKind } from '../../shared/schemas/tasks.ts'

const deeds: Readonly<Record<TaskKind, string>> = {
  charge: 'Charge fruit',
  addSpirit: 'Pour the spirit',
  strengthen: 'Strengthen',
  coverFruit: 'Cover the fruit',
  lookIn: 'Look in',
  turn: 'Turn',
  drawOff: 'Draw off',
  coverWithSugar: 'Cover the fruit with sugar',
  pourOffSugarDraw: 'Pour off the sugar draw',
  press: 'Press the fruit',
  clearJar: 'Throw out the spent fruit',
  marry: 'Marry the extracts',
  rack: 'Rack off the sediment',
  filter: 'Filter',
  bottle: 'Bottle',
  taste: 'Taste',
  drinkUp: 'Drink up',
  finishOpened: 'Finish the open bottle',
}

const losses: Readonly<Record<Loss, string>> = {
  ferments: 'it begins to ferment',
  mould: 'the fruit may mould',
  stones: 'the stones have been in too long',
  oversteeps: 'the fruit gives up bitterness',
  fades: 'it fades',
  idle: 'it only takes up its vessel',
  nothing: 'nothing is lost',
}

export interface TaskToTell {
  readonly task: Task
  readonly batchName: string
  readonly jarNames: readonly string[]
  readonly day: (instant: string) => string
}

export const taskSummary = ({ task, batchName }: TaskToTell): string =>
  `${deeds[task.kind]}: ${batchName}`

export function taskDescription({ task, jarNames, day }: TaskToTell): string {
  const where = jarNames.length === 0 ? [] : [`In ${jarNames.join(', ')}.`]
  const from = `Can be done from ${day(task.early)}.`
  const late = task.late === undefined ? [] : [`From ${day(task.late)} ${losses[task.loss]}.`]
  return [...where, from, ...late].join(' ')
}
