/** The lot at a glance: the bottle drawn to scale, what is in it, where it stands, what it cost. */
import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { useCostWords } from '../../../parts/cost/use-costs.ts'
import { BatchName } from '../../../parts/names/batch-name.tsx'
import { useBatches, useShelfName } from '../../../parts/names/use-names.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Term } from '../../../parts/term/term.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import { LotVessel } from '../../../parts/vessel/lot-vessel.tsx'
import { vesselScale } from '../../../parts/vessel/vessel.tsx'
import type { ShelfPage } from '../../../../shared/schemas/shelf.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import styles from './lot.module.css'

export function LotAnswer({ page }: { page: ShelfPage }) {
  const t = useWords()
  const times = useTimes()
  const { size } = useQuantities()
  const kindName = useKindName()
  const { lot, kindId, fruitIds, vintage } = page.shelfLot
  const batch = useBatches().get(lot.batchId)?.batch
  const kinds = [...new Set(fruitIds.length > 0 ? fruitIds : [kindId])].map(kindName)
  return (
    <div className={styles.answer}>
      <LotVessel
        lot={lot}
        colour={batch?.colour}
        {...(lot.bottleSizeMl > 1500 ? { heightPx: 230 } : { mmPerPixel: vesselScale.page })}
      />
      <div className={styles.facts}>
        {lot.liquid && (
          <p className={styles.liquid}>
            <Strength pctVol={lot.liquid.strengthPctVol} />
            <Sugar gPerL={lot.liquid.sugarGPerL} />
            <span className={styles.quiet}>
              {t('shelf.lot.acid')} <Quantity value={lot.liquid.acidGPerL} dimension="acid" />
            </span>
          </p>
        )}
        <p>
          {t('shelf.lot.bottle', { size: size(lot.bottleSizeMl, 'volume').text })}
          {', '}
          {t('shelf.lot.vintage', { year: String(vintage) })}
          <Term id="vintage" />
          {', '}
          {kinds.join(', ')}
        </p>
        {batch && (
          <p>
            {t('shelf.lot.bottled', { day: times.day(lot.bottledAt) })}{' '}
            <Link href={`/batches/${encodeURIComponent(batch.id)}`} className={styles.link}>
              <BatchName batch={batch} />
            </Link>
          </p>
        )}
        <Costs page={page} />
      </div>
      <Fact title={t('shelf.lot.where')}>
        <Where page={page} />
      </Fact>
      {page.stays.length > 0 && (
        <Fact title={t('shelf.lot.stays')}>
          <Stays page={page} />
        </Fact>
      )}
    </div>
  )
}

const Fact = ({ title, children }: { title: string; children: ReactNode }) => (
  <section className={styles.fact} aria-label={title}>
    <p className={styles.factTitle}>{title}</p>
    {children}
  </section>
)

function Costs({ page: { shelfLot, costPerGlass, cost } }: { page: ShelfPage }) {
  const t = useWords()
  const words = useCostWords()
  const isComplete = cost?.isComplete ?? true
  const bottle =
    shelfLot.costPerBottle === undefined
      ? undefined
      : words({ minor: shelfLot.costPerBottle, isComplete })
  const glass = costPerGlass === undefined ? undefined : words({ minor: costPerGlass, isComplete })
  if (bottle === undefined) return <p className={styles.quiet}>{t('shelf.lot.noCost')}</p>
  return (
    <p>
      <strong>{bottle}</strong> {t('shelf.lot.perBottle')}
      {glass !== undefined && (
        <>
          {', '}
          <strong>{glass}</strong> {t('shelf.lot.perGlass')}
        </>
      )}
    </p>
  )
}

function Where({ page }: { page: ShelfPage }) {
  const t = useWords()
  const shelfName = useShelfName()
  const { places } = page.shelfLot.lot
  if (places.length === 0) return <p className={styles.quiet}>{t('shelf.lots.none')}</p>
  return (
    <ul>
      {places.map(({ shelfId, count }) => (
        <li key={shelfId ?? ''}>
          {shelfId === null
            ? t('shelf.lot.noPlace', { count })
            : t('shelf.lot.atPlace', { count, place: shelfName(shelfId) })}
        </li>
      ))}
    </ul>
  )
}

/** How warm and light it stood decides how it ages: the reasons below lead back to this. */
function Stays({ page: { stays } }: { page: ShelfPage }) {
  const t = useWords()
  const times = useTimes()
  const shelfName = useShelfName()
  return (
    <ul className={styles.stays}>
      {stays.map(({ shelfId, from, count }) => (
        <li key={`${shelfId} ${from}`}>
          {t(shelfId === null ? 'shelf.lot.stayNone' : 'shelf.lot.stay', {
            day: times.day(from),
            bottles: t('parts.bottles', { count }),
            place: shelfName(shelfId),
          })}
        </li>
      ))}
    </ul>
  )
}
