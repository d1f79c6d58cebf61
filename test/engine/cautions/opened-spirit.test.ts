import { describe, expect, it } from 'vitest'
import { openedSpirit, takePouring, type Pouring } from '../../../main/engine/index.ts'
import { buyFruit, buySpirit, dayAt, folded, type Deed } from '../ledger/book-of-moves.ts'

type Lines = readonly (readonly [day: number, deed: Deed])[]

const bought = (strengthPctVol = 96): Lines => [
  [0, buyFruit('plums', 'plum', 2000)],
  [0, buySpirit('spirit', 1000, strengthPctVol)],
]
const pour = (day: number, volumeMl: number): Lines => [
  [day, { kind: 'pourSpirit', batchId: 'b', jarId: 'jar', lotId: 'spirit', volumeMl }],
]
const found = (day: number, volumeMl: number): Lines => [
  [day, { kind: 'correct', found: { lotId: 'spirit', volumeMl } }],
]

function askedAt(lines: Lines, day: number, shutDay?: number) {
  const { cellar, steps, refused } = folded(lines)
  expect(refused).toEqual([])
  const pourings = new Map<string, Pouring>()
  for (const step of steps) takePouring(pourings, step)
  return openedSpirit({
    lots: cellar.lots,
    pourings,
    shutAtMs: new Map(shutDay === undefined ? [] : [['spirit', Date.parse(dayAt(shutDay))]]),
    nowMs: Date.parse(dayAt(day)),
  })
}

describe('openedSpirit', () => {
  const opened = [...bought(), ...pour(10, 400)]

  it('asks of 600 ml of 96 % a month after it was last poured from, and tells since when it is open', () => {
    expect(askedAt(opened, 39.9)).toEqual([])
    const [asked, ...others] = askedAt([...opened, ...pour(20, 100)], 50)
    expect(others).toEqual([])
    expect(asked).toMatchObject({ code: 'openedSpirit', lotId: 'spirit', since: dayAt(10) })
    expect(asked?.value).toBeCloseTo(500, 0)
  })

  it('asks once: no more when that was answered, until it is poured from again', () => {
    expect(askedAt(opened, 400, 41)).toEqual([])
    const again = [...opened, ...pour(50, 100)]
    expect(askedAt(again, 60, 41)).toEqual([])
    expect(askedAt(again, 80, 41)).toHaveLength(1)
  })

  it('leaves alone what is sealed, weak, nearly gone, or no spirit', () => {
    expect(askedAt(bought(), 400)).toEqual([])
    expect(askedAt([...bought(50), ...pour(10, 400)], 400)).toEqual([])
    expect(askedAt([...bought(), ...pour(10, 950)], 400)).toEqual([])
    const charge: Lines = [
      [1, { kind: 'charge', batchId: 'b', jarId: 'jar', lotId: 'plums', massG: 900, cut: 'cut' }],
    ]
    expect(askedAt([...bought(), ...charge], 400)).toEqual([])
  })

  it('counts putting the book right as looking at it, and never as opening', () => {
    expect(askedAt([...bought(), ...found(10, 990)], 400)).toEqual([])
    expect(askedAt([...opened, ...found(30, 580)], 50)).toEqual([])
    expect(askedAt([...opened, ...found(30, 580)], 60)).toHaveLength(1)
  })
})
