import { isLogged } from '../../../../renderer/parts/moves/kinds.ts'
import { describe, expect, it } from 'vitest'
import {
  addingMoves,
  evenShare,
  startAdding,
} from '../../../../renderer/parts/moves/drafts/adding.ts'
import { bottlingMoves, startBottling } from '../../../../renderer/parts/moves/drafts/bottling.ts'
import {
  draftOfMove,
  movesOfDraft,
  startDraft,
} from '../../../../renderer/parts/moves/drafts/draft.ts'
import { startFiltering } from '../../../../renderer/parts/moves/drafts/filtering.ts'
import { keepingMoves, startKeeping } from '../../../../renderer/parts/moves/drafts/keeping.ts'
import { marryingMoves, startMarrying } from '../../../../renderer/parts/moves/drafts/marrying.ts'
import { correctMoves, startCorrect } from '../../../../renderer/parts/moves/drafts/mending.ts'
import {
  pouringOffMoves,
  startPouringOff,
} from '../../../../renderer/parts/moves/drafts/pouring-off.ts'
import { readingMoves, startReading } from '../../../../renderer/parts/moves/drafts/reading.ts'
import { Move } from '../../../../shared/schemas/moves.ts'
import { contents } from '../../cellar-fixture.ts'
import { at, demijohn, extract, flask, logContext, north, south } from './log-context-fixture.ts'

describe('startAdding', () => {
  it('offers the jars with fruit and the lot bought last', () => {
    const draft = startAdding('pourSpirit', logContext())
    expect(draft.jarIds).toEqual(['north', 'south'])
    expect(draft).toMatchObject({ lotId: 'spirit', isJustBought: false, amount: undefined, at })
  })

  it('buys on the way when the pantry has none', () => {
    expect(startAdding('charge', logContext())).toMatchObject({
      isJustBought: true,
      lotId: undefined,
    })
  })

  it('covers only the fruit whose liquid is drawn off, and that no sugar has drawn out yet', () => {
    const { liquid: _drawn, ...drained } = contents({ jarId: 'south' })
    const covering = (change: Partial<typeof drained>) =>
      startAdding(
        'coverWithSugar',
        logContext({ jars: [north, { ...south, contents: { ...drained, ...change } }] }),
      ).jarIds
    expect(covering({})).toEqual(['south'])
    // Where none is, all the fruit is offered.
    expect(covering({ sugarDraws: 1 })).toEqual(['north', 'south'])
  })
})

describe('addingMoves', () => {
  it('pours 500 ml into each of two jars as two moves', () => {
    const draft = { ...startAdding('pourSpirit', logContext()), amount: 500 }
    expect(addingMoves(draft, 'damson')).toEqual({
      ok: true,
      moves: ['north', 'south'].map((jarId) => ({
        kind: 'pourSpirit',
        at,
        batchId: 'damson',
        jarId,
        lotId: 'spirit',
        volumeMl: 500,
      })),
    })
  })

  it('records the purchase before what it is used for, of just what goes in', () => {
    const started = startAdding('charge', logContext())
    const draft = { ...started, amount: 1500, purchase: { ...started.purchase, fruitId: 'damson' } }
    const outcome = addingMoves(draft, 'damson')
    expect(outcome.ok && outcome.moves.map(({ kind }) => kind)).toEqual(['buy', 'charge', 'charge'])
    expect(outcome.ok && outcome.moves[0]).toMatchObject({ lotId: 'new-1', massG: 3000 })
    expect(outcome.ok && outcome.moves[1]).toMatchObject({ lotId: 'new-1', massG: 1500 })
  })

  it('names every field that is still missing', () => {
    const draft = { ...startAdding('charge', logContext()), jarIds: [] }
    const outcome = addingMoves(draft, 'damson')
    expect(!outcome.ok && outcome.problems.map(({ field }) => field)).toEqual(['jarIds', 'amount'])
    const bought = addingMoves({ ...draft, jarIds: ['north'], amount: 500 }, 'damson')
    expect(!bought.ok && bought.problems.map(({ field }) => field)).toEqual(['purchase.fruitId'])
  })

  it('buys acid by mass on the way, into the jars whose liquid it can dissolve in', () => {
    const draft = startAdding('addAcid', logContext())
    expect(draft.isJustBought).toBe(true)
    const made = addingMoves({ ...draft, jarIds: ['north'], amount: 6 }, 'damson')
    expect(made.ok && made.moves).toMatchObject([
      { kind: 'buy', goods: { kind: 'acid' }, massG: 6 },
      { kind: 'addAcid', jarId: 'north', massG: 6 },
    ])
  })
})

