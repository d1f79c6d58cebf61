/** The plan: each kind, what stands in the way, the jars' year, the batches, other harvests. */
import { useWords } from '../../../app/words/use-words.ts'
import { Empty, Section } from '../../../parts/page/page.tsx'
import type { SeasonPlan } from '../../../../shared/schemas/season.ts'
import { BatchesTable } from './batches-table.tsx'
import { HarvestTable } from './harvest-table.tsx'
import { JarsSection } from './jars-section.tsx'
import { KindsTable } from './kinds-table.tsx'
import { LimitsSection } from './limits-section.tsx'
import { NoticeList } from './notice-list.tsx'
import { Sureness } from './sureness.tsx'
import styles from './plan.module.css'

export interface PlanViewProps {
  plan: SeasonPlan
  /** What would help and other harvests are still worked out. */
  isExplaining: boolean
  seconds: number
  onSeconds: (seconds: number) => void
  /** Makes it anew within so many seconds; absent while one is being made. */
  onMake: ((seconds: number) => void) | undefined
}

export function PlanView({ plan, isExplaining, seconds, onSeconds, onMake }: PlanViewProps) {
  const t = useWords()
  const isEmpty = plan.batches.length === 0
  return (
    <>
      <NoticeList plan={plan} />
      <Section title={t('season.kinds.title')}>
        {plan.kinds.length === 0 ? (
          <Empty>{t('season.kinds.none')}</Empty>
        ) : (
          <KindsTable plan={plan} />
        )}
        <Sureness plan={plan} seconds={seconds} onSeconds={onSeconds} onMake={onMake} />
      </Section>
      {plan.kinds.length > 0 && (
        <Section title={t('season.limits.title')}>
          <LimitsSection plan={plan} isExplaining={isExplaining} />
        </Section>
      )}
      <JarsSection plan={plan} />
      {!isEmpty && (
        <Section title={t('season.batches.title')}>
          <BatchesTable plan={plan} />
        </Section>
      )}
      {!isEmpty && (
        <Section title={t('season.harvestSection.title')}>
          {plan.variants.length > 0 ? (
            <HarvestTable plan={plan} />
          ) : (
            <p className={styles.quiet}>
              {t(isExplaining ? 'season.harvestSection.working' : 'season.harvestSection.notAsked')}
            </p>
          )}
        </Section>
      )}
    </>
  )
}
