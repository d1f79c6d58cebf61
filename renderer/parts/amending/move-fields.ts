/**
 * The fields of a move as its maker knows them, and what their values are. A field of a field goes by
 * its own name, wherever it stands: the volume of a reading, of a part, of what was found.
 */
import type { Move } from '../../../shared/schemas/moves.ts'
import type { Dimension } from '../quantity/units.ts'

export type FieldValue =
  | Exclude<Dimension, 'money'>
  | 'minorMoney'
  | 'moment'
  | 'text'
  | 'truth'
  | 'bottles'
  | 'batch'
  | 'jar'
  | 'pantryLot'
  | 'bottleLot'
  | 'shelf'
  | 'opened'
  | 'fruits'
  | 'goods'
  | 'cut'
  | 'turned'
  | 'medium'
  | 'instrument'
  | 'verdict'
  | 'part'
  | 'score'
  /** Numbers from the library that nobody reads one by one. */
  | 'facts'

export const moveFields = {
  at: 'moment',
  note: 'text',
  batchId: 'batch',
  jarId: 'jar',
  fromJarId: 'jar',
  toJarId: 'jar',
  lotId: 'pantryLot',
  goods: 'goods',
  bottleLotId: 'bottleLot',
  openedId: 'opened',
  fromOpenedId: 'opened',
  shelfId: 'shelf',
  fromShelfId: 'shelf',
  toShelfId: 'shelf',
  fruitIds: 'fruits',
  massG: 'mass',
  refuseG: 'mass',
  volumeMl: 'volume',
  lossMl: 'volume',
  bottleSizeMl: 'volume',
  count: 'bottles',
  priceMinor: 'minorMoney',
  strengthPctVol: 'strength',
  sugarGPerL: 'sugar',
  temperatureC: 'temperature',
  pieceMm: 'length',
  cut: 'cut',
  turned: 'turned',
  medium: 'medium',
  name: 'text',
  glass: 'text',
  verdict: 'verdict',
  scores: 'score',
  part: 'part',
  isConfirmed: 'truth',
  instrument: 'instrument',
  readingPctVol: 'strength',
  densityKgPerM3: 'density',
  densityBeforeKgPerM3: 'density',
  densityAfterKgPerM3: 'density',
  brix: 'brix',
  tissue: 'facts',
} as const satisfies Record<string, FieldValue>
export type MoveField = keyof typeof moveFields

export interface FieldChange {
  /** Where it stands in the move, such as `parts.0.volumeMl`. */
  readonly path: string
  readonly field: MoveField
  /** Of a taste, which of its scores. */
  readonly axis: string | undefined
  readonly before: unknown
  readonly after: unknown
}

/** What reads otherwise in one version than in the one before, in the order of the fields above. */
export function fieldChanges(before: Move, after: Move): FieldChange[] {
  const [was, is] = [leavesOf(before), leavesOf(after)]
  const paths = [...new Set([...was.keys(), ...is.keys()])]
  const order = Object.keys(moveFields)
  return paths
    .filter((path) => JSON.stringify(was.get(path)) !== JSON.stringify(is.get(path)))
    .flatMap((path) => {
      const field = fieldOf(path)
      if (field === undefined) return []
      const axis = field === 'scores' ? path.split('.').at(-1) : undefined
      return [{ path, field, axis, before: was.get(path), after: is.get(path) }]
    })
    .toSorted((a, b) => order.indexOf(a.field) - order.indexOf(b.field))
}

/** Told as one, however much is in them. */
const whole: readonly string[] = ['goods', 'tissue', 'fruitIds'] satisfies MoveField[]

function leavesOf(value: object, above = ''): Map<string, unknown> {
  const leaves = new Map<string, unknown>()
  for (const [name, each] of Object.entries(value)) {
    const path = above + name
    if (typeof each === 'object' && each !== null && !whole.includes(name))
      for (const [below, leaf] of leavesOf(each, `${path}.`)) leaves.set(below, leaf)
    else leaves.set(path, each)
  }
  return leaves
}

/** Undefined for the kind of a move, which no amendment changes. */
function fieldOf(path: string): MoveField | undefined {
  const names = path.split('.')
  const name = names.includes('scores') ? 'scores' : (names.at(-1) ?? '')
  return name in moveFields ? (name as MoveField) : undefined
}
