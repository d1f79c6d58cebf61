import * as z from 'zod'
import { Colour, Id } from './basics.ts'

/** What a label can say, each as text the maker may change. */
export const LabelField = z.enum([
  'name',
  'kind',
  'vintage',
  'strength',
  'volume',
  'batch',
  'bottled',
  'ingredients',
  'allergens',
  'energy',
  'drinks',
  'cautions',
  'note',
])
export type LabelField = z.infer<typeof LabelField>

export const labelFields = LabelField.options

/** Longest text of one field. */
export const longestLabelText = 600

export const LabelText = z.record(LabelField, z.string().max(longestLabelText))
export type LabelText = z.infer<typeof LabelText>

/** Own designs: framed, ruled like a book, with the vessel drawn to scale, light on dark. */
export const LabelDesign = z.enum(['parlour', 'ledger', 'glass', 'lamplight'])
export type LabelDesign = z.infer<typeof LabelDesign>

export const LabelPart = z.enum(['front', 'neck'])
export type LabelPart = z.infer<typeof LabelPart>

/** What stands before the number: the law leaves it open. */
export const StrengthPrefix = z.enum(['none', 'alc', 'alcohol'])
export type StrengthPrefix = z.infer<typeof StrengthPrefix>

const lengthMm = z.number().min(0).max(600)

/** Half a tenth of a millimetre: what rounding of printed sizes comes to. */
const roundingMm = 0.05

/** A sheet of labels: the paper, and the grid on it from the top left corner. */
export const LabelSheet = z
  .strictObject({
    id: Id,
    /** The maker's own; empty for the usual ones, which are told by their sizes. */
    name: z.string().trim().max(60),
    pageWidthMm: lengthMm.min(50),
    pageHeightMm: lengthMm.min(50),
    columns: z.number().int().min(1).max(20),
    rows: z.number().int().min(1).max(60),
    labelWidthMm: lengthMm.min(15),
    labelHeightMm: lengthMm.min(8),
    marginLeftMm: lengthMm,
    marginTopMm: lengthMm,
    gapXMm: lengthMm,
    gapYMm: lengthMm,
  })
  .refine(
    ({ columns, labelWidthMm, marginLeftMm, gapXMm, pageWidthMm }) =>
      marginLeftMm + columns * labelWidthMm + (columns - 1) * gapXMm <= pageWidthMm + roundingMm,
    { message: 'the columns are wider than the page', path: ['columns'] },
  )
  .refine(
    ({ rows, labelHeightMm, marginTopMm, gapYMm, pageHeightMm }) =>
      marginTopMm + rows * labelHeightMm + (rows - 1) * gapYMm <= pageHeightMm + roundingMm,
    { message: 'the rows are higher than the page', path: ['rows'] },
  )
export type LabelSheet = z.infer<typeof LabelSheet>

/** What was chosen last, to begin with next time. */
export const LabelStyle = z.strictObject({
  design: LabelDesign,
  part: LabelPart,
  shown: z.array(LabelField).max(LabelField.options.length),
  /** The square code that carries a short text record. */
  hasCode: z.boolean(),
  /** The bottle, drawn to scale. */
  hasEmblem: z.boolean(),
  hasCutMarks: z.boolean(),
  strengthPrefix: StrengthPrefix,
  sheetId: Id,
})
export type LabelStyle = z.infer<typeof LabelStyle>

/** What the book would put on the label of a lot, and what the texts are judged by. */
export const UsualLabel = z.strictObject({
  bottleLotId: Id,
  text: LabelText,
  colour: Colour,
  bottleSizeMl: z.number(),
  /** Bottles that still stand. */
  count: z.number().int(),
  /** As the book has it, not rounded; absent where the bottles hold nothing. */
  strengthPctVol: z.number().optional(),
  /** How far the label may be from the truth. */
  tolerancePctVol: z.number(),
})
export type UsualLabel = z.infer<typeof UsualLabel>

export const LabelToPrint = z.strictObject({
  bottleLotId: Id,
  text: LabelText,
  colour: Colour,
  bottleSizeMl: z.number().positive().max(100_000),
  copies: z.number().int().min(1).max(2000),
})
export type LabelToPrint = z.infer<typeof LabelToPrint>

/** Most labels printed in one go. */
export const mostLabels = 4000

