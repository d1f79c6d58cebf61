/** A sheet told by its paper and its grid, with the maker's own name before it. */
import type { LabelSheet } from '../../../shared/schemas/labels.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { numberFormat } from '../../parts/formatters/formatters.ts'

export const papers = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const
export type Paper = keyof typeof papers

export const paperOf = ({
  pageWidthMm,
  pageHeightMm,
}: Pick<LabelSheet, 'pageWidthMm' | 'pageHeightMm'>): Paper | undefined =>
  (Object.keys(papers) as Paper[]).find(
    (paper) => papers[paper].widthMm === pageWidthMm && papers[paper].heightMm === pageHeightMm,
  )

export function useSheetWords(): (sheet: LabelSheet) => string {
  const t = useWords()
  const { locale } = useSettings()
  const format = numberFormat(locale, { maximumFractionDigits: 1 })
  const mm = (length: number) => format.format(length)
  return (sheet) => {
    const paper = paperOf(sheet)
    const size = t('labels.sheet.size', {
      paper: paper
        ? t(`labels.own.${paper}`)
        : t('labels.sheet.custom', {
            width: mm(sheet.pageWidthMm),
            height: mm(sheet.pageHeightMm),
          }),
      columns: sheet.columns,
      rows: sheet.rows,
      width: mm(sheet.labelWidthMm),
      height: mm(sheet.labelHeightMm),
    })
    return sheet.name === '' ? size : t('labels.sheet.ownSize', { name: sheet.name, size })
  }
}
