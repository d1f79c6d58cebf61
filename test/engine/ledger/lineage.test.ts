import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addMatter,
  massOf,
  matterKinds,
  noMatter,
  sumMatter,
  type Matter,
} from '../../../shared/matter.ts'
import {
  bottlesPlace,
  fold,
  fruitOf,
  fruitsInBottles,
  lineageBack,
  lineageForward,
  lotPlace,
  matterInBottles,
  openedPlace,
  wholeMatter,
  type Folded,
  type LineageFound,
} from '../../../main/engine/index.ts'
import { buyFruit, buySpirit, buySugar, folded, type Deed } from './book-of-moves.ts'
import { histories, play } from './random-history.ts'

/** Rounding, as a share of all that went through the cellar. */
const relative = 1e-9

function expectSame(found: Matter, expected: Matter, throughputG: number) {
  for (const kind of matterKinds)
    expect(Math.abs(found[kind] - expected[kind])).toBeLessThanOrEqual(relative * throughputG)
}

const total = (shares: LineageFound['origins']) => sumMatter(shares.map(({ matter }) => matter))
const shareOf = (shares: LineageFound['origins'], key: string) =>
  shares.find((share) => share.key === key)?.matter ?? noMatter

/** What transfers brought to a place, but for corrections that put the book right there. */
const broughtTo = ({ steps }: Folded, place: string) =>
  sumMatter(
    steps.flatMap(({ effect }) =>
      effect.transfers
        .filter(({ from, to }) => to === place && from !== 'outside:correction')
        .map(({ matter }) => matter),
    ),
  )

const throughputOf = ({ cellar }: Folded) =>
  1 + [...cellar.outside.values()].reduce((sum, matter) => sum + Math.abs(massOf(matter)), 0)

const pour = (batchId: string, jarId: string, lotId: string, volumeMl: number): Deed => ({
  kind: 'pourSpirit',
  batchId,
  jarId,
  lotId,
  volumeMl,
})
const water = (batchId: string, jarId: string, volumeMl: number): Deed => ({
  kind: 'pourWater',
  batchId,
  jarId,
  volumeMl,
})
const fill = (batchId: string, fromJarId: string, bottleLotId: string, count: number): Deed => ({
  kind: 'bottle',
  batchId,
  fromJarId,
  bottleLotId,
  bottleSizeMl: 500,
  count,
})

/** Two spirits and the tap in one jar; two litres bottled, one bottle drunk; a litre stays. */
const married = () =>
  folded([
    [0, buySpirit('strong', 5000, 96)],
    [0, buySpirit('weak', 5000, 40)],
    [1, pour('b', 'big', 'strong', 1000)],
    [2, pour('b', 'big', 'weak', 1000)],
    [3, water('b', 'big', 1000)],
    [4, fill('b', 'big', 'shelf', 4)],
    [5, { kind: 'drawBottle', bottleLotId: 'shelf', count: 1 }],
  ])

