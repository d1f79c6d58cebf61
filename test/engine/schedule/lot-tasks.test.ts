import { describe, expect, it } from 'vitest'
import { fadingTasks } from '../../../main/engine/index.ts'
import { atDay, dayOfMs } from './schedule-of.ts'

const lot = (change = {}) => ({
  batchId: 'batch',
  bottleLotId: 'lot',
  earlyMs: atDay(300),
  likelyMs: atDay(400),
  ...change,
})

describe('fadingTasks', () => {
  it('warns two months before a lot likely fades, and is never late', () => {
    const [task] = fadingTasks([lot()], atDay(100))
    expect(task).toMatchObject({ id: 'batch.drinkUp.lot.1', loss: 'fades', lateMs: undefined })
    expect([dayOfMs(task?.earlyMs), dayOfMs(task?.dueMs)]).toEqual([340, 400])
  })

  it('asks for an opened bottle from when it may be past its best', () => {
    const [task] = fadingTasks([lot({ openedId: 'opened' })], atDay(310))
    expect(task).toMatchObject({ id: 'batch.finishOpened.opened.1', openedId: 'opened' })
    expect([dayOfMs(task?.earlyMs), dayOfMs(task?.dueMs)]).toEqual([300, 400])
  })

  it('is drunk by the bottle or by the glass, and told whole', () => {
    const day = 86_400_000
    const same = {
      batchId: 'batch',
      jarIds: [],
      bottleLotId: 'lot',
      ordinal: 1,
      dueMs: atDay(400),
      lateMs: undefined,
      from: 'shelf',
      loss: 'fades',
      isWaiting: false,
    }
    expect(fadingTasks([lot(), lot({ openedId: 'opened' })], atDay(100))).toStrictEqual([
      {
        ...same,
        id: 'batch.drinkUp.lot.1',
        kind: 'drinkUp',
        earlyMs: atDay(400) - 60 * day,
        log: { kind: 'drawBottle', jarIds: [], bottleLotId: 'lot', count: 1 },
      },
      {
        ...same,
        id: 'batch.finishOpened.opened.1',
        kind: 'finishOpened',
        openedId: 'opened',
        earlyMs: atDay(300),
        log: { kind: 'pourGlass', jarIds: [], openedId: 'opened' },
      },
    ])
  })

  it('lets go of what has faded for a season', () => {
    expect(fadingTasks([lot()], atDay(489))).toHaveLength(1)
    expect(fadingTasks([lot()], atDay(490))).toEqual([])
  })
})
