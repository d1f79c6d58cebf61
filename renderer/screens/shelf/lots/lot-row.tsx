/** One lot in the list: what it is, how many are left, where, and how its window stands. */
import { memo } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { ShelfLot } from '../../../../shared/schemas/shelf.ts'
import { PhaseWord } from '../../../parts/ageing/phase-word.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { classes } from '../../../parts/classes.ts'
import { useCostWords } from '../../../parts/cost/use-costs.ts'
import { BatchName } from '../../../parts/names/batch-name.tsx'
import { useShelfName } from '../../../parts/names/use-names.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { LotVessel } from '../../../parts/vessel/lot-vessel.tsx'
import { ActMenu } from '../acts/act-menu.tsx'
import type { LotActKind } from '../acts/act.ts'
import { useWindowWords } from '../use-window-words.ts'
import type { ListedLot } from './list-of-lots.ts'
import { Room } from './room.tsx'
import styles from './lot-table.module.css'

export interface LotRowProps {
  listed: ListedLot
  /** Of its batch. */
  colour: string | undefined
  index: number
  /** Empty room above it. */
  roomPx: number
  rowPx: number
  /** The row that the Tab key leads to. */
  isActive: boolean
  onActive: (index: number) => void
  onOpen: () => void
  onAct: (kind: LotActKind, lot: ShelfLot['lot']) => void
}

export function LotRow(props: LotRowProps) {
  const { listed, colour, index, roomPx, rowPx, isActive, onActive, onOpen, onAct } = props
  const t = useWords()
  const { lot } = listed.shelfLot
  return (
    <>
      {roomPx > 0 && <Room px={roomPx} />}
      {/* oxlint-disable-next-line jsx-a11y/click-events-have-key-events -- the grid hears its keys */}
      <tr
        className={styles.row}
        style={{ height: rowPx }}
        data-index={index}
        aria-rowindex={index + 2}
        aria-label={lot.name}
        tabIndex={isActive ? 0 : -1}
        onFocus={() => onActive(index)}
        onClick={({ target }) => {
          if (target instanceof Element && !target.closest('a, button, [role=menu]')) onOpen()
        }}
      >
        <LotCells listed={listed} colour={colour} />
        <td className={styles.actions}>
          {lot.count > 0 && (
            <Button
              aria-label={t('shelf.lots.actOf', {
                act: t('shelf.act.drawBottle.name'),
                name: lot.name,
              })}
              onPress={() => onAct('drawBottle', lot)}
              excludeFromTabOrder
            >
              {t('shelf.act.drawBottle.name')}
            </Button>
          )}
          <ActMenu
            lot={lot}
            without={['drawBottle']}
            onChoose={(kind) => onAct(kind, lot)}
            excludeFromTabOrder
          />
        </td>
      </tr>
    </>
  )
}

/** Drawn anew for a new lot only: the list moves under them all the time. */
const LotCells = memo(function LotCells({
  listed,
  colour,
}: Pick<LotRowProps, 'listed' | 'colour'>) {
  const t = useWords()
  const windowWords = useWindowWords()
  const { lot, vintage, window } = listed.shelfLot
  return (
    <>
      <th scope="row" className={styles.name}>
        <LotName listed={listed} colour={colour} />
      </th>
      <td className={styles.vintage}>{vintage}</td>
      <td className={classes(styles.size, styles.end)}>
        <Quantity value={lot.bottleSizeMl} dimension="volume" isSize />
      </td>
      <td className={classes(styles.left, styles.end)}>
        <strong>{lot.count === 0 ? t('shelf.lots.none') : lot.count}</strong>
        <span className={styles.quiet}>
          {t('shelf.lots.ofFilled', { filled: lot.filledCount })}
        </span>
      </td>
      <td className={classes(styles.place, styles.minor)}>
        <LotPlaces places={lot.places} />
      </td>
      <td className={styles.phase}>
        <PhaseWord phase={window.phase} />
        <span className={styles.quiet}>{windowWords.short(window)}</span>
      </td>
      <td className={classes(styles.strength, styles.end)}>
        {lot.liquid && <Strength pctVol={lot.liquid.strengthPctVol} />}
      </td>
      <td className={classes(styles.sugar, styles.end, styles.minor)}>
        {lot.liquid && <Sugar gPerL={lot.liquid.sugarGPerL} />}
      </td>
      <td className={classes(styles.cost, styles.end, styles.minor)}>
        <LotCost costPerBottle={listed.shelfLot.costPerBottle} />
      </td>
    </>
  )
})

function LotName({ listed, colour }: Pick<LotRowProps, 'listed' | 'colour'>) {
  const { lot } = listed.shelfLot
  return (
    <span className={styles.lot}>
      <span className={styles.vessel}>
        <LotVessel
          lot={lot}
          colour={colour}
          {...(lot.bottleSizeMl > 1200 && { heightPx: 56 })}
          isDecorative
        />
      </span>
      <span className={styles.names}>
        <a href={`#/shelf/${encodeURIComponent(lot.id)}`} tabIndex={-1} className={styles.link}>
          <BatchName batch={{ name: lot.name, colour: colour ?? 'transparent' }} />
        </a>
        <span className={styles.quiet}>{listed.kind}</span>
      </span>
    </span>
  )
}

function LotCost({ costPerBottle }: { costPerBottle: number | undefined }) {
  const t = useWords()
  const words = useCostWords()
  if (costPerBottle === undefined)
    return <span className={styles.quiet}>{t('parts.cost.unknown')}</span>
  return words({ minor: costPerBottle, isComplete: true })
}

/** The first two places with what stands there; how many more there are. */
function LotPlaces({ places }: Pick<ShelfLot['lot'], 'places'>) {
  const t = useWords()
  const shelfName = useShelfName()
  const [first, ...others] = places.toSorted((a, b) => b.count - a.count)
  if (!first) return null
  if (others.length === 0) return shelfName(first.shelfId)
  const words = [first, ...others].map(({ shelfId, count }) =>
    t('shelf.lots.placeCount', { place: shelfName(shelfId), count }),
  )
  return words.slice(0, 2).join(', ') + (words.length > 2 ? ` +${words.length - 2}` : '')
}