describe('lineageBack', () => {
  it('finds in a bottle what each purchase and the tap brought, kind by kind', () => {
    const { origins, nodes, links } = lineageBack(married(), bottlesPlace('shelf'))
    expect(origins.map(({ key }) => key).toSorted()).toEqual([
      'lot:strong',
      'lot:weak',
      'outside:tap',
    ])
    const lot = married().cellar.bottles.get('shelf')
    if (!lot) throw new Error('no bottles')
    const filled = massOf(lot.perBottle) * lot.filledCount
    expect(massOf(total(origins))).toBeCloseTo(filled, 6)
    // Ethanol came 96 to 40, for a litre was poured of each; the tap brought none.
    const ethanol = (key: string) => shareOf(origins, key).ethanolG
    expect(ethanol('lot:strong') / ethanol('lot:weak')).toBeCloseTo(96 / 40, 6)
    expect(ethanol('outside:tap')).toBe(0)
    expect(nodes.map(({ key, depth }) => [key, depth]).toSorted()).toEqual([
      ['bottles:shelf', 2],
      ['jar:big@b', 1],
      ['lot:strong', 0],
      ['lot:weak', 0],
      ['outside:tap', 0],
    ])
    expect(links).toHaveLength(4)
  })

  it('goes through bottles opened into another batch, and a jar used again', () => {
    const book = folded([
      [0, buySpirit('old', 2000, 60)],
      [0, buySpirit('new', 2000, 60)],
      [1, pour('first', 'big', 'old', 1000)],
      [2, fill('first', 'big', 'aged', 2)],
      [3, pour('second', 'big', 'new', 1500)],
      [4, { kind: 'unbottle', batchId: 'second', bottleLotId: 'aged', count: 1, toJarId: 'big' }],
      [5, fill('second', 'big', 'cuvee', 4)],
    ])
    const { origins, nodes } = lineageBack(book, bottlesPlace('cuvee'))
    const grams = (key: string) => massOf(shareOf(origins, key))
    expect(grams('lot:old') / grams('lot:new')).toBeCloseTo(500 / 1500, 6)
    const keys = nodes.map(({ key }) => key)
    expect(keys).toContain('jar:big@first')
    expect(keys).toContain('jar:big@second')
    expect(nodes.find(({ key }) => key === 'bottles:cuvee')?.depth).toBe(4)
    // The older bottles know nothing of the new spirit.
    expect(lineageBack(book, bottlesPlace('aged')).origins.map(({ key }) => key)).toEqual([
      'lot:old',
    ])
  })

  it('takes what was drawn off before from what was there then', () => {
    const book = folded([
      [0, buySpirit('one', 3000, 60)],
      [0, buySpirit('two', 3000, 60)],
      [1, pour('b', 'big', 'one', 1000)],
      [2, { kind: 'drawOff', batchId: 'b', fromJarId: 'big', toJarId: 'small', volumeMl: 500 }],
      [3, pour('b', 'big', 'two', 1000)],
      [4, fill('b', 'small', 'early', 1)],
      [5, fill('b', 'big', 'late', 3)],
    ])
    const { origins } = lineageBack(book, bottlesPlace('early'))
    expect(origins.map(({ key }) => key)).toEqual(['lot:one'])
    const late = lineageBack(book, bottlesPlace('late')).origins
    expect(massOf(shareOf(late, 'lot:two')) / massOf(shareOf(late, 'lot:one'))).toBeCloseTo(2, 6)
  })

  it('says nothing of a place that never was', () => {
    expect(lineageBack(married(), 'bottles:none')).toEqual({
      nodes: [],
      links: [],
      origins: [],
      destinations: [],
    })
  })
})

describe('lineageForward', () => {
  it('finds where a spirit went: the pantry, the jar, the shelf, the glass', () => {
    const { origins, destinations, nodes } = lineageForward(married(), lotPlace('strong'))
    const ethanol = (key: string) => shareOf(destinations, key).ethanolG
    const bought = ethanol('lot:strong') / 4
    expect(total(destinations).ethanolG).toBeCloseTo(5 * bought, 6)
    expect(total(origins).ethanolG).toBeCloseTo(5 * bought, 6)
    expect(destinations.map(({ key }) => key)).toEqual([
      'lot:strong',
      'bottles:shelf',
      'jar:big@b',
      'outside:glass',
    ])
    expect(ethanol('bottles:shelf') / ethanol('outside:glass')).toBeCloseTo(3, 9)
    expect(nodes.find(({ key }) => key === 'outside:glass')).toMatchObject({
      kind: 'outside',
      depth: 3,
    })
  })

  it('never brings back what a count did not find', () => {
    const book = folded([
      [0, buySpirit('spirit', 2000, 50)],
      [1, pour('b', 'big', 'spirit', 1000)],
      [2, { kind: 'correct', found: { jarId: 'big', volumeMl: 600 } }],
      [3, { kind: 'correct', found: { jarId: 'big', volumeMl: 800 } }],
    ])
    const { destinations } = lineageForward(book, lotPlace('spirit'))
    const lost = massOf(shareOf(destinations, 'outside:correction'))
    expect(lost / massOf(shareOf(destinations, 'jar:big@b'))).toBeCloseTo(400 / 600, 6)
  })

  it('follows what was bought, not what a count found beside it', () => {
    const book = folded([
      [0, buySugar('sack', 1000)],
      [1, { kind: 'correct', found: { lotId: 'sack', massG: 1500 } }],
      [2, buySpirit('spirit', 1000, 90)],
      [3, pour('b', 'big', 'spirit', 1000)],
      [4, { kind: 'sugar', batchId: 'b', jarId: 'big', lotId: 'sack', massG: 300 }],
    ])
    const { destinations } = lineageForward(book, lotPlace('sack'))
    expect(massOf(total(destinations))).toBeCloseTo(1000, 6)
    expect(shareOf(destinations, 'jar:big@b').sugarG).toBeCloseTo(200, 6)
  })
})

