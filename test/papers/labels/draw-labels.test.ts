import { describe, expect, it } from 'vitest'
import { drawLabels } from '../../../main/papers/labels/draw-labels.ts'
import { usualSheets } from '../../../main/papers/labels/usual-sheets.ts'
import {
  DrawnLabels,
  type LabelField,
  type LabelJob,
  type LabelOp,
} from '../../../shared/schemas/labels.ts'
import { leastXHeightMm } from '../../references/label-law.ts'
import { inkOf, overlap, type InkBox } from './ink.ts'
import { designs, everything, hostile, job, parts, sheetOf, usual } from './label-samples.ts'

const textOf = (ops: readonly LabelOp[], field: LabelField): string =>
  ops.flatMap((op) => (op.op === 'text' && op.field === field ? [op.text] : [])).join('')

const bare = (text: string): string => text.normalize('NFC').replaceAll(/[\s\u00a0]/g, '')

/** What is not as it should be on any label of a job, in words. */
function faults(asked: LabelJob): string[] {
  const drawn = drawLabels(asked)
  expect(DrawnLabels.safeParse(drawn).success).toBe(true)
  const { labelWidthMm: width, labelHeightMm: height } = asked.sheet
  return drawn.drawings.flatMap((ops, index) => {
    const boxes = ops.map((op) => inkOf(op, drawn.glyphs))
    const outside = boxes
      .flat()
      .filter((box) => box.left < 0 || box.top < 0 || box.right > width || box.bottom > height)
      .map(({ of }) => `${of} of ${index} leaves the label`)
    return [...new Set([...outside, ...overlaps(ops, boxes, index), ...unsaid(ops, index)])]
  })

  /** Letters stand on grounds; nothing else lies on anything. */
  function overlaps(ops: readonly LabelOp[], boxes: readonly InkBox[][], index: number): string[] {
    const solid = ops.flatMap((op, at) =>
      op.op === 'text' || ['codeGround', 'missing', 'emblem', 'rule'].includes(op.of)
        ? [{ at, boxes: boxes[at] ?? [] }]
        : [],
    )
    return solid.flatMap((one, at) =>
      solid.slice(at + 1).flatMap((other) =>
        one.boxes.flatMap((a) =>
          other.boxes.flatMap((b) => {
            const areOneFigure = a.of === b.of && (a.of === 'emblem' || a.of === 'rule')
            return !areOneFigure && overlap(a, b) ? [`${a.of} of ${index} lies on ${b.of}`] : []
          }),
        ),
      ),
    )
  }

  /** What is not drawn whole is told. */
  function unsaid(ops: readonly LabelOp[], index: number): string[] {
    const isNeck = asked.part === 'neck'
    const told = drawn.problems.filter(({ labelIndex }) => labelIndex === index)
    return asked.shown
      .filter((field) => !isNeck || ['name', 'vintage', 'strength'].includes(field))
      .filter((field) => bare(textOf(ops, field)) !== bare(asked.labels[index]?.text[field] ?? ''))
      .filter((field) => !told.some((one) => one.field === field && one.code !== 'smallLetters'))
      .map((field) => `${field} of ${index} is not whole, and nobody says so`)
  }
}

describe.each(designs)('the design %s', (design) => {
  it.each(usualSheets.map(({ id }) => [id]))(
    'keeps everything in its label, apart, and whole or told, on %s',
    (id) => {
      const sheet = sheetOf(id)
      for (const part of parts)
        expect(faults(job([{}, { name: 'Sloe' }], { design, part, sheet }))).toEqual([])
    },
  )

  it('loses nothing on the usual sheet, with a code that phones read', () => {
    const { problems } = drawLabels(job([{}], { design }))
    expect(problems).toEqual([])
  })

  it.each(Object.entries(hostile))('stands every field being %s', (_, text) => {
    const filled = Object.fromEntries(everything.map((field) => [field, text]))
    for (const id of ['a4-2x4-99x68', 'a4-4x12-46x21'])
      for (const part of parts)
        expect(
          faults(job([filled], { design, part, sheet: sheetOf(id), shown: everything })),
        ).toEqual([])
  })

  it('says less with less: no field, no code, no bottle', () => {
    expect(faults(job([{}], { design, shown: [], hasCode: false, hasEmblem: false }))).toEqual([])
  })
})

