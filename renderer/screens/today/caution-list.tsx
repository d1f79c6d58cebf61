/** What a careful maker should see, across the cellar: warnings before notes. */
import { useWords } from '../../app/words/use-words.ts'
import { Link } from 'wouter'
import type { BatchSummary, Caution } from '../../../shared/schemas/cellar.ts'
import { useRead } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { CautionNote } from '../../parts/cautions/caution-note.tsx'
import { useGoodsName, useJars } from '../../parts/names/use-names.ts'
import { Section } from '../../parts/page/page.tsx'
import styles from './caution-list.module.css'

export interface CautionListProps {
  cautions: readonly Caution[]
  batches: readonly BatchSummary[]
  onShut: (lotId: string, name: string) => void
}

export function CautionList({ cautions, batches, onShut }: CautionListProps) {
  const t = useWords()
  const jars = useJars()
  const goodsName = useGoodsName()
  const pantry = useRead('pantry.list', {}).data ?? []
  const warningsFirst = cautions.toSorted(
    (a, b) => Number(b.severity === 'warning') - Number(a.severity === 'warning'),
  )
  return (
    <Section title={t('today.cautions')}>
      <ul className={styles.list}>
        {warningsFirst.map((caution) => {
          const batch = batches.find((entry) => entry.batch.id === caution.batchId)?.batch
          const jar = jars.get(caution.jarId ?? '')?.jar
          const lot = pantry.find(({ id }) => id === caution.lotId)
          const name = lot && goodsName(lot.goods)
          return (
            <li key={`${caution.code} ${caution.batchId} ${caution.jarId} ${caution.lotId}`}>
              <CautionNote
                caution={caution}
                place={
                  <>
                    {batch && (
                      <Link href={`/batches/${encodeURIComponent(batch.id)}`}>{batch.name}</Link>
                    )}
                    {batch && jar && ', '}
                    {jar?.name}
                    {name}
                  </>
                }
                {...(lot !== undefined &&
                  name !== undefined && {
                    act: (
                      <Button
                        onPress={() => onShut(lot.id, name)}
                        aria-label={t('today.shut.sayOf', { name })}
                      >
                        {t('today.shut.say')}
                      </Button>
                    ),
                  })}
              />
            </li>
          )
        })}
      </ul>
    </Section>
  )
}
