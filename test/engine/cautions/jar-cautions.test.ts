import { describe, expect, it } from 'vitest'
import { delleNumber, hasStones, jarCautions } from '../../../main/engine/cautions/jar-cautions.ts'
import { composeSolution, fruitOf } from '../../../main/engine/index.ts'
import type { FruitCharge, JarState } from '../../../main/engine/ledger/cellar-state.ts'
import { matterOf, noMatter, type Matter } from '../../../shared/matter.ts'
import { buyFruit, buySpirit, dayAt, folded } from '../ledger/book-of-moves.ts'

/** A jar of dead fruit as the ledger keeps it, of which each test says what matters to it. */
function steepingJar(fruitId = 'plum'): JarState & { readonly fruit: FruitCharge } {
  const { cellar } = folded([
    [0, buyFruit('lot', fruitId, 1000)],
    [0, buySpirit('spirit', 1000, 70)],
    [0, { kind: 'charge', batchId: 'b', jarId: 'j', lotId: 'lot', massG: 1000, cut: 'frozen' }],
    [0, { kind: 'pourSpirit', batchId: 'b', jarId: 'j', lotId: 'spirit', volumeMl: 1000 }],
  ])
  const jar = cellar.jars.get('j')
  if (!jar?.fruit) throw new Error('no fruit in the jar')
  // Flesh alone, and no room between the pieces: neither stones nor gaps unless a test says so.
  return { ...jar, fruit: { ...jar.fruit, cells: 'dead', edibleG: 1000, bulkMl: 0 } }
}

const liquid = (volumeMl: number, strengthPctVol: number, sugarGPerL = 0): Matter => ({
  ...noMatter,
  ...composeSolution({ volumeMl, strengthPctVol, sugarGPerL }),
})
const bodies = (free: Matter, held = noMatter, bed = noMatter) => ({ free, held, bed })

interface Case {
  readonly jar: JarState
  readonly capacityMl?: number
  readonly days?: number
}
const spoken = ({ jar, capacityMl = 3000, days = 0 }: Case) =>
  jarCautions({
    jarId: 'j',
    jar: { ...jar, stageSinceMs: Date.parse(dayAt(10)) },
    capacityMl,
    nowMs: Date.parse(dayAt(10 + days)),
    fruitOf,
  })
const said = (
  severity: 'note' | 'warning',
  code: string,
  value: number,
  limit: number,
): Record<string, unknown> => ({
  code,
  severity,
  batchId: 'b',
  jarId: 'j',
  value: expect.closeTo(value, 6),
  limit: expect.closeTo(limit, 6),
})

describe('delleNumber', () => {
  it('is a tenth of the g/L and 4.5 for each % vol', () => {
    expect(delleNumber(16, 30)).toBe(75)
    expect(delleNumber(0, 650)).toBe(65)
    expect(delleNumber(20, 0)).toBe(90)
  })
})

