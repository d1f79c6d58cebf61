/** What needs hands now, across all batches, in the order of what is lost by waiting. */
import { useEffect, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import type { Today } from '../../../shared/schemas/schedule.ts'
import { useRead } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { BackupWarning } from '../../parts/backups/backup-warning.tsx'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import { Empty, Page, Section } from '../../parts/page/page.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import { CalendarDialog } from './calendar-dialog.tsx'
import { CautionList } from './caution-list.tsx'
import { PutOffSection } from './put-off-section.tsx'
import { CameReady, Fading, RunningLow } from './shelf-news.tsx'
import { isPressing, linesOf, views, type View } from './task-groups.ts'
import { TaskList } from './task-list.tsx'
import { TaskViews } from './task-views.tsx'
import { useTodayActs, type TodayActs } from './use-today-acts.ts'
import styles from './today-screen.module.css'

/** The calendar has a path of its own: other screens lead to it. */
const calendarPath = '/today/calendar'

export function TodayScreen({ isCalendarOpen }: { isCalendarOpen: boolean }) {
  const t = useWords()
  const [, navigate] = useLocation()
  const today = useRead('today.list', {})
  useNewDay(today.refetch)
  return (
    <>
      {today.data ? (
        <TodayPage today={today.data} />
      ) : (
        <Page title={t('today.title')}>
          <ReadState query={today}>{() => null}</ReadState>
        </Page>
      )}
      {isCalendarOpen && <CalendarDialog onClose={() => navigate('/today', { replace: true })} />}
    </>
  )
}

/** A window stays open overnight: what was told is yesterday's by then. */
function useNewDay(readAgain: () => unknown) {
  const { now } = useTimes()
  const day = now.toDateString()
  const toldFor = useRef(day)
  useEffect(() => {
    if (toldFor.current !== day) void readAgain()
    toldFor.current = day
  }, [day, readAgain])
}

function TodayPage({ today }: { today: Today }) {
  const t = useWords()
  const [, navigate] = useLocation()
  const [view, setView] = useState<View>('need')
  const acts = useTodayActs(today.batches)
  const { now, week, putOff, batches, cautions } = today
  const isQuiet = [now, week, putOff, cautions, today.cameReady, today.fading].every(
    ({ length }) => length === 0,
  )
  if (isQuiet && !today.after)
    return (
      <Page title={t('today.title')}>
        <BackupWarning />
        <Empty
          action={
            <ButtonLink href="/batches" kind="primary">
              {t('today.toOpen')}
            </ButtonLink>
          }
        >
          {t('today.empty')}
        </Empty>
      </Page>
    )
  return (
    <Page
      title={t('today.title')}
      lead={<Lead today={today} />}
      actions={<Button onPress={() => navigate(calendarPath)}>{t('today.calendar.open')}</Button>}
    >
      <BackupWarning />
      <Told acts={acts} />
      <div className={styles.top}>
        <FailureNote error={acts.error} />
        {now.length > 1 && (
          <Segments
            label={t('today.view')}
            isLabelHidden
            value={view}
            onChange={setView}
            choices={views.map((value) => ({ value, label: t(`today.views.${value}`) }))}
          />
        )}
      </div>
      <TaskViews view={view} onView={setView} tasks={now} batches={batches} acts={acts} />
      {now.length > 0 && <p className={styles.keys}>{t('today.keys')}</p>}
      {cautions.length > 0 && (
        <CautionList cautions={cautions} batches={batches} onShut={acts.sayShut} />
      )}
      {week.length > 0 && (
        <Section title={t('today.week')}>
          <TaskList tasks={week} batches={batches} acts={acts} />
        </Section>
      )}
      <CameReady ready={today.cameReady} />
      <Fading fading={today.fading} />
      <RunningLow kinds={today.runningLow} />
      <PutOffSection tasks={putOff} batches={batches} acts={acts} />
    </Page>
  )
}

function Lead({ today: { now, week, after, batches } }: { today: Today }) {
  const t = useWords()
  const times = useTimes()
  // A round of turning is one line, and one thing to do.
  const pressing = linesOf(now.filter(isPressing)).length
  if (pressing > 0) return t('today.needHands', { count: pressing })
  const next = week[0] ?? after
  const name = batches.find(({ batch }) => batch.id === next?.batchId)?.batch.name
  if (!next || name === undefined) return t('today.nothingDue')
  const words = { deed: t(`today.kind.${next.kind}`), name, when: times.fromNow(next.early) }
  return `${t('today.nothingDue')} ${t('today.nextUp', words)}`
}

/** What was done from here last, with its undo; read out when it changes. */
function Told({ acts: { told } }: { acts: TodayActs }) {
  const t = useWords()
  return (
    <div className={styles.told}>
      <output>{told?.words}</output>
      {told?.undo && <Button onPress={told.undo}>{t('today.putOff.undo')}</Button>}
    </div>
  )
}
