/** What has to be said about the plan: what it could not do, and what it does not know. */
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { classes } from '../../../parts/classes.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { useBatches } from '../../../parts/names/use-names.ts'
import { formatShare } from '../../../parts/quantity/format-share.ts'
import type { SeasonNotice, SeasonPlan } from '../../../../shared/schemas/season.ts'
import styles from './plan.module.css'

const warnings: readonly SeasonNotice['code'][] = [
  'noJars',
  'standingWithoutJar',
  'neverInSeason',
  'recipeRefused',
  'timeUp',
]

const isWarning = ({ code }: SeasonNotice) => warnings.includes(code)

export function NoticeList({ plan: { notices, proof } }: { plan: SeasonPlan }) {
  const t = useWords()
  const { locale } = useSettings()
  const kindName = useKindName()
  const batches = useBatches()
  if (notices.length === 0) return null
  return (
    <ul className={styles.notices} aria-label={t('season.noticesLabel')}>
      {notices
        .toSorted((a, b) => Number(isWarning(b)) - Number(isWarning(a)))
        .map((notice) => (
          <li
            key={`${notice.code} ${notice.kindId} ${notice.batchId}`}
            className={classes(styles.notice, isWarning(notice) && styles.warning)}
          >
            {t(`season.notice.${notice.code}`, {
              kind: notice.kindId === undefined ? '' : kindName(notice.kindId),
              batch: batches.get(notice.batchId ?? '')?.batch.name ?? t('parts.batchUnknown'),
              gap: formatShare(proof.gapShare, locale),
            })}
          </li>
        ))}
    </ul>
  )
}
