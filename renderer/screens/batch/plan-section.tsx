/** How the batch stands against the plan it was started with; nothing where there is none. */
import { useWords } from '../../app/words/use-words.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { useRead } from '../../app/queries.ts'
import { Section } from '../../parts/page/page.tsx'
import { StagesTable } from '../../parts/plan/stages-table.tsx'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../parts/time/use-times.ts'

export function PlanSection({ batchId }: { batchId: string }) {
  const t = useWords()
  const q = useQuantities()
  const times = useTimes()
  const { data } = useRead('plans.follow', { batchId })
  if (!data) return null
  const { next, planned, expected, stages } = data
  const amounts = (move: Move): string[] => {
    if (move.kind === 'bottle') return [t('parts.bottles', { count: move.count })]
    if ('massG' in move && move.massG !== undefined) return [q.text(move.massG, 'mass')]
    if ('volumeMl' in move && move.volumeMl !== undefined) return [q.text(move.volumeMl, 'volume')]
    return []
  }
  return (
    <Section title={t('draft.plan.title')}>
      <p>
        {next
          ? t('draft.plan.next', {
              deed: [t(`codes.move.${next.kind}`), ...amounts(next)].join(', '),
              day: times.day(next.at),
            })
          : t('draft.plan.done')}
        {planned &&
          expected &&
          ` ${t('draft.plan.expected', {
            strength: q.text(expected.strengthPctVol, 'strength'),
            sugar: q.text(expected.sugarGPerL, 'sugar'),
            plannedStrength: q.text(planned.strengthPctVol, 'strength'),
            plannedSugar: q.text(planned.sugarGPerL, 'sugar'),
          })}`}
      </p>
      <StagesTable
        stages={stages}
        caption={t('draft.plan.caption')}
        plannedName={t('draft.plan.plannedColumn')}
        expectedName={t('draft.plan.expectedColumn')}
      />
    </Section>
  )
}
