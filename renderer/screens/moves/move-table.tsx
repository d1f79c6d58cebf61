/** The moves as a table of which only the rows in sight are read and drawn. */
import { useState } from 'react'
import { Link } from 'wouter'
import type { MoveFilter, MovePage } from '../../../shared/schemas/all-moves.ts'
import type { RecordedMove } from '../../../shared/schemas/moves.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { AmendDialog } from '../../parts/amending/amend-dialog.tsx'
import { HistoryDialog } from '../../parts/amending/history-dialog.tsx'
import { PutBackDialog } from '../../parts/amending/put-back-dialog.tsx'
import { StepMenu, type StepChange } from '../../parts/amending/step-menu.tsx'
import { StrikeDialog } from '../../parts/amending/strike-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { breaksOf } from '../../parts/moves/breaks-of.ts'
import { Breaks } from '../../parts/moves/breaks.tsx'
import { useMoveWords } from '../../parts/moves/use-move-words.ts'
import { BatchName } from '../../parts/names/batch-name.tsx'
import { useBatches } from '../../parts/names/use-names.ts'
import { Room } from '../../parts/table/room.tsx'
import { useWindowRows } from '../../parts/table/use-window-rows.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import { useMoveRows, type ListedMove } from './use-move-rows.ts'
import styles from './moves-screen.module.css'

export interface MoveTableProps {
  filter: MoveFilter
  total: number
  last: MovePage['last']
}

/** Two lines of what was done, or one with its note. */
const rowRem = 3.5

const ofStanding: readonly StepChange[] = ['amend', 'strike', 'history']
const ofLast: readonly StepChange[] = [...ofStanding, 'takeBack']
const ofStruck: readonly StepChange[] = ['putBack', 'history']

export function MoveTable({ filter, total, last }: MoveTableProps) {
  const t = useWords()
  const moveWords = useMoveWords()
  const undo = useWrite('moves.undo')
  const { ref, rows, rowPx, belowPx } = useWindowRows<HTMLTableSectionElement>(total, rowRem)
  const { rowAt, error } = useMoveRows(filter, rows[0]?.index ?? 0, rows.at(-1)?.index ?? 0)
  const [changing, setChanging] = useState<{ listed: ListedMove; change: StepChange }>()
  const recorded = changing?.listed.recorded
  const close = () => setChanging(undefined)

  const changesOf = ({ id }: RecordedMove) =>
    filter.isStruck ? ofStruck : last?.moveIds.includes(id) ? ofLast : ofStanding

  function choose(listed: ListedMove, change: StepChange) {
    if (change !== 'takeBack') setChanging({ listed, change })
    else if (last && !undo.isPending) undo.mutate({ key: newId(), groupId: last.groupId })
  }

  return (
    <>
      <FailureNote error={error ?? undo.error} />
      <Breaks breaks={breaksOf(undo.error)} />
      <table className={styles.table} aria-rowcount={total + 1}>
        <caption className="visually-hidden">{t('moves.list')}</caption>
        <thead>
          <tr aria-rowindex={1}>
            <th scope="col" className={styles.when}>
              {t('moves.when')}
            </th>
            <th scope="col">{t('moves.what')}</th>
            <th scope="col" className={styles.of}>
              {t('moves.of')}
            </th>
            <th scope="col" className={styles.actions}>
              <span className="visually-hidden">{t('moves.actions')}</span>
            </th>
          </tr>
        </thead>
        <tbody ref={ref}>
          {rows.map(({ index, roomPx }) => {
            const listed = rowAt(index)
            const what = listed && moveWords(listed.recorded.move)
            return [
              roomPx > 0 && <Room key={`above ${index}`} px={roomPx} />,
              <tr
                key={listed?.recorded.id ?? index}
                aria-rowindex={index + 2}
                style={{ height: rowPx }}
              >
                {listed && what !== undefined ? (
                  <>
                    <MoveCells listed={listed} what={what} />
                    <td className={styles.actions}>
                      <StepMenu
                        what={what}
                        changes={changesOf(listed.recorded)}
                        onChoose={(change) => choose(listed, change)}
                      />
                    </td>
                  </>
                ) : (
                  <td colSpan={4} className={styles.quiet}>
                    {t('moves.waiting')}
                  </td>
                )}
              </tr>,
            ]
          })}
          {belowPx > 0 && <Room px={belowPx} />}
        </tbody>
      </table>
      {recorded && changing.change === 'amend' && (
        <AmendDialog recorded={recorded} ofBatchId={changing.listed.batchIds[0]} onClose={close} />
      )}
      {recorded && changing.change === 'strike' && (
        <StrikeDialog recorded={recorded} onClose={close} />
      )}
      {recorded && changing.change === 'history' && (
        <HistoryDialog recorded={recorded} onClose={close} />
      )}
      {recorded && changing.change === 'putBack' && (
        <PutBackDialog recorded={recorded} move={recorded.move} onClose={close} />
      )}
    </>
  )
}

function MoveCells({ listed, what }: { listed: ListedMove; what: string }) {
  const t = useWords()
  const times = useTimes()
  const batches = useBatches()
  const { recorded, batchIds } = listed
  const { move, version } = recorded
  return (
    <>
      <td className={styles.when}>
        <time dateTime={move.at}>{times.moment(move.at)}</time>
      </td>
      <th scope="row" className={styles.what}>
        <span className={styles.words} title={what}>
          {what}
          {version > 1 && <span className={styles.quiet}> {t('batch.ledger.amended')}</span>}
        </span>
        {move.note && (
          <span className={styles.note} title={move.note}>
            {move.note}
          </span>
        )}
      </th>
      <td className={styles.of}>
        {batchIds.flatMap((id) => {
          const batch = batches.get(id)?.batch
          return batch ? (
            <Link key={id} href={`/batches/${encodeURIComponent(id)}`} className={styles.batch}>
              <BatchName batch={batch} />
            </Link>
          ) : (
            []
          )
        })}
      </td>
    </>
  )
}
