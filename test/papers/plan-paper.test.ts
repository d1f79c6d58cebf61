import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import type { Settings } from '../../shared/channels.ts'
import { planPaper } from '../../main/papers/plan-paper.ts'
import { fruitOf, outcomeOf, usualDraft } from '../../main/engine/index.ts'

const spec = usualDraft({
  fruit: fruitOf('sour_cherry'),
  fruitG: 2000,
  spiritPctVol: 96,
  startAt: '2026-07-01T08:00:00.000Z',
})

interface Change extends Partial<
  Pick<Settings, 'units' | 'temperature' | 'strength' | 'language'>
> {
  draws?: number
  size?: 'A4' | 'Letter'
}

async function read(change: Change) {
  const draw = { sugarG: 200, days: 8 }
  const drawn = {
    ...spec,
    isPressed: true,
    sugarDraws: Array.from({ length: change.draws ?? 1 }, () => draw),
  }
  const bytes = await planPaper({
    name: 'Wiśniówka z Żółtych Łąk',
    note: 'Zażółć gęślą jaźń: Őszi körte, Žluťoučký kůň.',
    size: change.size ?? 'A4',
    settings: {
      locale: 'pl-PL',
      units: change.units ?? 'metric',
      temperature: change.temperature ?? 'celsius',
      strength: change.strength ?? 'pctVol',
      language: change.language,
      theme: 'light',
      currency: 'PLN',
      reminders: false,
    },
    spec: drawn,
    outcome: outcomeOf(drawn, { fruitOf }),
    fruitOf,
  })
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
  const page = await pdf.getPage(1)
  const { items } = await page.getTextContent()
  const text = items.map((item) => ('str' in item ? item.str : '')).join(' ')
  const { width, height } = page.getViewport({ scale: 1 })
  return { pages: pdf.numPages, text: text.replace(/\s+/g, ' '), width, height }
}

describe('planPaper', () => {
  it('keeps the letters of Polish, Hungarian and Czech names', async () => {
    const { text } = await read({})
    expect(text).toContain('Wiśniówka z Żółtych Łąk')
    expect(text).toContain('Zażółć gęślą jaźń: Őszi körte, Žluťoučký kůň.')
  })

  it('says what to buy and what to do, in the order of the days', async () => {
    const { text } = await read({})
    const told = ['2,00 kg', '1,13 L spirit', 'Fill the jar', 'Pour off', 'Press', 'Fill 6 bottles']
    const places = told.map((words) => text.indexOf(words))
    expect(places.every((place) => place >= 0)).toBe(true)
    expect(places).toEqual([...places].sort((a, b) => a - b))
  })

  it.each([
    ['A4', 595.28, 841.89],
    ['Letter', 612, 792],
  ] as const)('is one page of %s, however long the plan', async (size, width, height) => {
    const paper = await read({ size, draws: 4 })
    expect(paper.pages).toBe(1)
    expect(paper.width).toBeCloseTo(width, 1)
    expect(paper.height).toBeCloseTo(height, 1)
  })

  it('speaks Polish in a Polish cellar, and leaves no English', async () => {
    const { text } = await read({ language: 'pl' })
    const told = ['Do kupienia', 'Wsyp do naczynia', 'Zlej płyn', 'Wyciśnij', 'Napełnij 6 butelek']
    for (const words of told) expect(text).toContain(words)
    expect(text).toMatch(/moc \d+,\d % obj\./)
    expect(text).not.toMatch(/spirit|sugar|bottles|Ready|Costs/)
  })

  it('measures strength in proof, and warmth in °F, where the cellar does', async () => {
    const { text } = await read({ strength: 'proof', temperature: 'fahrenheit' })
    expect(text).toContain('proof')
    expect(text).toContain('68 °F')
    expect(text).not.toMatch(/% vol|°C/)
  })

  it('weighs in pounds where the cellar does', async () => {
    const { text } = await read({ units: 'us' })
    expect(text).toContain('4,41 lb')
  })
})
