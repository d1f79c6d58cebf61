/** Tasks of the small cellar's batches, and a day of them. */
import type { Today } from '../../shared/schemas/schedule.ts'
import type { Task } from '../../shared/schemas/tasks.ts'

export const task = (changed: Partial<Task> = {}): Task => ({
  id: 'damson.drawOff.north.1',
  kind: 'drawOff',
  batchId: 'damson',
  jarIds: ['north'],
  ordinal: 1,
  early: '2026-10-10T08:00:00Z',
  due: '2026-11-10T08:00:00Z',
  late: '2027-01-10T08:00:00Z',
  from: 'forecast',
  loss: 'oversteeps',
  effort: 'funnel',
  isWaiting: false,
  state: 'due',
  log: { kind: 'drawOff', jarIds: ['north'] },
  ...changed,
})

export const spiritTask = (changed: Partial<Task> = {}): Task =>
  task({
    id: 'quince.addSpirit.south.1',
    kind: 'addSpirit',
    batchId: 'quince',
    jarIds: ['south'],
    early: '2026-11-22T17:00:00Z',
    due: '2026-11-23T01:00:00Z',
    late: '2026-11-23T09:00:00Z',
    from: 'trade',
    loss: 'ferments',
    effort: 'spirit',
    state: 'late',
    log: { kind: 'pourSpirit', jarIds: ['south'], amount: 900 },
    ...changed,
  })

/** Of the raspberries' bottles: ready, and never late. */
export const tasting = ({ due, ...changed }: Partial<Task> & { due: string }): Task => {
  const { late: _never, ...open } = task({
    id: 'raspberry.taste.1',
    kind: 'taste',
    batchId: 'raspberry',
    jarIds: [],
    bottleLotId: 'raspberry-lot',
    early: due,
    due,
    from: 'shelf',
    loss: 'nothing',
    effort: 'glass',
    state: 'open',
    log: { kind: 'taste', jarIds: [], bottleLotId: 'raspberry-lot' },
  })
  return { ...open, ...changed }
}

export const today = (changed: Partial<Today> = {}): Today => ({
  day: '2026-11-25',
  now: [spiritTask(), task()],
  week: [],
  putOff: [],
  cameReady: [],
  fading: [],
  runningLow: [],
  cautions: [],
  batches: [],
  ...changed,
})