describe('what is told before printing', () => {
  const told = (texts: Partial<typeof usual>, change: Partial<LabelJob> = {}) =>
    drawLabels(job([texts], change)).problems

  it('names the characters that no face has, and draws a box for each', () => {
    const { drawings, problems } = drawLabels(job([{ name: '樱桃酒 cherry' }]))
    expect(problems).toContainEqual({
      code: 'noLetters',
      severity: 'warning',
      labelIndex: 0,
      field: 'name',
      characters: ['樱', '桃', '酒'],
    })
    const missing = drawings[0]?.filter((op) => op.op === 'path' && op.of === 'missing')
    expect(missing).toHaveLength(3)
  })

  it('sets Greek and Cyrillic as letters', () => {
    const { drawings, problems } = drawLabels(job([{ name: 'Βύσσινο Вишнёвка' }]))
    expect(problems.filter(({ code }) => code === 'noLetters')).toEqual([])
    expect(textOf(drawings[0] ?? [], 'name')).toBe('ΒύσσινοВишнёвка')
  })

  it('says what is written from right to left, and what was invisible', () => {
    expect(told({ kind: 'ליקר' })).toContainEqual(
      expect.objectContaining({ code: 'rightToLeft', field: 'kind' }),
    )
    expect(told({ kind: 'Dam\u202eson' })).toContainEqual(
      expect.objectContaining({ code: 'controlsLeftOut', field: 'kind' }),
    )
  })

  it('says which field has no room, and how much of it is shown', () => {
    const long = hostile['long'] ?? ''
    const sheet = sheetOf('a4-4x12-46x21')
    const [first] = told({ note: long }, { sheet, shown: everything, hasCode: false }).filter(
      ({ code, field }) => code === 'doesNotFit' && field === 'note',
    )
    expect(first?.value).toBeGreaterThanOrEqual(0)
    expect(first?.value).toBeLessThan(1)
  })

  it('shrinks a long name before it cuts it', () => {
    const { drawings, problems } = drawLabels(job([{ name: (hostile['long'] ?? '').trim() }]))
    const sizes = (drawings[0] ?? []).flatMap((op) =>
      op.op === 'text' && op.field === 'name' ? [op.sizePt] : [],
    )
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(5)
    expect(Math.max(...sizes)).toBeLessThan(12)
    expect(problems.filter(({ code }) => code === 'doesNotFit')).toEqual([])
  })

  it('says when the code is too fine for phones, and when it has no room', () => {
    const batch = (hostile['long'] ?? '').slice(0, 300)
    const fine = told({ batch }, { sheet: sheetOf('a4-3x8-64x34') })
    expect(fine.map(({ code }) => code)).toContain('codeTooFine')
    const none = told({ batch }, { sheet: sheetOf('a4-4x12-46x21'), shown: everything })
    expect(none.map(({ code }) => code)).toContain('codeLeftOut')
  })

  it('notes small letters where the law asks for larger', () => {
    const [note] = told({}, { sheet: sheetOf('a4-4x12-46x21'), shown: everything }).filter(
      ({ code }) => code === 'smallLetters',
    )
    expect(note).toMatchObject({ severity: 'note', limit: leastXHeightMm })
    expect(note?.value).toBeLessThan(leastXHeightMm)
  })
})

describe('drawLabels', () => {
  it('draws the same for the same', () => {
    expect(drawLabels(job([{}]))).toEqual(drawLabels(job([{}])))
  })

  it('begins at the label asked for and goes on where the sheet ends', () => {
    const asked = job([{}], { firstPosition: 7 })
    const [first] = asked.labels
    const { pages } = drawLabels({ ...asked, labels: first ? [{ ...first, copies: 5 }] : [] })
    expect(pages.map(({ placements }) => placements.length)).toEqual([2, 3])
    expect(pages[0]?.placements[0]).toMatchObject({ xMm: 4.65, yMm: 13.1 + 3 * 67.7 })
    expect(pages[1]?.placements[0]).toMatchObject({ xMm: 4.65, yMm: 13.1 })
  })
})
