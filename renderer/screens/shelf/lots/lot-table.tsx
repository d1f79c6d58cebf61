/**
 * The lots as a grid of which only the rows in sight are drawn: arrows walk it, Enter opens a
 * lot, headings sort. One stop of the Tab key, however many lots there are.
 */
import { useCallback, useLayoutEffect, useRef, useState, type KeyboardEvent } from 'react'
import { useLocation } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { useBatches } from '../../../parts/names/use-names.ts'
import { useWindowRows } from '../../../parts/table/use-window-rows.ts'
import type { LotActKind } from '../acts/act.ts'
import type { ShelfLot } from '../../../../shared/schemas/shelf.ts'
import { lotColumns, type ListedLot, type Order } from './list-of-lots.ts'
import { LotRow } from './lot-row.tsx'
import { Room } from '../../../parts/table/room.tsx'
import { RowMenu, type RowMenuOpen } from './row-menu.tsx'
import { SortHeading } from './sort-heading.tsx'
import { stepInList } from './step-in-list.ts'
import { useLotWords } from './use-lot-words.ts'
import styles from './lot-table.module.css'

export interface LotTableProps {
  lots: readonly ListedLot[]
  order: Order
  onOrder: (order: Order) => void
  /** Keeps its identity: the rows are drawn anew only when something of theirs changes. */
  onAct: (kind: LotActKind, lot: ShelfLot['lot']) => void
}

/** As high as the list's rows are; the drawing of a bottle stands in it. */
const rowRem = 4.25

export function LotTable({ lots, order, onOrder, onAct }: LotTableProps) {
  const t = useWords()
  const [, navigate] = useLocation()
  const batches = useBatches()
  const words = useLotWords()
  const [active, setActive] = useState(0)
  const [menu, setMenu] = useState<RowMenuOpen>()
  /** The row that gets the focus once it is drawn. */
  const wanted = useRef(-1)
  const at = Math.min(active, lots.length - 1)
  const { ref, rows, rowPx, belowPx, scrollTo } = useWindowRows<HTMLTableSectionElement>(
    lots.length,
    rowRem,
    at,
  )
  const open = useCallback(
    ({ shelfLot }: ListedLot) => navigate(`/shelf/${encodeURIComponent(shelfLot.lot.id)}`),
    [navigate],
  )
  const draw = useCallback((lot: ShelfLot['lot']) => onAct('drawBottle', lot), [onAct])
  const more = useCallback(
    (lot: ShelfLot['lot'], button: HTMLElement) => setMenu({ lot, button }),
    [],
  )

  /** True once the row was there to take the focus. */
  function focusRow(index: number): boolean {
    const row = ref.current?.querySelector<HTMLElement>(`[data-index="${index}"]`)
    row?.focus({ preventScroll: true })
    return row !== null && row !== undefined
  }

  function goTo(index: number) {
    setActive(index)
    scrollTo(index)
    wanted.current = focusRow(index) ? -1 : index
  }

  // A row far off is drawn only after the list has scrolled to it.
  useLayoutEffect(() => {
    if (wanted.current >= 0 && focusRow(wanted.current)) wanted.current = -1
  })

  function onKeyDown(event: KeyboardEvent) {
    if (event.altKey || event.ctrlKey || event.metaKey || !(event.target instanceof HTMLElement))
      return
    const row = event.target.closest<HTMLElement>('[data-index]')
    if (!row) return
    const index = Number(row.dataset['index'])
    const listed = lots[index]
    if (event.key === 'Enter' && event.target === row && listed) {
      open(listed)
      return
    }
    const next = stepInList(event.key, index, lots.length, rowsInSight(rowPx))
    if (next !== undefined) {
      event.preventDefault()
      goTo(next)
      return
    }
    const side = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0
    if (side === 0) return
    event.preventDefault()
    const stops = [row, ...row.querySelectorAll<HTMLElement>('a[href], button')]
    stops[stops.indexOf(event.target) + side]?.focus()
  }

  return (
    <>
      <p className="visually-hidden" id="lot-keys">
        {t('shelf.lots.keys')}
      </p>
      <table
        className={styles.table}
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-to-interactive-role -- arrows walk it
        role="grid"
        aria-label={t('shelf.lots.list')}
        aria-describedby="lot-keys"
        aria-rowcount={lots.length + 1}
        onKeyDown={onKeyDown}
      >
        <thead>
          <tr aria-rowindex={1}>
            {lotColumns.map((column) => (
              <SortHeading key={column} column={column} order={order} onOrder={onOrder} />
            ))}
            <th scope="col" className={styles.actions}>
              <span className="visually-hidden">{t('shelf.lots.actions')}</span>
            </th>
          </tr>
        </thead>
        <tbody ref={ref}>
          {rows.map(({ index, roomPx }) => {
            const lot = lots[index]
            return (
              lot && (
                <LotRow
                  key={lot.shelfLot.lot.id}
                  listed={lot}
                  words={words}
                  colour={batches.get(lot.shelfLot.lot.batchId)?.batch.colour}
                  index={index}
                  roomPx={roomPx}
                  rowPx={rowPx}
                  isActive={index === at}
                  onActive={setActive}
                  onOpen={open}
                  onDraw={draw}
                  onMore={more}
                />
              )
            )
          })}
          {belowPx > 0 && <Room px={belowPx} />}
        </tbody>
      </table>
      <RowMenu open={menu} onClose={() => setMenu(undefined)} onAct={onAct} />
    </>
  )
}

const rowsInSight = (rowPx: number) => Math.max(1, Math.floor(window.innerHeight / rowPx) - 2)
