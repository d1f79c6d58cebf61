/** The rows as a sheet: what was written, editable, and under each row what would become of it. */
import { Fragment, useId, useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Check } from '../../parts/fields/check.tsx'
import { Room } from '../../parts/table/room.tsx'
import { useWindowRows } from '../../parts/table/use-window-rows.ts'
import type { FieldId, SheetField } from './fields.ts'
import type { JudgedRow } from './judged-rows.ts'
import { useRowWords } from './use-row-words.ts'
import styles from './bring-in.module.css'

export interface RowsTableProps {
  rows: readonly JudgedRow[]
  fields: readonly SheetField[]
  onMend: (line: number, field: FieldId, text: string) => void
  onTake: (row: JudgedRow, isTaken: boolean) => void
}

/** A line of cells and a line of words. */
const rowRem = 4.5

export function RowsTable({ rows, fields, onMend, onTake }: RowsTableProps) {
  const t = useWords()
  const rowWords = useRowWords()
  // The row that is being written in stays, however far the list is scrolled.
  const [writtenIn, setWrittenIn] = useState(-1)
  const {
    ref,
    rows: drawn,
    rowPx,
    belowPx,
  } = useWindowRows<HTMLTableSectionElement>(rows.length, rowRem, writtenIn)
  return (
    <div className={styles.frame}>
      <table className={styles.rows} aria-rowcount={2 * rows.length + 1}>
        <caption className="visually-hidden">{t('sheets.step.rows')}</caption>
        <thead>
          <tr aria-rowindex={1}>
            <th scope="col">{t('sheets.rows.take')}</th>
            {fields.map(({ id }) => (
              <th key={id} scope="col" className={styles[id]}>
                {t(`sheets.field.${id}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody ref={ref}>
          {drawn.map(({ index, roomPx }) => {
            const row = rows[index]
            if (!row) return null
            return (
              <Fragment key={row.line}>
                {roomPx > 0 && <Room px={roomPx} />}
                <RowLines
                  row={row}
                  index={index}
                  fields={fields}
                  words={rowWords(row)}
                  rowPx={rowPx}
                  onMend={onMend}
                  onTake={onTake}
                  onFocus={() => setWrittenIn(index)}
                />
              </Fragment>
            )
          })}
          {belowPx > 0 && <Room px={belowPx} />}
        </tbody>
      </table>
    </div>
  )
}

interface RowLinesProps extends Pick<RowsTableProps, 'fields' | 'onMend' | 'onTake'> {
  row: JudgedRow
  index: number
  words: string
  rowPx: number
  onFocus: () => void
}

function RowLines(props: RowLinesProps) {
  const { row, index, fields, words, rowPx, onMend, onTake, onFocus } = props
  const t = useWords()
  const wordsId = useId()
  const { line, standing, texts, problems } = row
  return (
    <>
      <tr
        aria-rowindex={2 * index + 2}
        className={styles.cells}
        data-standing={standing}
        style={{ height: rowPx / 2 }}
      >
        <th scope="row">
          <Check
            isSelected={standing !== 'leftOut' && standing !== 'there'}
            onChange={(isTaken) => onTake(row, isTaken)}
          >
            {line}
          </Check>
        </th>
        {fields.map(({ id }) => (
          <td key={id} className={styles[id]}>
            <CellInput
              key={texts[id]}
              label={t('sheets.rows.cell', { line, field: t(`sheets.field.${id}`) })}
              text={texts[id] ?? ''}
              isWrong={problems.some(({ field }) => field === id)}
              wordsId={wordsId}
              onFocus={onFocus}
              onMend={(text) => onMend(line, id, text)}
            />
          </td>
        ))}
      </tr>
      <tr aria-rowindex={2 * index + 3} className={styles.verdict} style={{ height: rowPx / 2 }}>
        <td colSpan={fields.length + 1} data-standing={standing}>
          <span id={wordsId} title={words}>
            {words}
          </span>
        </td>
      </tr>
    </>
  )
}

interface CellInputProps {
  label: string
  text: string
  isWrong: boolean
  wordsId: string
  onFocus: () => void
  onMend: (text: string) => void
}

/** Taken when it is left, or by Enter: a half-written amount is not yet wrong. Escape puts it back. */
function CellInput({ label, text, isWrong, wordsId, onFocus, onMend }: CellInputProps) {
  return (
    <input
      aria-label={label}
      aria-invalid={isWrong || undefined}
      aria-describedby={isWrong ? wordsId : undefined}
      defaultValue={text}
      autoComplete="off"
      onFocus={onFocus}
      onBlur={({ currentTarget }) => {
        if (currentTarget.value.trim() !== text) onMend(currentTarget.value)
      }}
      onKeyDown={({ key, currentTarget }) => {
        if (key === 'Escape') currentTarget.value = text
        if (key === 'Enter' || key === 'Escape') currentTarget.blur()
      }}
    />
  )
}
