/**
 * Sheets of labels as they are sold in many places, by their geometry alone; each grid stands in
 * the middle of its page. The last of each paper are for plain paper and scissors.
 */
import type { LabelSheet } from '../../../shared/schemas/labels.ts'

interface Paper {
  readonly id: string
  readonly widthMm: number
  readonly heightMm: number
}

const a4: Paper = { id: 'a4', widthMm: 210, heightMm: 297 }
const letter: Paper = { id: 'letter', widthMm: 215.9, heightMm: 279.4 }

const inch = (inches: number): number => Math.round(inches * 25.4 * 1e4) / 1e4

const marginOf = (page: number, count: number, size: number, gap: number): number =>
  Math.round((1e4 * (page - count * size - (count - 1) * gap)) / 2) / 1e4

const inId = (side: number): string => String(Math.round(side)).padStart(2, '0')

function centred(
  paper: Paper,
  [columns, rows]: readonly [number, number],
  [labelWidthMm, labelHeightMm]: readonly [number, number],
  [gapXMm, gapYMm]: readonly [number, number] = [0, 0],
): LabelSheet {
  return {
    id: `${paper.id}-${columns}x${rows}-${inId(labelWidthMm)}x${inId(labelHeightMm)}`,
    name: '',
    pageWidthMm: paper.widthMm,
    pageHeightMm: paper.heightMm,
    columns,
    rows,
    labelWidthMm,
    labelHeightMm,
    marginLeftMm: marginOf(paper.widthMm, columns, labelWidthMm, gapXMm),
    marginTopMm: marginOf(paper.heightMm, rows, labelHeightMm, gapYMm),
    gapXMm,
    gapYMm,
  }
}

export const usualSheets: readonly LabelSheet[] = [
  centred(a4, [2, 2], [99.1, 139], [2.5, 0]),
  centred(a4, [2, 4], [99.1, 67.7], [2.5, 0]),
  centred(a4, [2, 5], [99.1, 57], [2.5, 0]),
  centred(a4, [2, 7], [99.1, 38.1], [2.5, 0]),
  centred(a4, [3, 7], [63.5, 38.1], [2.5, 0]),
  centred(a4, [3, 8], [63.5, 33.9], [2.5, 0]),
  centred(a4, [3, 8], [70, 36]),
  centred(a4, [4, 10], [48.5, 25.4]),
  centred(a4, [4, 12], [45.7, 21.2], [2.5, 0]),
  centred(a4, [3, 3], [58, 84], [4, 4]),
  centred(a4, [2, 11], [90, 22], [4, 2]),
  centred(letter, [2, 2], [inch(4), inch(5)], [inch(3 / 16), 0]),
  centred(letter, [2, 3], [inch(4), inch(10 / 3)], [inch(3 / 16), 0]),
  centred(letter, [2, 5], [inch(4), inch(2)], [inch(3 / 16), 0]),
  centred(letter, [2, 7], [inch(4), inch(4 / 3)], [inch(3 / 16), 0]),
  centred(letter, [3, 10], [inch(21 / 8), inch(1)], [inch(1 / 8), 0]),
  centred(letter, [4, 12], [46, 20], [2.5, 0]),
  centred(letter, [3, 3], [60, 80], [4, 4]),
]

export const usualSheetId = (isLetter: boolean): string =>
  isLetter ? 'letter-2x5-102x51' : 'a4-2x4-99x68'