describe('evenShare', () => {
  it('shares 3,400 g of sugar between two jars as 1,700 g each', () => {
    expect(evenShare(startAdding('sugar', logContext()), logContext())).toBe(1700)
  })
})

describe('startPouringOff', () => {
  it('draws both jars off into the smallest empty vessel with room for 2.8 L', () => {
    const draft = startPouringOff('drawOff', logContext())
    expect(draft).toMatchObject({ fromJarIds: ['north', 'south'], toJarId: 'demijohn' })
  })

  it('chooses no vessel when none is big enough', () => {
    const draft = startPouringOff('drawOff', logContext({ jars: [north, south, flask] }))
    expect(draft.toJarId).toBeUndefined()
    const outcome = pouringOffMoves(draft, 'damson')
    expect(outcome).toEqual({ ok: false, problems: [{ field: 'toJarId', code: 'missing' }] })
  })

  it('leaves the amount out where all is drawn', () => {
    const outcome = pouringOffMoves(startPouringOff('drawOff', logContext()), 'damson')
    expect(outcome.ok && outcome.moves[0]).not.toHaveProperty('volumeMl')
  })

  it('does not pour a jar into itself', () => {
    const draft = { ...startPouringOff('drawOff', logContext()), toJarId: 'north' }
    const outcome = pouringOffMoves(draft, 'damson')
    expect(outcome).toEqual({ ok: false, problems: [{ field: 'toJarId', code: 'sameJar' }] })
  })
})

describe('startMarrying', () => {
  const second = { ...extract, jar: { ...extract.jar, id: 'second', capacityMl: 1000 } }
  const context = (jars = [extract, second]) =>
    logContext({
      jars: jars.map((one) => ({
        ...one,
        contents: one.contents && { ...one.contents, jarId: one.jar.id },
      })),
    })

  it('marries the extracts into the one with room when no vessel is empty', () => {
    expect(startMarrying(context())).toMatchObject({
      jarIds: ['extract', 'second'],
      toJarId: 'extract',
    })
  })

  it('prefers a fresh vessel', () => {
    expect(startMarrying(context([extract, second, demijohn])).toJarId).toBe('demijohn')
  })

  it('asks for another liquid than the one already there', () => {
    const draft = { ...startMarrying(context()), jarIds: ['extract'] }
    const outcome = marryingMoves(draft, 'damson')
    expect(outcome).toEqual({ ok: false, problems: [{ field: 'jarIds', code: 'chooseTwo' }] })
  })
})

describe('startFiltering', () => {
  it('filters back into the same vessel when no other is free', () => {
    const draft = startFiltering(logContext({ jars: [extract] }))
    expect(draft).toMatchObject({ fromJarId: 'extract', toJarId: 'extract', lossMl: undefined })
  })
})

describe('startBottling', () => {
  it('fills as many half litres as 1.5 L gives, and no more', () => {
    const draft = startBottling(logContext({ jars: [north] }))
    expect(draft.count).toBe(3)
    expect(bottlingMoves(draft, 'damson').ok).toBe(true)
  })
  it('leaves the count open where not one bottle is filled', () => {
    const little = { ...north, contents: { ...north.contents!, liquid: undefined } }
    expect(startBottling(logContext({ jars: [little] })).count).toBeUndefined()
  })
})

describe('readingMoves', () => {
  it('asks for the numbers of the chosen instrument only', () => {
    const draft = { ...startReading(logContext()), instrument: 'boilOff' as const }
    const outcome = readingMoves(draft, 'damson')
    expect(!outcome.ok && outcome.problems.map(({ field }) => field)).toEqual([
      'shown.densityBeforeKgPerM3',
      'shown.densityAfterKgPerM3',
    ])
  })
})

