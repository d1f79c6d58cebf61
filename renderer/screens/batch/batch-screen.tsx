/** A batch's page: where it stands, what comes next, logging moves, its curve, jars and ledger. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Link } from 'wouter'
import type { BatchPage } from '../../../shared/schemas/cellar.ts'
import { useRead } from '../../app/queries.ts'
import type { TimeAxisKind } from '../../charts/time-labels.ts'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { CautionNote } from '../../parts/cautions/caution-note.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { compareWithAkin } from '../../parts/names/compare-path.ts'
import { useBatches, useJars } from '../../parts/names/use-names.ts'
import { Empty, Page, Section } from '../../parts/page/page.tsx'
import { CurveSection } from './curve/curve-section.tsx'
import { ForecastSection } from './forecast/forecast-section.tsx'
import { Answer } from './head/answer.tsx'
import { EditBatchDialog } from './head/edit-batch-dialog.tsx'
import { Lead } from './head/lead.tsx'
import { useNextWords } from './head/use-next-words.ts'
import { LedgerSection } from './ledger/ledger-section.tsx'
import { kindOfTask } from '../../parts/moves/kinds.ts'
import { LogPanel } from './log/log-panel.tsx'
import { PlanSection } from './plan-section.tsx'
import { TimelineSection } from './timeline/timeline-section.tsx'
import { useLog } from './use-log.ts'
import { openTask, useTaskForm } from './use-task-form.ts'
import { YieldSection } from './yield-section.tsx'
import styles from './batch-screen.module.css'

interface BatchScreenProps {
  batchId: string
  /** The task that the page was opened for: its form comes filled in. */
  taskId?: string | undefined
}

export function BatchScreen({ batchId, taskId }: BatchScreenProps) {
  const t = useWords()
  const page = useRead('batches.page', { batchId })
  // Names of vessels and goods are on every line: without them the page would tell ids.
  const jars = useRead('jars.list', {})
  const pantry = useRead('pantry.list', {})
  if (page.data && jars.data && pantry.data) return <Shown page={page.data} taskId={taskId} />
  const waiting = [page, jars, pantry].find(({ isError }) => isError) ?? page
  return (
    <Page title={t('shell.screens.batches')} before={<Back />}>
      <ReadState<unknown> query={waiting}>{() => null}</ReadState>
    </Page>
  )
}

const Back = () => {
  const t = useWords()
  return <Link href="/batches">{t('batch.back')}</Link>
}

function Shown({ page, taskId }: { page: BatchPage; taskId: string | undefined }) {
  const t = useWords()
  const { summary } = page
  const { batch, next } = summary
  const log = useLog()
  const isDoneAlready = useTaskForm(summary, taskId, log)
  const batches = useBatches()
  const [isEditing, setIsEditing] = useState(false)
  const [axis, setAxis] = useState<TimeAxisKind>('days')
  const mendable = summary.jars.find(({ liquid }) => liquid !== undefined)
  const nextWords = useNextWords()
  return (
    <Page
      title={batch.name}
      before={<Back />}
      lead={<Lead summary={summary} />}
      actions={
        <div className={styles.next}>
          <div className={styles.buttons}>
            {page.steps.length > 0 && (
              <ButtonLink kind="quiet" href={compareWithAkin(summary, [...batches.values()])}>
                {t('compare.with')}
              </ButtonLink>
            )}
            <Button kind="quiet" onPress={() => setIsEditing(true)}>
              {t('batch.edit')}
            </Button>
            {mendable && (
              <ButtonLink kind="quiet" href={`/marry/mend/${encodeURIComponent(mendable.jarId)}`}>
                {t('batch.mend')}
              </ButtonLink>
            )}
            {next && kindOfTask(next) && (
              <Button kind="primary" onPress={() => openTask(next, log.openForm)}>
                {t(`today.kind.${next.kind}`)}
              </Button>
            )}
          </div>
          {next && <p className={styles.due}>{nextWords(next)}</p>}
        </div>
      }
    >
      <Answer summary={summary} />
      <Cautions page={page} />
      {isDoneAlready && <output>{t('today.task.done')}</output>}
      <LogPanel summary={summary} open={log.open} onOpen={log.openForm} focusRef={log.focusRef} />
      <PlanSection batchId={batch.id} onOpen={log.openForm} />
      {page.steps.length === 0 ? (
        <Section title={t('batch.ledger.title')}>
          <Empty
            action={
              <Button onPress={() => log.openForm('charge')}>{t('codes.move.charge')}</Button>
            }
          >
            {t('batch.ledger.empty')}
          </Empty>
        </Section>
      ) : (
        <>
          <CurveSection page={page} axis={axis} onAxis={setAxis} />
          <ForecastSection summary={summary} onOpen={log.openForm} />
          <TimelineSection page={page} axis={axis} />
          <LedgerSection page={page} />
          <YieldSection page={page} />
        </>
      )}
      {isEditing && <EditBatchDialog batch={batch} onClose={() => setIsEditing(false)} />}
    </Page>
  )
}

function Cautions({ page: { cautions } }: { page: BatchPage }) {
  const t = useWords()
  const jars = useJars()
  if (cautions.length === 0) return null
  return (
    <ul className={styles.cautions} aria-label={t('batch.cautions')}>
      {cautions.map((caution) => (
        <li key={`${caution.code} ${caution.jarId} ${caution.fruitId}`}>
          <CautionNote caution={caution} place={jars.get(caution.jarId ?? '')?.jar.name} />
        </li>
      ))}
    </ul>
  )
}
