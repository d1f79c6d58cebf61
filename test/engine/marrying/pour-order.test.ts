import { describe, expect, it } from 'vitest'
import type { PartKind } from '../../../main/engine/marrying/blend-part.ts'
import { inPouringOrder } from '../../../main/engine/marrying/pour-order.ts'

const part = (name: string, kind: PartKind, densityKgPerM3: number) => ({
  name,
  kind,
  densityKgPerM3,
})
const spirit = part('spirit', 'spirit', 807)
const water = part('water', 'water', 998)
const weak = part('weak extract', 'extract', 980)
const sweet = part('sweet draw', 'extract', 1120)
const sugar = part('sugar', 'sweetener', 1587)
const acid = part('acid', 'acid', 1665)

const namesOf = (parts: Parameters<typeof inPouringOrder<typeof spirit>>[0]) =>
  inPouringOrder(parts).map(({ name }) => name)

describe('inPouringOrder', () => {
  it('pours the lightest liquid first and the heaviest last, water among them', () => {
    expect(namesOf([sweet, water, spirit, weak])).toEqual([
      'spirit',
      'weak extract',
      'water',
      'sweet draw',
    ])
  })

  it('puts water on what is dry before anything else', () => {
    expect(namesOf([sweet, spirit, water, sugar])).toEqual([
      'sugar',
      'water',
      'spirit',
      'sweet draw',
    ])
    expect(namesOf([spirit, water, weak, acid])).toEqual([
      'acid',
      'water',
      'spirit',
      'weak extract',
    ])
  })

  it('starts with the lighter of two dry things, also where there is no water', () => {
    expect(namesOf([acid, sweet, sugar, spirit])).toEqual(['sugar', 'acid', 'spirit', 'sweet draw'])
  })

  it('leaves the list it is given as it was', () => {
    const given = [sweet, spirit]
    inPouringOrder(given)
    expect(given).toEqual([sweet, spirit])
  })
})