describe('correctMoves', () => {
  it('wants at least one thing found', () => {
    const outcome = correctMoves(startCorrect(logContext()), [])
    expect(outcome).toEqual({ ok: false, problems: [{ field: 'volumeMl', code: 'nothingFound' }] })
  })
  it('measures spirit by volume and the rest by mass', () => {
    const { pantry } = logContext()
    const draft = { ...startCorrect(logContext()), subject: 'lot' as const, amount: 0 }
    const spirit = correctMoves({ ...draft, lotId: 'spirit' }, pantry)
    const sugar = correctMoves({ ...draft, lotId: 'sugar' }, pantry)
    expect(spirit.ok && spirit.moves[0]).toMatchObject({ found: { lotId: 'spirit', volumeMl: 0 } })
    expect(sugar.ok && sugar.moves[0]).toMatchObject({ found: { lotId: 'sugar', massG: 0 } })
  })
})

const base = { at, note: 'in the evening' }
const own = { ...base, batchId: 'damson' }

describe('keepingMoves', () => {
  it('says that both jars stand at 12 °C and leaves the turning as it was', () => {
    const draft = { ...startKeeping(logContext()), temperatureC: 12 }
    expect(keepingMoves(draft, 'damson')).toEqual({
      ok: true,
      moves: ['north', 'south'].map((jarId) => ({
        kind: 'keep',
        at,
        batchId: 'damson',
        jarId,
        temperatureC: 12,
      })),
    })
  })

  it('asks for the warmth or the turning when neither is said', () => {
    expect(keepingMoves(startKeeping(logContext()), 'damson')).toEqual({
      ok: false,
      problems: [{ field: 'temperatureC', code: 'nothingKept' }],
    })
  })
})