describe('fruitsInBottles', () => {
  it('tells the fruit of each lot, the most first', () => {
    const book = folded([
      [0, buyFruit('cherries', 'sour_cherry', 1000)],
      [0, buyFruit('sloes', 'sloe', 400)],
      [0, buySpirit('spirit', 5000, 70)],
      [
        1,
        {
          kind: 'charge',
          batchId: 'b',
          jarId: 'big',
          lotId: 'cherries',
          massG: 1000,
          cut: 'crushed',
        },
      ],
      [
        1,
        { kind: 'charge', batchId: 'b', jarId: 'big', lotId: 'sloes', massG: 400, cut: 'crushed' },
      ],
      [1, pour('b', 'big', 'spirit', 1500)],
      [60, { kind: 'drawOff', batchId: 'b', fromJarId: 'big', toJarId: 'small' }],
      [61, fill('b', 'small', 'mixed', 2)],
      [62, pour('plain', 'spare', 'spirit', 1000)],
      [63, fill('plain', 'spare', 'clear', 2)],
    ])
    const found = fruitsInBottles(book)
    expect(found.get('mixed')?.map(({ fruitId }) => fruitId)).toEqual(['sour_cherry', 'sloe'])
    expect(found.has('clear')).toBe(false)
    // The same grams as the way back finds.
    const { origins } = lineageBack(book, bottlesPlace('mixed'))
    const cherries = shareOf(origins, 'lot:cherries')
    expect(found.get('mixed')?.[0]?.massG).toBeCloseTo(massOf(cherries) - cherries.pulpG, 6)
  })
})

/** A random history, folded whole. */
const folds = histories({ minLength: 8, maxLength: 40 }).map((wishes) => {
  const { moves } = play(wishes, () => undefined)
  return fold(moves, { fruitOf })
})

