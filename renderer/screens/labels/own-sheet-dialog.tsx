/** A sheet of the maker's own: paper and grid in millimetres, from the top left corner. */
import { useState } from 'react'
import { LabelSheet } from '../../../shared/schemas/labels.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { NumberField } from '../../parts/quantity/number-field.tsx'
import { paperOf, papers, type Paper } from './use-sheet-words.ts'
import styles from './labels.module.css'
import { numberFormat } from '../../parts/formatters/formatters.ts'

export interface OwnSheetDialogProps {
  /** The sheet to begin from, or to change. */
  start: LabelSheet
  /** Undefined keeps the dialog closed. */
  editing: 'new' | 'this' | undefined
  onKept: (sheetId: string) => void
  onClose: () => void
}

export function OwnSheetDialog({ start, editing, onKept, onClose }: OwnSheetDialogProps) {
  const t = useWords()
  return (
    <SheetDialog
      title={t('labels.own.title')}
      isOpen={editing !== undefined}
      onClose={onClose}
      size="wide"
    >
      {editing && (
        <OwnSheetForm
          start={editing === 'new' ? { ...start, id: newId(), name: '' } : start}
          onKept={onKept}
          onClose={onClose}
        />
      )}
    </SheetDialog>
  )
}

type Length = Exclude<keyof LabelSheet, 'id' | 'name'>

const limits = {
  pageWidthMm: [50, 600],
  pageHeightMm: [50, 600],
  columns: [1, 20],
  rows: [1, 60],
  labelWidthMm: [15, 600],
  labelHeightMm: [8, 600],
  marginLeftMm: [0, 600],
  marginTopMm: [0, 600],
  gapXMm: [0, 600],
  gapYMm: [0, 600],
} as const satisfies Record<Length, readonly [number, number]>

const names = {
  pageWidthMm: 'pageWidth',
  pageHeightMm: 'pageHeight',
  columns: 'columns',
  rows: 'rows',
  labelWidthMm: 'labelWidth',
  labelHeightMm: 'labelHeight',
  marginLeftMm: 'marginLeft',
  marginTopMm: 'marginTop',
  gapXMm: 'gapX',
  gapYMm: 'gapY',
} as const satisfies Record<Length, string>

const grid: readonly Length[] = [
  'columns',
  'rows',
  'labelWidthMm',
  'labelHeightMm',
  'marginLeftMm',
  'marginTopMm',
  'gapXMm',
  'gapYMm',
]

interface OwnSheetFormProps {
  start: LabelSheet
  onKept: (sheetId: string) => void
  onClose: () => void
}

function OwnSheetForm({ start, onKept, onClose }: OwnSheetFormProps) {
  const t = useWords()
  const { locale } = useSettings()
  const keep = useWrite('labels.keepSheet')
  const [id] = useState(start.id)
  const [name, setName] = useState(start.name)
  const [lengths, setLengths] = useState<Partial<Record<Length, number | undefined>>>(start)
  const [paper, setPaper] = useState<Paper | 'other'>(paperOf(start) ?? 'other')
  const [isTried, setTried] = useState(false)
  const sheet = LabelSheet.safeParse({ ...lengths, id, name: name.trim() || t('labels.own.title') })
  const number = numberFormat(locale, { maximumFractionDigits: 1 })

  const lengthField = (length: Length) => {
    const [min, max] = limits[length]
    const isCount = length === 'columns' || length === 'rows'
    return (
      <NumberField
        key={length}
        label={t(`labels.own.${names[length]}`)}
        unit={isCount ? '' : t('labels.own.mm')}
        value={lengths[length]}
        digits={6}
        showsProblem={isTried}
        onChange={(value) => setLengths({ ...lengths, [length]: value })}
        problemOf={(value) =>
          value < min || value > max || (isCount && !Number.isInteger(value))
            ? t('labels.own.between', { min, max })
            : undefined
        }
      />
    )
  }

  function choosePaper(chosen: Paper | 'other') {
    setPaper(chosen)
    if (chosen === 'other') return
    const { widthMm, heightMm } = papers[chosen]
    setLengths({ ...lengths, pageWidthMm: widthMm, pageHeightMm: heightMm })
  }

  function submit() {
    setTried(true)
    if (!sheet.success || keep.isPending) return
    keep.mutate(sheet.data, {
      onSuccess: (kept) => {
        onKept(kept.id)
        onClose()
      },
    })
  }

  const overflows = overflowsOf(lengths)
  return (
    <Form onSubmit={submit}>
      <p>{t('labels.own.lead')}</p>
      <TextInput
        label={t('labels.own.name')}
        value={name}
        onChange={setName}
        maxLength={60}
        autoFocus
      />
      <Segments
        label={t('labels.own.paper')}
        value={paper}
        onChange={choosePaper}
        choices={(['a4', 'letter', 'other'] as const).map((value) => ({
          value,
          label: t(`labels.own.${value}`),
        }))}
      />
      <div className={styles.lengths}>
        {paper === 'other' && (['pageWidthMm', 'pageHeightMm'] as const).map(lengthField)}
        {grid.map(lengthField)}
      </div>
      <div aria-live="polite" className={styles.overflow}>
        {overflows.map(({ way, needs, has }) => (
          <p key={way}>
            {t(`labels.own.${way}`, { needs: number.format(needs), has: number.format(has) })}
          </p>
        ))}
      </div>
      <FailureNote error={keep.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={keep.isPending}>
          {t('labels.own.keep')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}

/** Where the grid is larger than the paper, and by what numbers. */
function overflowsOf(lengths: Partial<Record<Length, number | undefined>>) {
  const {
    columns = 1,
    rows = 1,
    labelWidthMm = 0,
    labelHeightMm = 0,
    marginLeftMm = 0,
    marginTopMm = 0,
    gapXMm = 0,
    gapYMm = 0,
    pageWidthMm = 0,
    pageHeightMm = 0,
  } = lengths
  const wide = marginLeftMm + columns * labelWidthMm + (columns - 1) * gapXMm
  const high = marginTopMm + rows * labelHeightMm + (rows - 1) * gapYMm
  return [
    { way: 'tooWide', needs: wide, has: pageWidthMm } as const,
    { way: 'tooHigh', needs: high, has: pageHeightMm } as const,
  ].filter(({ needs, has }) => needs > has + 0.05)
}
