/** What a careful maker should see, across the cellar: warnings before notes. */
import { useWords } from '../../app/words/use-words.ts'
import { Link } from 'wouter'
import type { BatchSummary, Caution } from '../../../shared/schemas/cellar.ts'
import { CautionNote } from '../../parts/cautions/caution-note.tsx'
import { useJars } from '../../parts/names/use-names.ts'
import { Section } from '../../parts/page/page.tsx'
import styles from './caution-list.module.css'

export interface CautionListProps {
  cautions: readonly Caution[]
  batches: readonly BatchSummary[]
}

export function CautionList({ cautions, batches }: CautionListProps) {
  const t = useWords()
  const jars = useJars()
  const warningsFirst = cautions.toSorted(
    (a, b) => Number(b.severity === 'warning') - Number(a.severity === 'warning'),
  )
  return (
    <Section title={t('today.cautions')}>
      <ul className={styles.list}>
        {warningsFirst.map((caution) => {
          const batch = batches.find((entry) => entry.batch.id === caution.batchId)?.batch
          const jar = jars.get(caution.jarId ?? '')?.jar
          return (
            <li key={`${caution.code} ${caution.batchId} ${caution.jarId} ${caution.fruitId}`}>
              <CautionNote
                caution={caution}
                place={
                  <>
                    {batch && (
                      <Link href={`/batches/${encodeURIComponent(batch.id)}`}>{batch.name}</Link>
                    )}
                    {batch && jar && ', '}
                    {jar?.name}
                  </>
                }
              />
            </li>
          )
        })}
      </ul>
    </Section>
  )
}
