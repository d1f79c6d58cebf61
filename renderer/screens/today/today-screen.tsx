/** What needs hands now, across all batches, in the order of what is lost by waiting. */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Link } from 'wouter'
import type { Answer } from '../../../shared/channels.ts'
import { useRead } from '../../app/queries.ts'
import { ButtonLink } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Empty, Page, Section } from '../../parts/page/page.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import { CautionList } from './caution-list.tsx'
import { inOrderOfNeed, reachableAt, type DueBatch } from './due.ts'
import { StepList } from './step-list.tsx'
import styles from './today-screen.module.css'

export function TodayScreen() {
  const t = useWords()
  const today = useRead('today.list', {})
  if (!today.data)
    return (
      <Page title={t('today.title')}>
        <ReadState query={today}>{() => null}</ReadState>
      </Page>
    )
  return <TodayPage today={today.data} />
}

/** Steps further off than this are counted, not listed. */
const horizonDays = 30

/** What came ready longer ago than this is no news. */
const newsDays = 90

function TodayPage({ today }: { today: Answer<'today.list'> }) {
  const t = useWords()
  const { now } = useTimes()
  const steps = inOrderOfNeed(today.batches, now)
  const of = (...states: DueBatch['state'][]) => steps.filter(({ state }) => states.includes(state))
  const daysFromNow = (days: number) => new Date(now.getTime() + days * msPerDay).toISOString()
  const coming = of('coming')
  const soon = coming.filter(
    ({ summary }) => (reachableAt(summary.next) ?? '') <= daysFromNow(horizonDays),
  )
  const ripe = of('ripe')
  const newlyRipe = ripe.filter(({ summary }) => (summary.next.due ?? '') >= daysFromNow(-newsDays))
  const pressing = of('late', 'due')
  if (steps.length === 0 && today.cautions.length === 0)
    return (
      <Page title={t('today.title')}>
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
    <Page title={t('today.title')} lead={<Lead pressing={pressing.length} next={coming[0]} />}>
      {pressing.length > 0 && (
        <Section title={t('today.dueState.due')}>
          <StepList steps={pressing} />
        </Section>
      )}
      {today.cautions.length > 0 && (
        <CautionList cautions={today.cautions} batches={today.batches} />
      )}
      {of('ready').length > 0 && (
        <Section title={t('today.dueState.ready')}>
          <StepList steps={of('ready')} />
        </Section>
      )}
      {newlyRipe.length > 0 && (
        <Section title={t('today.dueState.ripe')}>
          <StepList steps={newlyRipe} />
        </Section>
      )}
      {soon.length > 0 && (
        <Section title={t('today.dueState.coming')}>
          <StepList steps={soon} />
        </Section>
      )}
      <div className={styles.asides}>
        {ripe.length > newlyRipe.length && (
          <Aside
            text={t('today.readyLonger', { count: ripe.length - newlyRipe.length })}
            href="/shelf"
            link={t('today.toShelf')}
          />
        )}
        {coming.length > soon.length && (
          <Aside
            text={t('today.later', { count: coming.length - soon.length })}
            href="/batches"
            link={t('today.toBatches')}
          />
        )}
      </div>
    </Page>
  )
}

interface AsideProps {
  text: string
  href: string
  link: string
}

const Aside = ({ text, href, link }: AsideProps) => (
  <p className={styles.aside}>
    {text} <Link href={href}>{link}</Link>
  </p>
)

function Lead({ pressing, next }: { pressing: number; next: DueBatch | undefined }) {
  const t = useWords()
  const times = useTimes()
  if (pressing > 0) return t('today.needHands', { count: pressing })
  const early = next && reachableAt(next.summary.next)
  if (!next || early === undefined) return t('today.nothingDue')
  const { name } = next.summary.batch
  return `${t('today.nothingDue')} ${t('today.nextUp', { name, when: times.fromNow(early) })}`
}
