import { describe, expect, it } from 'vitest'
import type { Move, RecordedMove } from '../../../shared/schemas/moves.ts'
import {
  compareStages,
  draftOfBatch,
  fold,
  followPlan,
  nextPlanned,
  outcomeOf,
  stepsOf,
} from '../../../main/engine/index.ts'
import { facts, plainDraft } from './seeded-drafts.ts'

const spec = { ...plainDraft('sour_cherry'), finishSugarG: 100 }
const outcome = () => outcomeOf(spec, facts)
const plannedMoves = () => outcome().moves
const plan = () => ({ batchId: 'draft', startedAt: spec.startAt, spec, moves: plannedMoves() })

const recorded = (list: readonly Move[]): RecordedMove[] =>
  list.map((move, index) => ({
    id: `m${index}`,
    seq: index + 1,
    groupId: 'g',
    recordedAt: move.at,
    version: 1,
    move,
  }))

function upTo(kind: Move['kind']) {
  const moves = plannedMoves()
  return moves.slice(
    0,
    moves.findIndex((move) => move.kind === kind),
  )
}

function followed(real: readonly Move[], nowMs = Date.parse(real.at(-1)?.at ?? spec.startAt)) {
  const { cellar, steps, refused } = fold(recorded(real), facts)
  expect(refused).toEqual([])
  return followPlan({ plan: plan(), steps: stepsOf(steps, 'draft'), cellar, nowMs }, facts)
}

describe('nextPlanned', () => {
  it('begins with the fruit, and goes on from what was logged', () => {
    expect(nextPlanned(plan(), [])?.kind).toBe('charge')
    expect(nextPlanned(plan(), recorded(upTo('pourSpirit')))?.kind).toBe('pourSpirit')
    expect(nextPlanned(plan(), recorded(plannedMoves()))).toBeUndefined()
  })

  it('passes over what was never done, once something later was', () => {
    const skipped = plannedMoves().filter(({ kind }) => kind !== 'coverWithSugar')
    const drawnTwice = skipped.slice(0, skipped.findLastIndex(({ kind }) => kind === 'drawOff') + 1)
    expect(nextPlanned(plan(), recorded(drawnTwice))?.kind).toBe('discard')
  })

  it('moves the rest of the plan by the days the batch is late, into the jars really used', () => {
    const late = upTo('pourSpirit').map((move): Move => {
      const at = new Date(Date.parse(move.at) + 3 * 86_400_000).toISOString()
      return 'jarId' in move ? { ...move, at, jarId: 'cellar-7' } : { ...move, at }
    })
    const next = nextPlanned(plan(), recorded(late))
    if (next?.kind !== 'pourSpirit') throw new Error('spirit comes next')
    expect(next.jarId).toBe('cellar-7')
    expect(next.at).toBe('2026-07-05T08:00:00.000Z')
  })
})

describe('followPlan', () => {
  it('expects the plan itself while everything goes by it', () => {
    const { expected, planned, next } = followed(upTo('drawOff'))
    expect(next?.kind).toBe('drawOff')
    expect(planned?.strengthPctVol).toBeCloseTo(outcome().finished?.strengthPctVol ?? 0, 6)
    expect(expected?.strengthPctVol).toBeCloseTo(planned?.strengthPctVol ?? 0, 4)
    expect(expected?.sugarGPerL).toBeCloseTo(planned?.sugarGPerL ?? 0, 3)
  })

  it('lets a real amount take the place of the planned one', () => {
    const real = upTo('drawOff').map((move): Move =>
      move.kind === 'pourSpirit' ? { ...move, volumeMl: 0.8 * move.volumeMl } : move,
    )
    const { expected, planned, stages } = followed(real)
    expect(expected?.strengthPctVol).toBeLessThan((planned?.strengthPctVol ?? 0) - 2)
    const steeping = stages.find(({ key }) => key === 'steeping')
    expect(steeping?.real?.inflows[0]?.volumeMl).toBeCloseTo(0.8 * 1128, 0)
    expect(steeping?.planned?.inflows[0]?.volumeMl).toBeCloseTo(1128, 0)
    expect(stages.find(({ key }) => key === 'bottled')?.expected?.bottles).toBeGreaterThan(0)
  })
})

const vesselOf = (jarId: string) => ({
  jarId,
  name: jarId,
  shape: 'jar' as const,
  capacityMl: jarId === 'draft-married' ? 4000 : 3000,
})