describe('lineage, of any history', () => {
  it('adds up backward to all that was put into each bottle lot', () => {
    let lots = 0
    fc.assert(
      fc.property(folds, (book) => {
        const throughputG = throughputOf(book)
        for (const place of [...book.cellar.bottles.keys()].map(bottlesPlace)) {
          const found = lineageBack(book, place)
          expectSame(total(found.origins), broughtTo(book, place), throughputG)
          for (const { matter } of found.origins)
            for (const kind of matterKinds) expect(matter[kind]).toBeGreaterThan(-1e-6)
          lots += 1
        }
      }),
      { numRuns: 300 },
    )
    expect(lots).toBeGreaterThan(300)
  })

  it('counts what opened bottles were topped up with once, however often it went round', () => {
    fc.assert(
      fc.property(folds, (book) => {
        for (const id of book.cellar.opened.keys()) {
          const found = massOf(total(lineageBack(book, openedPlace(id)).origins))
          const brought = massOf(broughtTo(book, openedPlace(id)))
          expect(found).toBeLessThanOrEqual(brought + relative * throughputOf(book))
          expect(found > 0).toBe(brought > 0)
        }
      }),
      { numRuns: 200 },
    )
  })

  it('adds up forward to all that was bought', () => {
    fc.assert(
      fc.property(folds, (book) => {
        const throughputG = throughputOf(book)
        for (const [lotId, lot] of book.cellar.lots) {
          const { destinations } = lineageForward(book, lotPlace(lotId))
          expectSame(total(destinations), lot.bought, throughputG)
        }
      }),
      { numRuns: 200 },
    )
  })

  it('finds in no place more of all purchases together than stands there', () => {
    fc.assert(
      fc.property(folds, (book) => {
        const throughputG = throughputOf(book)
        const held = new Map<string, Matter>()
        for (const lotId of book.cellar.lots.keys())
          for (const { key, matter } of lineageForward(book, lotPlace(lotId)).destinations)
            held.set(key, addMatter(held.get(key) ?? noMatter, matter))
        const places = new Map<string, Matter>([
          ...[...book.cellar.bottles].map(
            ([id, l]) => [bottlesPlace(id), matterInBottles(l)] as const,
          ),
          ...[...book.cellar.jars].map(
            ([id, jar]) => [`jar:${id}@${jar.batchId}`, wholeMatter(jar)] as const,
          ),
        ])
        // The tap and corrections brought the rest, so that no more than is there comes from lots.
        for (const [place, there] of places)
          for (const kind of matterKinds)
            expect((held.get(place) ?? noMatter)[kind]).toBeLessThanOrEqual(
              there[kind] + relative * throughputG,
            )
      }),
      { numRuns: 100 },
    )
  })

  it('finds the same share of a purchase in bottles both ways', () => {
    fc.assert(
      fc.property(folds, (book) => {
        const throughputG = throughputOf(book)
        for (const [id, lot] of book.cellar.bottles) {
          // What was never taken out or counted otherwise is all still there.
          const touched = book.steps.some(({ effect }) =>
            effect.transfers.some(
              ({ from, to }) =>
                from === bottlesPlace(id) ||
                (to === bottlesPlace(id) && from === 'outside:correction'),
            ),
          )
          if (touched || lot.count === 0) continue
          for (const { key, matter } of lineageBack(book, bottlesPlace(id)).origins) {
            if (!key.startsWith('lot:')) continue
            const { destinations } = lineageForward(book, key)
            expectSame(shareOf(destinations, bottlesPlace(id)), matter, throughputG)
          }
        }
      }),
      { numRuns: 200 },
    )
  })

  it('passes on through each place in between no more than came there', () => {
    fc.assert(
      fc.property(folds, (book) => {
        const throughputG = throughputOf(book)
        for (const id of book.cellar.bottles.keys()) {
          const { nodes, links } = lineageBack(book, bottlesPlace(id))
          const depthOf = new Map(nodes.map(({ key, depth }) => [key, depth]))
          for (const { key, matter } of nodes.filter((node) => node.key !== bottlesPlace(id))) {
            const out = sumMatter(links.filter(({ from }) => from === key).map((l) => l.matter))
            expectSame(matter, out, throughputG)
          }
          const sources = nodes.filter(({ kind }) => kind === 'lot')
          expect(sources.every(({ depth }) => depth === 0)).toBe(true)
          for (const { from, to } of links) {
            expect(depthOf.has(from)).toBe(true)
            expect(depthOf.has(to)).toBe(true)
          }
        }
      }),
      { numRuns: 100 },
    )
  })

  it('finds the fruits of bottles as the way back does', () => {
    fc.assert(
      fc.property(folds, (book) => {
        const throughputG = throughputOf(book)
        const found = fruitsInBottles(book)
        // Bottles that a count brought would have to come from some fruit: only one of the two asks.
        const isCounted = book.steps.some(
          ({ recorded: { move } }) => move.kind === 'correct' && 'bottleLotId' in move.found,
        )
        fc.pre(!isCounted)
        for (const id of book.cellar.bottles.keys()) {
          const fromFruit = lineageBack(book, bottlesPlace(id)).origins.filter(
            ({ key }) => book.cellar.lots.get(key.slice('lot:'.length))?.goods.kind === 'fruit',
          )
          const matter = total(fromFruit)
          const sum = (found.get(id) ?? []).reduce((grams, { massG }) => grams + massG, 0)
          expect(Math.abs(sum - (massOf(matter) - matter.pulpG))).toBeLessThan(
            1e-6 + relative * throughputG,
          )
        }
      }),
      { numRuns: 100 },
    )
  })
})
