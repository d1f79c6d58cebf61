/** What loses by waiting, the soonest first, each with the act that helps. */
import { Link } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { PhaseWord } from '../../../parts/ageing/phase-word.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { BatchName } from '../../../parts/names/batch-name.tsx'
import { useBatches } from '../../../parts/names/use-names.ts'
import { Section } from '../../../parts/page/page.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import { LotVessel } from '../../../parts/vessel/lot-vessel.tsx'
import { vesselScale } from '../../../parts/vessel/vessel.tsx'
import type { OpenedBottle, ShelfLot, ShelfLots } from '../../../../shared/schemas/shelf.ts'
import { OpenedVessel } from '../acts/opened-vessel.tsx'
import type { Acts } from '../acts/use-acts.ts'
import { useWindowWords } from '../use-window-words.ts'
import styles from './first-view.module.css'

type First = ShelfLots['drinkFirst'][number]

export function FirstView({ shelf, acts }: { shelf: ShelfLots; acts: Acts }) {
  const t = useWords()
  const byId = new Map(shelf.lots.map((one) => [one.lot.id, one]))
  return (
    <Section title={t('shelf.firstView.title')}>
      <p>{t(shelf.drinkFirst.length > 0 ? 'shelf.firstView.lead' : 'shelf.firstView.none')}</p>
      <ol className={styles.list}>
        {shelf.drinkFirst.map((first) => (
          <FirstItem
            key={`${first.bottleLotId} ${first.because}`}
            first={first}
            shelfLot={byId.get(first.bottleLotId)}
            opened={shelf.opened.filter(
              ({ bottleLotId, liquid }) => bottleLotId === first.bottleLotId && liquid,
            )}
            allOpened={shelf.opened}
            acts={acts}
          />
        ))}
      </ol>
    </Section>
  )
}

interface FirstItemProps {
  first: First
  shelfLot: ShelfLot | undefined
  opened: readonly OpenedBottle[]
  allOpened: readonly OpenedBottle[]
  acts: Acts
}

/** An opened bottle may be the last of its lot: then the lot itself is not in the list. */
function FirstItem({ first, shelfLot, opened, allOpened, acts }: FirstItemProps) {
  const t = useWords()
  const batches = useBatches()
  const windowWords = useWindowWords()
  const [bottle] = opened.toSorted((a, b) => a.bestBy.likely.localeCompare(b.bestBy.likely))
  const isOpened = first.because === 'opened' && bottle !== undefined
  const name = shelfLot?.lot.name ?? bottle?.name
  const batchId = shelfLot?.lot.batchId ?? bottle?.batchId
  if (name === undefined || batchId === undefined) return null
  const colour = batches.get(batchId)?.batch.colour
  return (
    <li className={styles.item}>
      <span className={styles.vessel}>
        {isOpened ? (
          <OpenedVessel opened={bottle} />
        ) : (
          shelfLot && (
            <LotVessel
              lot={shelfLot.lot}
              colour={colour}
              mmPerPixel={vesselScale.shelf}
              isDecorative
            />
          )
        )}
      </span>
      <div className={styles.words}>
        <Link href={`/shelf/${encodeURIComponent(first.bottleLotId)}`} className={styles.link}>
          <BatchName batch={{ name, colour: colour ?? 'transparent' }} />
        </Link>
        <p>
          {t(`shelf.first.${first.because}`)} <By by={first.by} />
        </p>
        {shelfLot && (
          <p className={styles.quiet}>
            <PhaseWord phase={shelfLot.window.phase} /> {windowWords.short(shelfLot.window)}
            {', '}
            {t('parts.bottles', { count: shelfLot.lot.count })}
          </p>
        )}
        <div className={styles.buttons}>
          {isOpened && (
            <Button
              aria-label={t('shelf.lots.actOf', { act: t('shelf.act.pourGlass.name'), name })}
              onPress={() =>
                acts.begin({
                  kind: 'pourGlass',
                  opened: bottle,
                  others: allOpened.filter(({ id, liquid }) => id !== bottle.id && liquid),
                })
              }
            >
              {t('shelf.act.pourGlass.name')}
            </Button>
          )}
          {shelfLot && shelfLot.lot.count > 0 && !isOpened && (
            <>
              <Button
                aria-label={t('shelf.lots.actOf', { act: t('shelf.act.drawBottle.name'), name })}
                onPress={() => acts.begin({ kind: 'drawBottle', lot: shelfLot.lot })}
              >
                {t('shelf.act.drawBottle.name')}
              </Button>
              <Button
                kind="quiet"
                aria-label={t('shelf.lots.actOf', { act: t('shelf.act.openBottle.name'), name })}
                onPress={() => acts.begin({ kind: 'openBottle', lot: shelfLot.lot })}
              >
                {t('shelf.act.openBottle.name')}
              </Button>
            </>
          )}
        </div>
      </div>
    </li>
  )
}

function By({ by }: { by: string | undefined }) {
  const t = useWords()
  const times = useTimes()
  if (by === undefined) return null
  const isPast = Date.parse(by) < times.now.getTime()
  return (
    <strong>
      {t(isPast ? 'shelf.firstView.wasBest' : 'shelf.firstView.best', { day: times.day(by) })}
    </strong>
  )
}
