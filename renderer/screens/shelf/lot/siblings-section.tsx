/** Other lots bottled from the same batch: other sizes, other days. */
import { Link } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { useRead } from '../../../app/queries.ts'
import { Section } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useBatches } from '../../../parts/names/use-names.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import { LotVessel } from '../../../parts/vessel/lot-vessel.tsx'
import { vesselScale } from '../../../parts/vessel/vessel.tsx'
import type { ShelfPage } from '../../../../shared/schemas/shelf.ts'
import styles from './lot.module.css'

export function SiblingsSection({ page: { siblingIds, shelfLot } }: { page: ShelfPage }) {
  const t = useWords()
  const times = useTimes()
  const { size } = useQuantities()
  const bottles = useRead('bottles.list', {}).data ?? []
  const colour = useBatches().get(shelfLot.lot.batchId)?.batch.colour
  const siblings = bottles.filter(({ id }) => siblingIds.includes(id))
  if (siblings.length === 0) return null
  return (
    <Section title={t('shelf.lot.siblings')}>
      <ul className={styles.siblings}>
        {siblings.map((lot) => (
          <li key={lot.id} className={styles.sibling}>
            <LotVessel lot={lot} colour={colour} mmPerPixel={vesselScale.shelf} isDecorative />
            <span className={styles.openedWords}>
              <Link href={`/shelf/${encodeURIComponent(lot.id)}`}>{lot.name}</Link>
              <span>
                {size(lot.bottleSizeMl, 'volume').text}
                {', '}
                {lot.count === 0
                  ? t('shelf.lots.none')
                  : `${t('parts.bottles', { count: lot.count })} ${t('shelf.lots.ofFilled', { filled: lot.filledCount })}`}
              </span>
              <span className={styles.quiet}>{times.day(lot.bottledAt)}</span>
            </span>
          </li>
        ))}
      </ul>
    </Section>
  )
}
