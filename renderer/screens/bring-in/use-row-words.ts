/** What becomes of a row, in a sentence: written as what, there already, or which cell is to be mended and how. */
import type { RowVerdict } from '../../../shared/schemas/sheets.ts'
import { CallError } from '../../app/calls.ts'
import { useWords, type Words } from '../../app/words/use-words.ts'
import { useFailureWords } from '../../parts/failure/failure-words.ts'
import { useBatches, useGoodsName } from '../../parts/names/use-names.ts'
import { problemWords } from '../../parts/quantity/problem-words.ts'
import { useQuantities, type Quantities } from '../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import type { CellProblem } from './cell-problem.ts'
import type { JudgedRow } from './judged-rows.ts'

export function useRowWords(): (row: JudgedRow) => string {
  const t = useWords()
  const quantities = useQuantities()
  const times = useTimes()
  const batches = useBatches()
  const failureWords = useFailureWords()
  const goodsName = useGoodsName()

  function readyWords({ row, verdict }: JudgedRow): string {
    if (!row || !verdict) return ''
    if ('goods' in row)
      return t('sheets.verdict.stock', {
        goods: goodsName(row.goods),
        amount:
          row.volumeMl === undefined
            ? quantities.text(row.massG ?? 0, 'mass')
            : quantities.text(row.volumeMl, 'volume'),
        day: times.day(row.boughtAt),
      })
    const batchId = verdict.verdict === 'ready' ? verdict.batchId : null
    const batch = batchId === null ? undefined : batches.get(batchId)?.batch
    const values = {
      count: row.count,
      size: quantities.size(row.bottleSizeMl, 'volume').text,
      strength: quantities.text(row.strengthPctVol, 'strength'),
      sugar: quantities.text(row.sugarGPerL, 'sugar'),
      day: times.day(row.bottledAt),
    }
    return batch
      ? t('sheets.verdict.intoBatch', { ...values, batch: batch.name })
      : t('sheets.verdict.newBatch', { ...values, batch: row.name })
  }

  return (row) => {
    const { standing, verdict, problems, twinLine } = row
    switch (standing) {
      case 'leftOut':
        return t('sheets.verdict.leftOut')
      case 'waiting':
        return t('sheets.rows.waiting')
      case 'there':
        return twinLine === undefined
          ? t('sheets.verdict.inBook')
          : t('sheets.verdict.inSheet', { line: twinLine })
      case 'ready':
        return readyWords(row)
      case 'mend':
        return problems.length > 0
          ? problems
              .map(({ field, problem }) =>
                t('sheets.verdict.mend', {
                  field: t(`sheets.field.${field}`),
                  why: cellWords(problem, quantities, t),
                }),
              )
              .join(' ')
          : refusedWords(verdict, failureWords)
    }
  }
}

function refusedWords(
  verdict: RowVerdict | undefined,
  failureWords: (error: CallError) => string,
): string {
  if (verdict?.verdict !== 'refused') return ''
  const { code, details } = verdict
  return failureWords(new CallError({ code, message: code, details }))
}

function cellWords(problem: CellProblem, quantities: Quantities, t: Words): string {
  switch (problem.kind) {
    case 'amount':
      return problemWords(problem.problem, problem.dimension, quantities, t)
    case 'name':
      return t(`sheets.problem.${problem.code}`, { name: problem.name })
    case 'date':
    case 'text':
      return t(`sheets.problem.${problem.code}`)
  }
}
