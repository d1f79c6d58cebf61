/** What the maker chose, and the print job it comes to. */
import type {
  LabelField,
  LabelJob,
  LabelSheet,
  LabelStyle,
  LabelText,
  UsualLabel,
} from '../../../shared/schemas/labels.ts'

export interface LabelChoices {
  /** In the order of printing. Copies left out: one for each bottle that stands. */
  readonly lots: readonly { readonly bottleLotId: string; readonly copies?: number | undefined }[]
  /** Texts that the maker changed, by lot. */
  readonly edits: Readonly<Record<string, Partial<LabelText>>>
  readonly style: LabelStyle
  readonly firstPosition: number
}

/** A neck has room for no more. */
export const neckFields: readonly LabelField[] = ['name', 'vintage', 'strength']

export const mostCopies = 2000

export const copiesOf = (
  choices: LabelChoices,
  { bottleLotId, count }: Pick<UsualLabel, 'bottleLotId' | 'count'>,
): number =>
  choices.lots.find((lot) => lot.bottleLotId === bottleLotId)?.copies ??
  Math.min(mostCopies, Math.max(1, count))

export const textOf = (choices: LabelChoices, usual: UsualLabel): LabelText => ({
  ...usual.text,
  ...choices.edits[usual.bottleLotId],
})

export function jobOf(
  choices: LabelChoices,
  usual: readonly UsualLabel[],
  sheet: LabelSheet,
): LabelJob {
  const { design, part, shown, hasCode, hasEmblem, hasCutMarks } = choices.style
  return {
    design,
    part,
    shown,
    hasCode,
    hasEmblem,
    hasCutMarks,
    sheet,
    firstPosition: Math.min(choices.firstPosition, sheet.columns * sheet.rows),
    labels: usual.map((label) => ({
      bottleLotId: label.bottleLotId,
      text: textOf(choices, label),
      colour: label.colour,
      bottleSizeMl: label.bottleSizeMl,
      copies: copiesOf(choices, label),
    })),
  }
}

/** The lots that a link names, wherever the link was followed from. */
export function lotsInLink(query: string): string[] {
  const named = new URLSearchParams(query).get('lots') ?? ''
  return [...new Set(named.split(',').filter(Boolean))]
}
