/** Undo and redo of any depth: the ledger is as if what was taken back had never been done. */
import Database from 'better-sqlite3'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ledgerDigest } from '../../main/cellar/ledger-digest.ts'
import { viewOfBook } from '../../main/service/ledger-view.ts'
import type { Answer } from '../../shared/channels.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

type Act =
  | {
      readonly does: 'record'
      readonly day: number
      readonly kind: number
      readonly amount: number
    }
  | { readonly does: 'amend'; readonly which: number; readonly amount: number }
  | { readonly does: 'strike'; readonly which: number }
  | { readonly does: 'undo' }
  | { readonly does: 'redo' }

const day = fc.integer({ min: 2, max: 60 })
const amount = fc.integer({ min: 20, max: 900 })
const which = fc.nat({ max: 30 })
const act: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ does: fc.constant('record'), day, kind: fc.nat({ max: 6 }), amount }),
  },
  { weight: 2, arbitrary: fc.record({ does: fc.constant('amend'), which, amount }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('strike'), which }) },
  { weight: 3, arbitrary: fc.record({ does: fc.constant('undo') }) },
  { weight: 3, arbitrary: fc.record({ does: fc.constant('redo') }) },
)

/** Moves of the trial cellar; some cannot be where they are asked for, and are refused. */
function moveOf({ day: days, kind, amount: much }: Extract<Act, { does: 'record' }>): Move {
  const at = new Date(Date.parse('2026-09-01T09:00:00Z') + days * 86_400_000).toISOString()
  const north = { at, batchId: 'damson', jarId: 'north' }
  const moves: Move[] = [
    { ...north, kind: 'pourWater', volumeMl: much },
    { ...north, kind: 'pourSpirit', lotId: 'spirit', volumeMl: much },
    { ...north, kind: 'sugar', lotId: 'sugar', massG: much },
    { ...north, kind: 'stir' },
    {
      at,
      kind: 'drawOff',
      batchId: 'damson',
      fromJarId: 'north',
      toJarId: 'south',
      volumeMl: much,
    },
    {
      at,
      kind: 'buy',
      lotId: `bought-${days}-${much}`,
      goods: { kind: 'fruit', fruitId: 'sloe' },
      massG: much,
    },
    { at, kind: 'discard', from: { lotId: 'damsons', massG: much } },
  ]
  return moves[kind] as Move
}

const changed = (move: Move, much: number): Move => {
  if ('massG' in move) return { ...move, massG: much }
  if ('volumeMl' in move) return { ...move, volumeMl: much } as Move
  return { ...move, note: `amount ${much}` }
}

function digestOf({ options }: Trial): string {
  const book = new Database(options.ownFile, { readonly: true })
  const digest = ledgerDigest(viewOfBook(book).folded.cellar)
  book.close()
  return digest
}

/** Does what is asked as a window would: a stack of groups, and one of what was taken back. */
async function playOut(t: Trial, acts: readonly Act[]): Promise<{ undos: number; redos: number }> {
  let serial = 0
  const key = () => `act-${(serial += 1)}`
  const known: string[] = []
  /** Each with the ledger as it was before it; for what was taken back, as it was with it. */
  const done: { groupId: string; before: string }[] = []
  const undone: { groupId: string; after: string }[] = []
  const told = { undos: 0, redos: 0 }
  /** The ledger after each undo and redo, and as it should be. */
  const seen: { is: string; should: string }[] = []
  const compare = (should: string) => seen.push({ is: digestOf(t), should })

  async function write(group: Promise<Answer<'moves.record'> | undefined>, before: string) {
    const answer = await group
    if (!answer) {
      compare(before)
      return
    }
    known.push(...answer.moveIds.filter((id) => !known.includes(id)))
    done.push({ groupId: answer.groupId, before })
    undone.length = 0
  }

  async function amend(at: number, next: (move: Move) => Move | null) {
    const moveId = known[at % Math.max(known.length, 1)]
    const newest = moveId && (await t.ask('moves.history', { moveId })).at(-1)
    if (!moveId || !newest || !newest.move) return
    const request = { key: key(), moveId, fromVersion: newest.version, move: next(newest.move) }
    await write(
      t.ask('moves.amend', request).catch(() => undefined),
      digestOf(t),
    )
  }

  for (const one of acts) {
    const before = digestOf(t)
    if (one.does === 'record')
      await write(
        t.ask('moves.record', { key: key(), moves: [moveOf(one)] }).catch(() => undefined),
        before,
      )
    else if (one.does === 'amend') await amend(one.which, (move) => changed(move, one.amount))
    else if (one.does === 'strike') await amend(one.which, () => null)
    else if (one.does === 'undo') {
      const last = done.pop()
      if (!last) continue
      const { groupId } = await t.ask('moves.undo', { key: key(), groupId: last.groupId })
      compare(last.before)
      undone.push({ groupId, after: before })
      told.undos += 1
    } else {
      const last = undone.pop()
      if (!last) continue
      const { groupId } = await t.ask('moves.undo', { key: key(), groupId: last.groupId })
      compare(last.after)
      done.push({ groupId, before })
      told.redos += 1
    }
  }
  while (done.length > 0) {
    const last = done.pop()!
    await t.ask('moves.undo', { key: key(), groupId: last.groupId })
    compare(last.before)
  }
  expect(seen.map(({ is }) => is)).toEqual(seen.map(({ should }) => should))
  return told
}

describe('undo and redo in the order of a window', () => {
  it('leave the same ledger as never having done it, to the bit, whatever was done between', async () => {
    let undos = 0
    let redos = 0
    await fc.assert(
      fc.asyncProperty(fc.array(act, { minLength: 20, maxLength: 40 }), async (acts) => {
        const t = await trial()
        await withPantry(t)
        await t.ask('moves.record', {
          key: 'charge',
          moves: [
            {
              at: '2026-09-01T09:00:00Z',
              kind: 'charge',
              batchId: 'damson',
              jarId: 'north',
              lotId: 'damsons',
              massG: 1200,
              cut: 'pricked',
            },
          ],
        })
        const begun = digestOf(t)
        const told = await playOut(t, acts)
        expect(digestOf(t)).toBe(begun)
        undos += told.undos
        redos += told.redos
        t.service.close()
      }),
      { numRuns: 25, seed: 20261126 },
    )
    // The sequences do undo and redo, and not now and then only.
    expect(undos).toBeGreaterThan(50)
    expect(redos).toBeGreaterThan(20)
  }, 120_000)
})

describe('moves.undo', () => {
  it('refuses a key that recorded something, and takes nothing back', async () => {
    const t = await trial()
    await withPantry(t)
    const before = digestOf(t)
    expect(await t.refusal('moves.undo', { key: 'pantry' })).toMatchObject({ code: 'badInput' })
    expect(digestOf(t)).toBe(before)
    t.service.close()
  })
})
