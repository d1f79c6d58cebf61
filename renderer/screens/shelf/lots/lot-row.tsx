/**
 * One lot in the list: what it is, how many are left, where, and how its window stands. Plain
 * elements and finished words only: dozens of rows come and go in every second of scrolling.
 */
import { memo } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { ShelfLot } from '../../../../shared/schemas/shelf.ts'
import { PhaseWord } from '../../../parts/ageing/phase-word.tsx'
import { classes } from '../../../parts/classes.ts'
import { BatchName } from '../../../parts/names/batch-name.tsx'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { LotVessel } from '../../../parts/vessel/lot-vessel.tsx'
import type { ListedLot } from './list-of-lots.ts'
import { Room } from '../../../parts/table/room.tsx'
import type { LotWords } from './use-lot-words.ts'
import styles from './lot-table.module.css'

export interface LotRowProps {
  listed: ListedLot
  words: LotWords
  /** Of its batch. */
  colour: string | undefined
  index: number
  /** Empty room above it. */
  roomPx: number
  rowPx: number
  /** The row that the Tab key leads to. */
  isActive: boolean
  onActive: (index: number) => void
  onOpen: (listed: ListedLot) => void
  onDraw: (lot: ShelfLot['lot']) => void
  onMore: (lot: ShelfLot['lot'], button: HTMLElement) => void
}

export const LotRow = memo(function LotRow(props: LotRowProps) {
  const { listed, words, colour, index, roomPx, rowPx, isActive } = props
  const { onActive, onOpen, onDraw, onMore } = props
  const t = useWords()
  const { shelfLot } = listed
  const { lot, vintage, window } = shelfLot
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
          if (target instanceof Element && !target.closest('a, button')) onOpen(listed)
        }}
      >
        <th scope="row" className={styles.name}>
          <LotName listed={listed} colour={colour} />
        </th>
        <td className={styles.vintage}>{vintage}</td>
        <td className={classes(styles.size, styles.end)}>{words.size(lot.bottleSizeMl)}</td>
        <td className={classes(styles.left, styles.end)}>
          <strong>{words.left(shelfLot)}</strong>
          <span className={styles.quiet}>{words.ofFilled(shelfLot)}</span>
        </td>
        <td className={styles.place}>{words.places(shelfLot)}</td>
        <td className={styles.phase}>
          <PhaseWord phase={window.phase} />
          <span className={styles.quiet}>{words.window(shelfLot)}</span>
        </td>
        <td className={classes(styles.strength, styles.end)}>
          {lot.liquid && <Strength pctVol={lot.liquid.strengthPctVol} />}
        </td>
        <td className={classes(styles.sugar, styles.end, styles.minor)}>
          {lot.liquid && <Sugar gPerL={lot.liquid.sugarGPerL} />}
        </td>
        <td className={classes(styles.cost, styles.end, styles.minor)}>
          {words.cost(shelfLot) ?? <span className={styles.quiet}>{t('parts.cost.unknown')}</span>}
        </td>
        <td className={styles.actions}>
          {lot.count > 0 && (
            <button
              type="button"
              tabIndex={-1}
              className={styles.draw}
              aria-label={words.draw(shelfLot)}
              onClick={() => onDraw(lot)}
            >
              {t('shelf.act.drawBottle.name')}
            </button>
          )}
          <button
            type="button"
            tabIndex={-1}
            className={styles.more}
            aria-label={words.more(shelfLot)}
            aria-haspopup="menu"
            onClick={({ currentTarget }) => onMore(lot, currentTarget)}
          >
            {t('shelf.lots.more')}
          </button>
        </td>
      </tr>
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
