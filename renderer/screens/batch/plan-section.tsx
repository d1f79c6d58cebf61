/** How the batch stands against the plan it was started with; nothing where there is none. */
import { useWords } from '../../app/words/use-words.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { useRead } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { useBatches } from '../../parts/names/use-names.ts'
import { Section } from '../../parts/page/page.tsx'
import { StagesTable } from '../../parts/plan/stages-table.tsx'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import { isLogged, type LoggedKind } from '../../parts/moves/kinds.ts'
import type { Prefill } from './log/log-panel.tsx'
import { asPlanned } from './log/planned-prefill.ts'
import styles from './plan-section.module.css'

interface PlanSectionProps {
  batchId: string
  onOpen: (kind: LoggedKind, prefill?: Prefill) => void
}

export function PlanSection({ batchId, onOpen }: PlanSectionProps) {
  const t = useWords()
  const q = useQuantities()
  const times = useTimes()
  const { data, isFetching } = useRead('plans.follow', { batchId })
  const { data: jars = [] } = useRead('jars.list', {})
  const batches = useBatches()
  if (!data) return null
  const { next, planned, expected, stages, taken } = data
  const amounts = (move: Move): string[] => {
    if (move.kind === 'bottle') return [t('parts.bottles', { count: move.count })]
    if ('massG' in move && move.massG !== undefined) return [q.text(move.massG, 'mass')]
    if ('volumeMl' in move && move.volumeMl !== undefined) return [q.text(move.volumeMl, 'volume')]
    return []
  }
  const kind = next?.kind
  const goods = next && goodsOf(next, data.plan.moves)
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
      {taken.length > 0 && (
        <ul className={styles.taken} aria-label={t('draft.plan.takenLabel')}>
          {taken.map((one) => (
            <li key={one.jarId}>
              {t('draft.plan.taken', {
                jar: jars.find(({ jar }) => jar.id === one.jarId)?.jar.name ?? one.jarId,
                batch: batches.get(one.batchId)?.batch.name ?? one.batchId,
                day: times.day(one.neededAt),
              })}
            </li>
          ))}
        </ul>
      )}
      {/* Right after a move it still tells the one that was just done. */}
      {next && kind && isLogged(kind) && (
        <Button
          isDisabled={isFetching}
          onPress={() => onOpen(kind, (draft, context) => asPlanned(draft, next, goods, context))}
        >
          {t('draft.plan.log')}
        </Button>
      )}
      <StagesTable
        stages={stages}
        caption={t('draft.plan.caption')}
        plannedName={t('draft.plan.plannedColumn')}
        expectedName={t('draft.plan.expectedColumn')}
      />
    </Section>
  )
}

/** What the plan bought for a move. */
function goodsOf(move: Move, plan: readonly Move[]) {
  const lotId = 'lotId' in move ? move.lotId : undefined
  const bought = plan.find((one) => one.kind === 'buy' && one.lotId === lotId)
  return bought?.kind === 'buy' ? bought.goods : undefined
}
