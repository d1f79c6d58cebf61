/** The count itself: a row a lot, refusals at their rows, one record for all differences. */
import { useMemo, useRef, useState, type KeyboardEvent } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { useSettings } from '../../../app/settings.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Breaks } from '../../../parts/moves/breaks.tsx'
import { useRecordPreview } from '../../../parts/moves/use-preview.ts'
import { DateTimeField } from '../../../parts/time/date-time-field.tsx'
import type { BottleLot } from '../../../../shared/schemas/cellar.ts'
import { AddLot } from './add-lot.tsx'
import { corrections, differing, isCounted, mostAtOnce, stocktakeRows } from './stocktake.ts'
import { StocktakeTable } from './stocktake-table.tsx'
import { useCounts } from './use-counts.ts'
import styles from './stocktake.module.css'

interface StocktakeFormProps {
  lots: readonly BottleLot[]
  shelfId: string | null
  place: string
}

export function StocktakeForm({ lots, shelfId, place }: StocktakeFormProps) {
  const t = useWords()
  const { locale } = useSettings()
  const record = useWrite('moves.record')
  const [addedIds, setAddedIds] = useState<readonly string[]>([])
  const [at, setAt] = useState<string | undefined>(() => new Date().toISOString())
  const written = useCounts()
  const form = useRef<HTMLFormElement>(null)
  const { counts, problems } = written
  const rows = useMemo(
    () => stocktakeRows(lots, shelfId, addedIds, locale),
    [lots, shelfId, addedIds, locale],
  )
  const note = t('shelf.stocktake.note', { place })
  const moves = useMemo(
    () => (at === undefined ? [] : corrections(rows, counts, { shelfId, at, note })),
    [rows, counts, shelfId, at, note],
  )
  const previewed = useRecordPreview(moves.length > 0 ? moves : undefined)
  // Only an answer about these very moves tells which row is refused.
  const refused = new Map(
    (previewed.moves === moves ? (previewed.preview?.refusals ?? []) : []).flatMap(
      ({ index, refusal }) => {
        const found = moves[index]?.found
        return found && 'bottleLotId' in found ? [[found.bottleLotId, refusal] as const] : []
      },
    ),
  )
  const differs = differing(rows, counts).length
  const counted = rows.filter((row) => isCounted(row, counts)).length
  const troubles = problems.size + refused.size

  function submit() {
    if (moves.length === 0 || troubles > 0 || record.isPending) return
    record.mutate(
      { key: newId(), moves },
      {
        onSuccess: () => {
          if (differs <= mostAtOnce) {
            written.clear()
            setAddedIds([])
          }
        },
      },
    )
  }

  /** Enter goes to the next count; from the last one it stays. */
  function onKeyDown(event: KeyboardEvent) {
    const isField = event.target instanceof HTMLInputElement && event.target.dataset['count']
    if (event.key !== 'Enter' || !isField) return
    event.preventDefault()
    const fields = [...(form.current?.querySelectorAll<HTMLInputElement>('[data-count]') ?? [])]
    const next = fields[fields.indexOf(event.target as HTMLInputElement) + 1]
    next?.focus()
    next?.select()
  }

  function fillRest() {
    const rest = rows.filter(({ lot }) => (written.texts.get(lot.id) ?? '').trim() === '')
    written.write(Object.fromEntries(rest.map(({ lot, booked }) => [lot.id, String(booked)])))
  }

  return (
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- its fields are
    <form
      ref={form}
      className={styles.form}
      noValidate
      onKeyDown={onKeyDown}
      onSubmit={(event) => {
        event.preventDefault()
        submit()
      }}
    >
      {rows.length > 0 && (
        <StocktakeTable
          rows={rows}
          written={written}
          refused={refused}
          onTakeOut={(lotId) => {
            setAddedIds(addedIds.filter((id) => id !== lotId))
            written.write({ [lotId]: '' })
          }}
        />
      )}
      <div className={styles.foot}>
        <AddLot
          lots={lots.filter(({ id }) => !rows.some(({ lot }) => lot.id === id))}
          onAdd={(lotId) => setAddedIds([...addedIds, lotId])}
        />
        <DateTimeField label={t('shelf.stocktake.at')} value={at} onChange={setAt} />
      </div>
      {previewed.preview && moves.length > 0 && <Breaks breaks={previewed.preview.breaks} />}
      <FailureNote error={record.error ?? previewed.error} />
      <div className={styles.actions}>
        <Button
          kind="primary"
          type="submit"
          isBusy={record.isPending}
          isDisabled={moves.length === 0 || troubles > 0}
        >
          {t('shelf.stocktake.record')}
        </Button>
        {rows.length > 0 && counted < rows.length && (
          <Button onPress={fillRest}>{t('shelf.stocktake.fillRest')}</Button>
        )}
        <output className={styles.quiet}>
          {counted === 0
            ? t('shelf.stocktake.summaryNone')
            : t(differs === 0 ? 'shelf.stocktake.summarySame' : 'shelf.stocktake.summary', {
                counted,
                all: rows.length,
                count: differs,
              })}{' '}
          {troubles > 0 && t('shelf.stocktake.problems', { count: troubles })}{' '}
          {differs > mostAtOnce && t('shelf.stocktake.tooMany', { most: mostAtOnce })}
        </output>
      </div>
    </form>
  )
}
