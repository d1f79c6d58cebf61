/** What has to be said about the plan: what it could not do, and what it does not know. */
import { useWords } from '../../../app/words/use-words.ts'
import { classes } from '../../../parts/classes.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { useBatches } from '../../../parts/names/use-names.ts'
import type { SeasonNotice, SeasonPlan } from '../../../../shared/schemas/season.ts'
import styles from './plan.module.css'

const warnings: readonly SeasonNotice['code'][] = [
  'noJars',
  'standingWithoutJar',
  'neverInSeason',
  'recipeRefused',
]

const isWarning = ({ code }: SeasonNotice) => warnings.includes(code)

export function NoticeList({ plan }: { plan: SeasonPlan }) {
  const t = useWords()
  const kindName = useKindName()
  const batches = useBatches()
  // How near the best it is stands under the kinds; the answer says that nothing is wanted.
  const notices = plan.notices.filter(({ code }) => code !== 'timeUp' && code !== 'nothingWanted')
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
            })}
          </li>
        ))}
    </ul>
  )
}
