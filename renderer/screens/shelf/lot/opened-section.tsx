/** The opened bottles of the lot, each with the level left in it and what can be done. */
import { useWords } from '../../../app/words/use-words.ts'
import { useRead } from '../../../app/queries.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Section } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import { vesselScale } from '../../../parts/vessel/vessel.tsx'
import type { OpenedBottle, ShelfPage } from '../../../../shared/schemas/shelf.ts'
import { openedActs, type OpenedActKind } from '../acts/act.ts'
import { OpenedVessel } from '../acts/opened-vessel.tsx'
import type { Acts } from '../acts/use-acts.ts'
import styles from './lot.module.css'

interface OpenedSectionProps {
  page: ShelfPage
  acts: Acts
}

export function OpenedSection({ page, acts }: OpenedSectionProps) {
  const t = useWords()
  // A bottle may be topped up from any that stands open, of this lot or another.
  const all = useRead('shelf.lots', { withGone: false }).data?.opened ?? page.opened
  const standing = page.opened.filter(({ liquid }) => liquid !== undefined)
  const { lot } = page.shelfLot
  if (standing.length === 0 && lot.count === 0) return null
  return (
    <Section
      title={t('shelf.lot.opened')}
      term="opened"
      actions={
        lot.count > 0 && (
          <Button onPress={() => acts.begin({ kind: 'openBottle', lot })}>
            {t('shelf.act.openBottle.name')}
          </Button>
        )
      }
    >
      {standing.length === 0 ? (
        <p className={styles.quiet}>{t('shelf.lot.openedNone')}</p>
      ) : (
        <ul className={styles.openedList}>
          {standing.map((opened) => (
            <OpenedItem
              key={opened.id}
              opened={opened}
              others={all.filter(({ id, liquid }) => id !== opened.id && liquid !== undefined)}
              acts={acts}
            />
          ))}
        </ul>
      )}
    </Section>
  )
}

interface OpenedItemProps {
  opened: OpenedBottle
  others: readonly OpenedBottle[]
  acts: Acts
}

function OpenedItem({ opened, others, acts }: OpenedItemProps) {
  const t = useWords()
  const times = useTimes()
  const { text, size } = useQuantities()
  const { liquid, bestBy, openedAt, bottleSizeMl } = opened
  const isPast = Date.parse(bestBy.likely) < times.now.getTime()
  const possible = (kind: OpenedActKind) => kind !== 'topUp' || others.length > 0
  return (
    <li className={styles.openedItem}>
      <OpenedVessel opened={opened} mmPerPixel={vesselScale.shelf} />
      <div className={styles.openedWords}>
        <strong>
          {t('shelf.lot.levelLeft', {
            left: text(liquid?.volumeMl ?? 0, 'volume'),
            size: size(bottleSizeMl, 'volume').text,
          })}
        </strong>
        <span className={styles.quiet}>
          {t('shelf.lot.openedAt', { day: times.day(openedAt) })}
          {'. '}
          {t(isPast ? 'shelf.lot.bestByWas' : 'shelf.lot.bestBy', {
            day: times.day(bestBy.likely),
          })}
          {'.'}
        </span>
        <div className={styles.buttons}>
          {openedActs.filter(possible).map((kind, index) => (
            <Button
              key={kind}
              kind={index === 0 ? 'plain' : 'quiet'}
              aria-label={`${t(`shelf.act.${kind}.name`)}, ${t('shelf.lot.openedAt', { day: times.day(openedAt) })}`}
              onPress={() => acts.begin({ kind, opened, others })}
            >
              {t(`shelf.act.${kind}.name`)}
            </Button>
          ))}
        </div>
      </div>
    </li>
  )
}
