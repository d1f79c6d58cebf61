/** Whether the strength on a label is written as the law asks, and says what the book says. */
import type { LabelJob, LabelProblem } from '../../shared/schemas/labels.ts'
import { describeLiquid, labelTolerancePctVol } from '../engine/index.ts'
import { readStrength } from '../papers/labels/strength-form.ts'
import { bottleStateOf } from './label-facts.ts'
import type { Session } from './session.ts'

/** Fruit was steeped in it: the wider tolerance is its own. */
export const steepedTolerancePctVol = labelTolerancePctVol(true)

export function strengthProblems(session: Session, job: LabelJob): LabelProblem[] {
  if (!job.shown.includes('strength')) return []
  return job.labels.flatMap(({ bottleLotId, text }, labelIndex): LabelProblem[] => {
    if (text.strength.trim() === '') return []
    const stated = readStrength(text.strength)
    const at = { severity: 'warning', labelIndex, field: 'strength' } as const
    if (stated === undefined) return [{ ...at, code: 'strengthForm' }]
    const truth = describeLiquid(bottleStateOf(session, bottleLotId).perBottle)?.strengthPctVol
    if (truth === undefined || Math.abs(stated - truth) <= steepedTolerancePctVol + 1e-9) return []
    return [{ ...at, code: 'strengthOff', value: stated, limit: truth }]
  })
}
