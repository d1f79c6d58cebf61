/** The choices on one side, the sheet as it will be printed on the other. */
import { useState, type ReactNode } from 'react'
import { Link } from 'wouter'
import type { Answer } from '../../../shared/channels.ts'
import type { LabelSheet, LabelStyle, UsualLabel } from '../../../shared/schemas/labels.ts'
import { useRead } from '../../app/queries.ts'
import { useLatest } from '../../app/use-latest.ts'
import { useWords } from '../../app/words/use-words.ts'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Empty, Page, Section } from '../../parts/page/page.tsx'
import { jobOf, type LabelChoices } from './label-job.ts'
import { LookSection } from './look-section.tsx'
import { LotsSection } from './lots-section.tsx'
import { ProblemList } from './problem-list.tsx'
import { SaveButton } from './save-button.tsx'
import { LabelPicture } from './label-picture.tsx'
import { SheetPreview } from './sheet-preview.tsx'
import { SheetSection } from './sheet-section.tsx'
import { WordsSection } from './words-section.tsx'
import styles from './labels.module.css'

export interface LabelsEditorProps {
  bottles: Answer<'bottles.list'>
  style: LabelStyle
  /** Lots to begin with. */
  named: readonly string[]
  isLotMissing: boolean
}

export function LabelsEditor({ bottles, style, named, isLotMissing }: LabelsEditorProps) {
  const t = useWords()
  const [changed, setChoices] = useState<LabelChoices>()
  // Until something is changed here the style follows the book, which may still be read again.
  const choices = changed ?? {
    lots: named.map((bottleLotId) => ({ bottleLotId })),
    edits: {},
    style,
    firstPosition: 1,
  }
  const bottleLotIds = choices.lots.map(({ bottleLotId }) => bottleLotId)
  const usual = useRead(
    'labels.usual',
    { bottleLotIds, strengthPrefix: choices.style.strengthPrefix },
    { isEnabled: bottleLotIds.length > 0, keepsLast: true },
  )
  const sheets = useRead('labels.sheets', {})
  const lotsSection = (
    <>
      {isLotMissing && <output>{t('labels.lots.gone')}</output>}
      <LotsSection
        bottles={bottles}
        usual={usual.data ?? []}
        choices={choices}
        onChange={setChoices}
      />
    </>
  )
  if (bottleLotIds.length === 0)
    return (
      <Page title={t('labels.title')} before={<Back />}>
        <Empty>{t('labels.chooseLot')}</Empty>
        {lotsSection}
      </Page>
    )
  if (!usual.data || !sheets.data)
    return (
      <Page title={t('labels.title')} before={<Back />}>
        <ReadState query={usual}>
          {() => <ReadState query={sheets}>{() => null}</ReadState>}
        </ReadState>
      </Page>
    )
  const chosen = bottleLotIds.flatMap(
    (id) => usual.data.find((one) => one.bottleLotId === id) ?? [],
  )
  return (
    <Laid
      usual={chosen}
      sheets={sheets.data}
      choices={choices}
      onChange={setChoices}
      lotsSection={lotsSection}
    />
  )
}

interface LaidProps {
  usual: readonly UsualLabel[]
  sheets: Answer<'labels.sheets'>
  choices: LabelChoices
  onChange: (choices: LabelChoices) => void
  lotsSection: ReactNode
}

function Laid({ usual, sheets, choices, onChange, lotsSection }: LaidProps) {
  const t = useWords()
  const all: readonly LabelSheet[] = [...sheets.own, ...sheets.usual]
  const sheet = all.find(({ id }) => id === choices.style.sheetId) ?? sheets.usual[0]
  if (!sheet) throw new Error('there are no sheets')
  const job = jobOf(choices, usual, sheet)
  const drawn = useLatest('labels.draw', job, usual.length > 0)
  const [wanted, setWanted] = useState<string>()
  const shownIndex = Math.max(
    0,
    usual.findIndex(({ bottleLotId }) => bottleLotId === wanted),
  )
  const count = job.labels.reduce((sum, { copies }) => sum + copies, 0)
  const names = job.labels.map(({ text }) => text.name)
  const lead =
    drawn.data &&
    t('labels.lead', {
      labels: t('labels.count', { count }),
      sheets: t('labels.sheets', { count: drawn.data.pages.length }),
    })
  // The sheet pushes what stands below it where there is one column: the page waits for it, once.
  const [isDrawn, setDrawn] = useState(false)
  if (!isDrawn && (drawn.data !== undefined || drawn.error !== null)) setDrawn(true)
  if (!isDrawn)
    return <Page title={t('labels.title')} before={<Back />} lead={t('parts.loading')} />
  return (
    <Page
      title={t('labels.title')}
      lead={lead}
      before={<Back />}
      actions={<SaveButton job={job} style={choices.style} />}
    >
      <div className={styles.sides}>
        <div className={styles.choices}>
          {lotsSection}
          <LookSection
            style={choices.style}
            onChange={(style) => onChange({ ...choices, style })}
          />
          <SheetSection sheet={sheet} sheets={sheets} choices={choices} onChange={onChange} />
          <WordsSection
            label={usual[shownIndex]}
            usual={usual}
            choices={choices}
            onChange={onChange}
            onChoose={setWanted}
          />
        </div>
        <div className={styles.seen}>
          <Section title={t('labels.preview.title')}>
            <FailureNote error={drawn.error} />
            {drawn.data ? (
              <>
                <ProblemList problems={drawn.data.problems} names={names} />
                <LabelPicture
                  drawn={drawn.data}
                  sheet={sheet}
                  names={names}
                  labelIndex={shownIndex}
                />
                <SheetPreview drawn={drawn.data} sheet={sheet} names={names} />
              </>
            ) : (
              !drawn.error && <output className={styles.waiting}>{t('parts.loading')}</output>
            )}
          </Section>
        </div>
      </div>
    </Page>
  )
}

function Back() {
  const t = useWords()
  return <Link href="/shelf">{t('labels.backToShelf')}</Link>
}