describe('a planned jar', () => {
  it('that another batch stands in is told once, with the day it is needed', () => {
    const other: Move[] = [
      {
        kind: 'buy',
        at: spec.startAt,
        lotId: 'other',
        goods: { kind: 'spirit', strengthPctVol: 40 },
        volumeMl: 500,
      },
      {
        kind: 'pourSpirit',
        at: spec.startAt,
        batchId: 'sloe',
        jarId: 'draft-extract-1',
        lotId: 'other',
        volumeMl: 500,
      },
    ]
    const { taken, next } = followed([...upTo('drawOff'), ...other])
    expect(taken).toEqual([{ jarId: 'draft-extract-1', batchId: 'sloe', neededAt: next?.at }])
    expect(followed(upTo('drawOff')).taken).toEqual([])
  })
})

describe('draftOfBatch', () => {
  const readBack = (vessel: Parameters<typeof draftOfBatch>[3] = vesselOf) => {
    const { cellar, steps } = fold(recorded(plannedMoves()), facts)
    return draftOfBatch(stepsOf(steps, 'draft'), cellar, 'draft', vessel)
  }

  it('reads the numbers of a finished batch back', () => {
    const read = readBack()
    expect(read?.fruits[0]).toMatchObject({ fruitId: 'sour_cherry', massG: 2000, cut: 'whole' })
    expect(read?.layeringSugarG).toBe(500)
    expect(read?.spirits).toEqual([{ strengthPctVol: 96, volumeMl: 1128 }])
    expect(read?.steepWaterMl).toBe(586)
    expect(read?.steepWeeks).toBeCloseTo(6, 6)
    expect(read?.sugarDraws).toEqual([{ sugarG: 500, days: 10 }])
    expect(read?.finishSugarG).toBe(100)
    expect(read?.filters).toEqual(['cloth', 'paper'])
  })

  it('reads back the vessels it stood in, one for each extract', () => {
    const read = readBack()
    expect(read?.vessels).toEqual({
      steep: [vesselOf('draft-steep-1')],
      extracts: [vesselOf('draft-extract-1'), vesselOf('draft-extract-2')],
      married: vesselOf('draft-married'),
    })
    if (!read) throw new Error('no recipe')
    const again = outcomeOf(read, facts)
    expect(again.vessels.map(({ jarId }) => jarId)).toEqual([
      'draft-steep-1',
      'draft-extract-1',
      'draft-extract-2',
      'draft-married',
    ])
  })

  it('leaves a role to usual sizes when the book knows one of its vessels no more', () => {
    const read = readBack((jarId) => (jarId === 'draft-extract-1' ? undefined : vesselOf(jarId)))
    expect(read?.vessels.extracts).toEqual([])
    expect(read?.vessels.steep).toHaveLength(1)
  })

  it('tells honey from sugar, by what there was more of', () => {
    const withHoney = outcomeOf({ ...spec, sweetenerId: 'honey' }, facts).moves
    const sweet = fold(recorded(withHoney), facts)
    const read = draftOfBatch(stepsOf(sweet.steps, 'draft'), sweet.cellar, 'draft', vesselOf)
    expect(read?.sweetenerId).toBe('honey')
    expect(read?.finishSugarG).toBe(100)
  })

  it('makes the same liqueur again', () => {
    const read = readBack()
    if (!read) throw new Error('no recipe')
    const { finished } = outcome()
    const again = outcomeOf(read, facts).finished
    expect(again?.strengthPctVol).toBeCloseTo(finished?.strengthPctVol ?? 0, 1)
    expect(again?.sugarGPerL).toBeCloseTo(finished?.sugarGPerL ?? 0, 0)
  })

  it('finds no recipe where no spirit was poured', () => {
    const dry = fold(recorded(upTo('pourSpirit')), facts)
    expect(draftOfBatch(stepsOf(dry.steps, 'draft'), dry.cellar, 'draft', vesselOf)).toBeUndefined()
  })

  it('stands stage by stage beside what happened', () => {
    const steps = stepsOf(fold(recorded(plannedMoves()), facts).steps, 'draft')
    const nowMs = Date.parse('2027-01-01')
    const stages = compareStages({ plan: plan(), steps, nowMs }, facts)
    expect(stages).toHaveLength(outcome().stages.length)
    for (const { planned, real } of stages)
      expect(real?.liquid?.strengthPctVol).toBeCloseTo(planned?.liquid?.strengthPctVol ?? -1, 6)
  })
})