export const LabelJob = z
  .strictObject({
    ...LabelStyle.omit({ strengthPrefix: true, sheetId: true }).shape,
    sheet: LabelSheet,
    /** Labels already taken from the first sheet stand before it; counted from 1, row by row. */
    firstPosition: z.number().int().min(1),
    labels: z.array(LabelToPrint).min(1).max(200),
  })
  .refine(({ firstPosition, sheet }) => firstPosition <= sheet.columns * sheet.rows, {
    message: 'there are not so many labels on the sheet',
    path: ['firstPosition'],
  })
  .refine(({ labels }) => labels.reduce((sum, { copies }) => sum + copies, 0) <= mostLabels, {
    message: `more than ${mostLabels} labels`,
    path: ['labels'],
  })
export type LabelJob = z.infer<typeof LabelJob>

/** What the maker should see before printing. Nothing of it keeps the paper from being made. */
export const LabelProblem = z.strictObject({
  code: z.enum([
    /** At the smallest letters only this share of the text has room; 0 where none of it has. */
    'doesNotFit',
    /** No letters for these characters: each is a box on the paper. */
    'noLetters',
    /** Written from right to left, which the papers cannot set. */
    'rightToLeft',
    /** Invisible control characters were left out. */
    'controlsLeftOut',
    /** Height of a small x, in mm, below what the law asks for. */
    'smallLetters',
    /** One module of the code, in mm, is finer than phones read well. */
    'codeTooFine',
    /** The record is longer than a code holds, or there is no room for the code at all. */
    'codeLeftOut',
    'emblemLeftOut',
    /** Not written as the law asks. */
    'strengthForm',
    /** Says another strength than the book, by more than the tolerance. */
    'strengthOff',
  ]),
  severity: z.enum(['warning', 'note']),
  /** Which of the labels asked for. */
  labelIndex: z.number().int().nonnegative(),
  field: LabelField.optional(),
  characters: z.array(z.string()).optional(),
  value: z.number().optional(),
  limit: z.number().optional(),
})
export type LabelProblem = z.infer<typeof LabelProblem>

/** The faces that labels are set in. */
export const LabelFace = z.enum(['serif', 'serifItalic', 'sans', 'sansBold'])
export type LabelFace = z.infer<typeof LabelFace>

/** One run of letters of one face, in mm from the label's top left corner. */
const TextOp = z.strictObject({
  op: z.literal('text'),
  field: LabelField,
  face: LabelFace,
  sizePt: z.number().positive(),
  xMm: z.number(),
  baselineMm: z.number(),
  widthMm: z.number(),
  trackingMm: z.number(),
  colour: Colour,
  text: z.string(),
  /** `glyphs` of the reply by key, each from the run's start and baseline. */
  glyphs: z.array(z.strictObject({ key: z.string(), xMm: z.number(), yMm: z.number() })),
})

/** A path in mm, written as SVG writes it. */
const PathOp = z.strictObject({
  op: z.literal('path'),
  of: z.enum(['ground', 'frame', 'rule', 'emblem', 'code', 'codeGround', 'missing']),
  d: z.string(),
  fill: Colour.optional(),
  stroke: z.strictObject({ colour: Colour, widthMm: z.number().positive() }).optional(),
})

export const LabelOp = z.discriminatedUnion('op', [TextOp, PathOp])
export type LabelOp = z.infer<typeof LabelOp>

/** Labels laid out on their sheets: the same list goes to the screen and into the PDF. */
export const DrawnLabels = z.strictObject({
  /** One for each label asked for; its copies look alike. */
  drawings: z.array(z.array(LabelOp)),
  pages: z.array(
    z.strictObject({
      placements: z.array(
        z.strictObject({ labelIndex: z.number().int(), xMm: z.number(), yMm: z.number() }),
      ),
    }),
  ),
  /** Marks to cut along, the same on every page; empty without. */
  cutMarks: z.string(),
  /** Outlines by key, in shares of the letter size, y downward. */
  glyphs: z.record(z.string(), z.string()),
  problems: z.array(LabelProblem),
})
export type DrawnLabels = z.infer<typeof DrawnLabels>

export const PaperFile = z.strictObject({ fileName: z.string(), pdfBase64: z.base64() })
