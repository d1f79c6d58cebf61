import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addMatter,
  mapMatter,
  massOf,
  matterKinds,
  noMatter,
  subtractMatter,
  type Matter,
} from '../../../shared/matter.ts'
import {
  balance,
  describeLiquid,
  fold,
  fruitOf,
  jarPlace,
  liquidVolumeMl,
  lotPlace,
  bottlesPlace,
  openedPlace,
  wholeMatter,
  matterInBottles,
  settledJar,
  type CellarState,
} from '../../../main/engine/index.ts'
import { histories, play } from './random-history.ts'

const relative = 1e-9

function expectNothingMissing(cellar: CellarState) {
  const books = balance(cellar)
  const throughputG = massOf(books.bought) + massOf(books.tap) + 1
  for (const kind of matterKinds)
    expect(Math.abs(books.missing[kind])).toBeLessThanOrEqual(relative * throughputG)
}

/** All places of the cellar with what is in them, at one instant. */
function places(cellar: CellarState, atMs: number): Map<string, Matter> {
  const found = new Map<string, Matter>()
  for (const [id, jar] of cellar.jars)
    found.set(jarPlace(id), wholeMatter(settledJar(jar, Math.max(atMs, jar.atMs))))
  for (const [id, lot] of cellar.lots) found.set(lotPlace(id), lot.matter)
  for (const [id, lot] of cellar.bottles) found.set(bottlesPlace(id), matterInBottles(lot))
  for (const [id, { matter }] of cellar.opened) found.set(openedPlace(id), matter)
  for (const [id, matter] of cellar.outside) found.set(id, matter)
  return found
}

describe('fold', () => {
  it('keeps every gram over 2,000 random histories of up to 40 moves', () => {
    let moves = 0
    fc.assert(
      fc.property(histories({ minLength: 8, maxLength: 40 }), (wishes) => {
        const history = play(wishes, () => undefined)
        moves += history.moves.length
        expectNothingMissing(history.cellar)
      }),
      { numRuns: 2000 },
    )
    // The generator must not have been refused its way out of the test.
    expect(moves).toBeGreaterThan(2000 * 8)
  })

  it('moves exactly what its transfers say, place by place, and leaves no negative amount', () => {
    fc.assert(
      fc.property(histories({ minLength: 8, maxLength: 40 }), (wishes) => {
        let untoldG = 0
        let leastG = 0
        play(wishes, (before, after, step) => {
          const was = places(before, step.atMs)
          const is = places(after, step.atMs)
          const told = new Map<string, Matter>()
          const tell = (place: string, matter: Matter) =>
            told.set(place, addMatter(told.get(place) ?? noMatter, matter))
          for (const { from, to, matter } of step.effect.transfers) {
            tell(from, subtractMatter(noMatter, matter))
            tell(to, matter)
          }
          for (const place of new Set([...was.keys(), ...is.keys()])) {
            const change = subtractMatter(is.get(place) ?? noMatter, was.get(place) ?? noMatter)
            const untold = subtractMatter(change, told.get(place) ?? noMatter)
            for (const kind of matterKinds) untoldG = Math.max(untoldG, Math.abs(untold[kind]))
          }
          for (const jar of after.jars.values())
            for (const body of [jar.bodies.free, jar.bodies.held, jar.bodies.bed])
              for (const kind of matterKinds) leastG = Math.min(leastG, body[kind])
          for (const { matter } of after.opened.values())
            for (const kind of matterKinds) leastG = Math.min(leastG, matter[kind])
        })
        expect(untoldG).toBeLessThan(1e-6)
        expect(leastG).toBeGreaterThan(-1e-6)
      }),
      { numRuns: 300 },
    )
  })

  it('gives the same state to the bit, whole or move by move', () => {
    fc.assert(
      fc.property(histories({ minLength: 8, maxLength: 30 }), (wishes) => {
        const { cellar, moves } = play(wishes, () => undefined)
        const whole = fold(moves, { fruitOf })
        expect(whole.refused).toEqual([])
        expect(whole.cellar).toEqual(cellar)
        expect(fold(moves.toReversed(), { fruitOf }).cellar).toEqual(cellar)
      }),
      { numRuns: 200 },
    )
  })

  it('has each bottle on one shelf, no more than were filled, and none above its size', () => {
    const told = new Map<string, number>()
    fc.assert(
      fc.property(histories({ minLength: 20, maxLength: 60 }), (wishes) => {
        play(wishes, (_, after, { recorded: { move } }) => {
          told.set(move.kind, (told.get(move.kind) ?? 0) + 1)
          for (const [id, { count, filledCount, shelves }] of after.bottles) {
            const counts = [...shelves.values()]
            expect(counts.every((there) => Number.isInteger(there) && there > 0)).toBe(true)
            expect(counts.reduce((sum, there) => sum + there, 0)).toBe(count)
            const standing = [...after.opened.values()].filter(
              (opened) => opened.bottleLotId === id && massOf(opened.matter) > 0,
            )
            expect(count + standing.length).toBeLessThanOrEqual(filledCount)
          }
          for (const { matter, bottleSizeMl } of after.opened.values())
            expect(liquidVolumeMl(mapMatter(matter, (g) => Math.max(0, g)))).toBeLessThanOrEqual(
              bottleSizeMl + 1,
            )
        })
      }),
      { numRuns: 400 },
    )
    // The generator must have come to each of them.
    for (const kind of [
      ...([
        'shelve',
        'openBottle',
        'pourGlass',
        'topUp',
        'taste',
        'breakBottle',
        'bringIn',
      ] as const),
      ...(['discard', 'correct', 'unbottle', 'drawBottle', 'give'] as const),
    ])
      expect([kind, (told.get(kind) ?? 0) > 20]).toEqual([kind, true])
  })

  it('never makes a liquid stronger than the strongest spirit poured', () => {
    fc.assert(
      fc.property(histories({ minLength: 8, maxLength: 30 }), (wishes) => {
        const withoutCorrections = wishes.filter(({ kind }) => kind !== 21)
        play(withoutCorrections, (_, after) => {
          for (const jar of after.jars.values()) {
            const strengthPctVol = describeLiquid(jar.bodies.free)?.strengthPctVol ?? 0
            expect(strengthPctVol).toBeLessThanOrEqual(jar.strongestPctVol + 0.05)
          }
        })
      }),
      { numRuns: 200 },
    )
  })
})