describe('jarCautions', () => {
  const liqueur = (strengthPctVol: number, sugarGPerL = 0): JarState => ({
    ...steepingJar(),
    bodies: bodies(liquid(1000, strengthPctVol, sugarGPerL)),
  })
  const drained = (jar: JarState): JarState => ({ ...jar, stage: 'drawnOff', fruit: null })

  it('says nothing of a jar that is well', () => {
    expect(spoken({ jar: liqueur(40, 100), days: 300 })).toEqual([])
    expect(spoken({ jar: drained(liqueur(40, 100)), days: 300 })).toEqual([])
  })

  it('warns of yeast below a Delle number of 75, and of weak liquid on fruit', () => {
    // 100 g/L and 10 % vol: 10 + 45.
    expect(spoken({ jar: liqueur(10, 100) })).toEqual([
      said('warning', 'mayFerment', 55, 75),
      said('warning', 'weakForFruit', 10, 20),
    ])
    expect(spoken({ jar: drained(liqueur(10, 100)) })).toEqual([
      said('warning', 'mayFerment', 55, 75),
    ])
    // 30 g/L and 15.9 or 16.1 % vol: 74.55 and 75.45.
    expect(spoken({ jar: drained(liqueur(15.9, 30)) })).toEqual([
      said('warning', 'mayFerment', 74.55, 75),
    ])
    expect(spoken({ jar: drained(liqueur(16.1, 30)) })).toEqual([])
  })

  it('wants 20 % vol while fruit is in', () => {
    expect(spoken({ jar: liqueur(19.9) })).toEqual([said('warning', 'weakForFruit', 19.9, 20)])
    expect(spoken({ jar: liqueur(20.1) })).toEqual([])
    expect(spoken({ jar: drained(liqueur(19.9)) })).toEqual([])
  })

  it('reckons with what is in the fruit too, once that is dead', () => {
    // 500 ml of 30 % and 500 ml of water make 1 litre of about 15 %.
    const jar = { ...steepingJar(), bodies: bodies(liquid(500, 30), liquid(500, 0)) }
    const [ferment, weak, ...others] = spoken({ jar })
    expect(others).toEqual([])
    expect(ferment?.code).toBe('mayFerment')
    expect(weak?.code).toBe('weakForFruit')
    expect(weak?.value).toBeCloseTo(15, 0)
  })

  it('lets fruit stand with sugar alone for 24 hours', () => {
    const sugared = (jar: JarState): JarState => ({
      ...jar,
      stage: 'layered',
      bodies: bodies(liquid(300, 0, 400)),
    })
    const raw = steepingJar()
    const living: JarState = { ...raw, fruit: { ...raw.fruit, cells: 'living' } }
    for (const jar of [sugared(raw), sugared(living)]) {
      expect(spoken({ jar, days: 1 })).toEqual([])
      expect(spoken({ jar, days: 25 / 24 })).toEqual([said('warning', 'sugarOnlyTooLong', 25, 24)])
    }
    expect(spoken({ jar: { ...sugared(raw), fruit: null }, days: 30 })).toEqual([])
    expect(spoken({ jar: liqueur(40), days: 30 })).toEqual([])
  })

  it('wants a twentieth of the vessel left empty', () => {
    expect(spoken({ jar: liqueur(40), capacityMl: 1050 })).toEqual([
      said('warning', 'jarOverfull', 1000, 997.5),
    ])
    expect(spoken({ jar: liqueur(40), capacityMl: 1060 })).toEqual([])
  })

  it('counts all that takes room: what the fruit holds, pulp at 0.67 ml/g, sugar at 0.63 ml/g', () => {
    const held = { ...liquid(200, 40), pulpG: 100 }
    const jar = {
      ...steepingJar(),
      stage: 'layered',
      bodies: bodies(liquid(1000, 40), held, matterOf({ sugarG: 100 })),
    } satisfies JarState
    // 1000 + 200 + 67 + 63 ml, of 0.95 · 1390 = 1320.5 and 0.95 · 1410 = 1339.5 ml.
    expect(spoken({ jar, capacityMl: 1390 })).toEqual([
      said('warning', 'jarOverfull', 1330, 1320.5),
    ])
    expect(spoken({ jar, capacityMl: 1410 })).toEqual([])
  })

  it('notes fruit that its liquid leaves bare by more than a tenth of the gaps', () => {
    const raw = steepingJar()
    const bare = (freeMl: number, held = noMatter): JarState => ({
      ...raw,
      fruit: { ...raw.fruit, bulkMl: 500 },
      bodies: bodies(liquid(freeMl, 40), held),
    })
    expect(spoken({ jar: bare(440) })).toEqual([said('note', 'uncovered', 440, 500)])
    expect(spoken({ jar: bare(460) })).toEqual([])
    // What the pieces hold, and their pulp, is no gap: 500 − 100 − 67 = 333 ml, of which 300 will do.
    const full = { ...liquid(100, 40), pulpG: 100 }
    expect(spoken({ jar: bare(310, full) })).toEqual([])
    expect(spoken({ jar: bare(290, full) })).toEqual([said('note', 'uncovered', 290, 333)])
    expect(spoken({ jar: { ...bare(290), stage: 'sugarDraw' } })).toEqual([])
    expect(spoken({ jar: drained(bare(290)) })).toEqual([])
    expect(spoken({ jar: { ...bare(290), fruit: null } })).toEqual([])
    // Pieces that hold more than their bulk leave no gap.
    expect(spoken({ jar: bare(1, liquid(600, 40)) })).toEqual([])
  })

  it('notes sugar at the bottom, but not where it was layered', () => {
    const withBed = (sugarG: number): JarState => ({
      ...liqueur(40),
      bodies: bodies(liquid(1000, 40), noMatter, matterOf({ sugarG })),
    })
    expect(spoken({ jar: withBed(5) })).toEqual([said('note', 'sugarUndissolved', 5, 0)])
    expect(spoken({ jar: withBed(1) })).toEqual([])
    expect(spoken({ jar: { ...withBed(5), stage: 'layered' } })).toEqual([])
  })

  it('warns of whole stones after eight weeks in spirit', () => {
    const raw = steepingJar()
    const whole: JarState = {
      ...raw,
      fruit: { ...raw.fruit, edibleG: 900 },
      bodies: bodies(liquid(1000, 40)),
    }
    expect(spoken({ jar: whole, days: 57 })).toEqual([said('warning', 'stonesTooLong', 57, 56)])
    expect(spoken({ jar: whole, days: 56 })).toEqual([])
    expect(spoken({ jar: drained(whole), days: 57 })).toEqual([])
    // Without spirit it is the sugar that has stood too long.
    const sugared = { ...whole, bodies: bodies(liquid(1000, 0, 400)) }
    expect(spoken({ jar: sugared, days: 57 })).toEqual([
      said('warning', 'sugarOnlyTooLong', 57 * 24, 24),
    ])
  })
})

describe('hasStones', () => {
  const weighed = (fruits: FruitCharge['fruits'], edibleG: number): JarState => {
    const jar = steepingJar()
    return { ...jar, fruit: { ...jar.fruit, fruits, edibleG } }
  }
  const plums = (massG: number) => ({ fruitId: 'plum', massG })
  const apples = (massG: number) => ({ fruitId: 'apple', massG })

  it('is so of stone fruit that weighs over 2 % more than its flesh', () => {
    expect(hasStones(weighed([plums(1000)], 979), fruitOf)).toBe(true)
    expect(hasStones(weighed([plums(1000)], 980), fruitOf)).toBe(false)
    expect(hasStones(weighed([plums(1000)], 1000), fruitOf)).toBe(false)
  })

  it('counts all charges together, one of stone fruit among them', () => {
    expect(hasStones(weighed([apples(500), plums(500)], 950), fruitOf)).toBe(true)
    expect(hasStones(weighed([apples(1000)], 900), fruitOf)).toBe(false)
    expect(hasStones({ ...steepingJar(), fruit: null }, fruitOf)).toBe(false)
  })
})
