import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import type { LabelJob, UsualLabel } from '../../shared/schemas/labels.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

/** Twelve small bottles of damson from the pantry's fruit, spirit and sugar. */
async function withBottles(): Promise<Trial> {
  const cellar = await trial()
  await withPantry(cellar)
  const inJar = { batchId: 'damson', jarId: 'north' }
  await cellar.ask('moves.record', {
    key: 'make',
    moves: [
      {
        ...inJar,
        at: '2026-09-02T08:00:00Z',
        kind: 'charge',
        lotId: 'damsons',
        massG: 1000,
        cut: 'pricked',
      },
      { ...inJar, at: '2026-09-02T08:10:00Z', kind: 'pourSpirit', lotId: 'spirit', volumeMl: 700 },
      { ...inJar, at: '2026-09-02T08:20:00Z', kind: 'pourWater', volumeMl: 400 },
      { ...inJar, at: '2026-09-02T08:30:00Z', kind: 'sugar', lotId: 'sugar', massG: 300 },
      {
        batchId: 'damson',
        at: '2026-11-01T08:00:00Z',
        kind: 'drawOff',
        fromJarId: 'north',
        toJarId: 'south',
      },
      {
        batchId: 'damson',
        at: '2026-11-02T08:00:00Z',
        kind: 'bottle',
        fromJarId: 'south',
        bottleLotId: 'small',
        bottleSizeMl: 200,
        count: 5,
      },
    ],
  })
  return cellar
}

async function jobFor({ ask }: Trial, text: Partial<UsualLabel['text']> = {}): Promise<LabelJob> {
  const [usual] = await ask('labels.usual', { bottleLotIds: ['small'], strengthPrefix: 'none' })
  const { usual: sheets } = await ask('labels.sheets', {})
  const { strengthPrefix: _form, sheetId, ...style } = await ask('labels.style', {})
  const sheet = sheets.find(({ id }) => id === sheetId)
  if (!usual || !sheet) throw new Error('no label')
  const { bottleLotId, colour, bottleSizeMl, count } = usual
  return {
    ...style,
    sheet,
    firstPosition: 1,
    labels: [
      { bottleLotId, colour, bottleSizeMl, copies: count, text: { ...usual.text, ...text } },
    ],
  }
}

describe('labels.usual', () => {
  it('tells of a lot what went into it, the most first, and how strong it is', async () => {
    const { ask } = await withBottles()
    const [label] = await ask('labels.usual', { bottleLotIds: ['small'], strengthPrefix: 'alc' })
    const { liquid } = (await ask('bottles.list', {}))[0] ?? {}
    expect(label).toMatchObject({ colour: '#4a2545', bottleSizeMl: 200, count: 5 })
    expect(label?.strengthPctVol).toBeCloseTo(liquid?.strengthPctVol ?? 0, 9)
    expect(label?.text.strength).toMatch(/^alc\.\u00a0\d\d(?:\.\d)?\u00a0%\u00a0vol$/)
    expect(label?.text).toMatchObject({ name: 'Damson', vintage: '2026', volume: '200\u00a0ml' })
    const named = label?.text.ingredients.toLowerCase().split(', ') ?? []
    expect(named.toSorted()).toEqual(['damson', 'spirit', 'sugar', 'water'])
    expect(named.at(-1)).toBe('sugar')
  })

  it('refuses a lot that is not there', async () => {
    const { refusal } = await withBottles()
    const asked = { bottleLotIds: ['none'], strengthPrefix: 'none' as const }
    expect(await refusal('labels.usual', asked)).toMatchObject({ code: 'notFound' })
  })
})

describe('labels.draw', () => {
  it('finds nothing to say of what the book itself would print', async () => {
    const cellar = await withBottles()
    const drawn = await cellar.ask('labels.draw', await jobFor(cellar))
    expect(drawn.problems).toEqual([])
    expect(drawn.pages[0]?.placements).toHaveLength(5)
  })

  it('says a strength that is not in the law’s form, or further off than it allows', async () => {
    const cellar = await withBottles()
    const [usual] = await cellar.ask('labels.usual', {
      bottleLotIds: ['small'],
      strengthPrefix: 'none',
    })
    const truth = usual?.strengthPctVol ?? 0
    const codes = async (strength: string) =>
      (await cellar.ask('labels.draw', await jobFor(cellar, { strength }))).problems
        .filter(({ field, severity }) => field === 'strength' && severity === 'warning')
        .map(({ code }) => code)
    expect(await codes('about 30')).toEqual(['strengthForm'])
    expect(await codes(`${(truth + 1.4).toFixed(1)} % vol`)).toEqual([])
    expect(await codes(`${(truth + 1.7).toFixed(1)} % vol`)).toEqual(['strengthOff'])
  })

  it('refuses a place that the sheet has not, and more labels than it prints at once', async () => {
    const cellar = await withBottles()
    const asked = await jobFor(cellar)
    const [label] = asked.labels
    expect(await cellar.refusal('labels.draw', { ...asked, firstPosition: 9 })).toMatchObject({
      code: 'badInput',
    })
    const many = Array.from({ length: 3 }, () => ({ ...label, copies: 2000 })) as LabelJob['labels']
    expect(await cellar.refusal('labels.draw', { ...asked, labels: many })).toMatchObject({
      code: 'badInput',
    })
  })
})

describe('labels.paper', () => {
  it('is a PDF named for what is on it', async () => {
    const cellar = await withBottles()
    const paper = await cellar.ask('labels.paper', await jobFor(cellar, { name: 'Śliwka / "old"' }))
    expect(paper.fileName).toBe('Śliwka old 2026-11-20.pdf')
    const data = new Uint8Array(Buffer.from(paper.pdfBase64, 'base64'))
    const { numPages } = await getDocument({ data, verbosity: 0 }).promise
    expect(numPages).toBe(1)
  })
})

describe('sheets and style', () => {
  it('are kept and forgotten; the usual sheets stay as they are', async () => {
    const { ask, refusal } = await withBottles()
    const { usual } = await ask('labels.sheets', {})
    const [first] = usual
    if (!first) throw new Error('no sheets')
    const mine = { ...first, id: 'mine', name: 'The yellow box' }
    await ask('labels.keepSheet', mine)
    expect((await ask('labels.sheets', {})).own).toEqual([mine])
    expect(await refusal('labels.keepSheet', first)).toMatchObject({ code: 'alreadyThere' })
    await ask('labels.removeSheet', { sheetId: 'mine' })
    expect(await refusal('labels.removeSheet', { sheetId: 'mine' })).toMatchObject({
      code: 'notFound',
    })
    const style = { ...(await ask('labels.style', {})), design: 'lamplight' as const }
    await ask('labels.keepStyle', style)
    expect(await ask('labels.style', {})).toEqual(style)
  })
})