/** One of every kind, with every optional part filled in. */
const everyMove: Move[] = [
  {
    ...base,
    kind: 'buy',
    lotId: 'a',
    goods: { kind: 'fruit', fruitId: 'damson', name: 'Hedge' },
    massG: 900,
    priceMinor: 350,
  },
  {
    ...base,
    kind: 'buy',
    lotId: 'b',
    goods: { kind: 'spirit', strengthPctVol: 96 },
    volumeMl: 900,
  },
  {
    ...base,
    kind: 'buy',
    lotId: 'c',
    goods: { kind: 'sweetener', sweetenerId: 'honey' },
    massG: 900,
  },
  {
    ...own,
    kind: 'charge',
    jarId: 'north',
    lotId: 'a',
    massG: 800,
    refuseG: 20,
    cut: 'cut',
    pieceMm: 8,
    tissue: {
      kineticClass: 'waxySkin',
      drainedLPerKg: 0.9,
      pressedLPerKg: 0.4,
      bulkDensityKgPerL: 0.65,
    },
  },
  { ...own, kind: 'sugar', jarId: 'north', lotId: 'sugar', massG: 300 },
  { ...own, kind: 'addAcid', jarId: 'north', lotId: 'citric', massG: 6 },
  { ...own, kind: 'pourSpirit', jarId: 'north', lotId: 'spirit', volumeMl: 500, temperatureC: 12 },
  { ...own, kind: 'pourWater', jarId: 'north', volumeMl: 200, temperatureC: 10 },
  { ...own, kind: 'keep', jarId: 'north', temperatureC: 14, turned: 'weekly' },
  { ...own, kind: 'stir', jarId: 'north' },
  {
    ...own,
    kind: 'read',
    jarId: 'north',
    reading: {
      instrument: 'hydrometerAndRefractometer',
      densityKgPerM3: 1010,
      brix: 30,
      temperatureC: 19,
    },
    isConfirmed: true,
  },
  { ...own, kind: 'drawOff', fromJarId: 'north', toJarId: 'demijohn', volumeMl: 900 },
  { ...own, kind: 'press', fromJarId: 'north', toJarId: 'demijohn' },
  { ...own, kind: 'crush', jarId: 'north' },
  { ...own, kind: 'coverWithSugar', jarId: 'north', lotId: 'sugar', massG: 300 },
  {
    ...own,
    kind: 'marry',
    parts: [{ jarId: 'north', volumeMl: 700 }, { jarId: 'south' }],
    toJarId: 'demijohn',
  },
  { ...own, kind: 'filter', fromJarId: 'north', toJarId: 'demijohn', medium: 'cloth', lossMl: 0 },
  {
    ...own,
    kind: 'bottle',
    fromJarId: 'north',
    bottleLotId: 'x',
    bottleSizeMl: 350,
    count: 4,
    name: 'Old',
    shelfId: 'rack',
  },
  {
    ...own,
    kind: 'unbottle',
    bottleLotId: 'damson-lot',
    count: 2,
    toJarId: 'demijohn',
    shelfId: 'rack',
  },
  { ...base, kind: 'drawBottle', bottleLotId: 'damson-lot', count: 1, shelfId: 'rack' },
  { ...base, kind: 'give', bottleLotId: 'damson-lot', count: 2, shelfId: 'rack' },
  { ...base, kind: 'breakBottle', bottleLotId: 'damson-lot', count: 1, shelfId: 'rack' },
  {
    ...base,
    kind: 'shelve',
    bottleLotId: 'damson-lot',
    count: 3,
    fromShelfId: null,
    toShelfId: 'rack',
  },
  { ...base, kind: 'openBottle', bottleLotId: 'damson-lot', openedId: 'o1', shelfId: 'rack' },
  { ...base, kind: 'pourGlass', openedId: 'o1', volumeMl: 40 },
  { ...base, kind: 'topUp', openedId: 'o1', fromOpenedId: 'o2', volumeMl: 100 },
  {
    ...own,
    kind: 'taste',
    jarId: 'north',
    glass: 'tulip',
    scores: { aroma: 7, heat: 3.5 },
    verdict: 'young',
  },
  { ...own, kind: 'taste', bottleLotId: 'damson-lot', scores: {}, verdict: 'fading' },
  { ...base, kind: 'discard', from: { jarId: 'north', part: 'pulp' } },
  { ...base, kind: 'discard', from: { lotId: 'spirit', volumeMl: 20 } },
  { ...base, kind: 'discard', from: { bottleLotId: 'damson-lot', count: 1, shelfId: 'rack' } },
  { ...base, kind: 'discard', from: { openedId: 'o1' } },
  { ...base, kind: 'correct', found: { jarId: 'north', volumeMl: 1400, sugarGPerL: 190 } },
  { ...base, kind: 'correct', found: { lotId: 'sugar', massG: 100 } },
  { ...base, kind: 'correct', found: { bottleLotId: 'damson-lot', count: 6 } },
  { ...base, kind: 'correct', found: { bottleLotId: 'damson-lot', count: 6, shelfId: null } },
  { ...base, kind: 'correct', found: { openedId: 'o1', volumeMl: 0 } },
  {
    ...own,
    kind: 'bringIn',
    bottleLotId: 'old-lot',
    bottleSizeMl: 500,
    count: 6,
    strengthPctVol: 32,
    sugarGPerL: 210,
    fruitIds: ['damson'],
    name: 'Damson 2014',
    shelfId: 'rack',
  },
  { ...own, kind: 'remark' },
]

describe('draftOfMove', () => {
  it.each(everyMove)('gives back the same $kind when nothing is changed', (move) => {
    const outcome = movesOfDraft(draftOfMove(move), logContext())
    expect(outcome).toEqual({ ok: true, moves: [move] })
    expect(Move.safeParse(move).success).toBe(true)
  })

  it('covers all twenty-nine kinds', () => {
    expect(new Set(everyMove.map(({ kind }) => kind)).size).toBe(29)
  })
})

describe('startDraft', () => {
  it.each([...new Set(everyMove.map(({ kind }) => kind).filter(isLogged))])(
    'starts a draft of %s in an empty cellar',
    (kind) => {
      const draft = startDraft(kind, logContext({ jars: [], pantry: [], bottleLots: [] }))
      expect(draft.kind).toBe(kind)
      expect(movesOfDraft(draft, logContext()).ok).toBe(false)
    },
  )
})
