/** The season: what it asks for, the plan behind it, what is wished, what to buy. */
import { useState } from 'react'
import { useLocation } from 'wouter'
import { useRead } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Page } from '../../parts/page/page.tsx'
import { useNow } from '../../parts/time/use-now.ts'
import type { KeptSeasonPlan, SeasonWishes } from '../../../shared/schemas/season.ts'
import { Answer } from './answer.tsx'
import { BuyView } from './buy/buy-view.tsx'
import { isDue } from './buy/purchase-groups.ts'
import { CompareView } from './compare/compare-view.tsx'
import { FruitView } from './fruit/fruit-view.tsx'
import { Making } from './making.tsx'
import { nextAct, type NextAct } from './next-act.ts'
import { PlanView } from './plan/plan-view.tsx'
import { usualTimeLimit } from './plan/time-limits.ts'
import { sameWishes } from './same-wishes.ts'
import { SeasonViews } from './season-views.tsx'
import { useKeptWishes } from './use-kept-wishes.ts'
import { useSeasonJob } from './use-season-job.ts'
import { viewPath, type SeasonView } from './views.ts'
import { WishesView } from './wishes/wishes-view.tsx'

export function SeasonScreen({ view }: { view: SeasonView }) {
  const t = useWords()
  const wishes = useRead('season.wishes', {})
  const last = useRead('season.lastPlan', {})
  const isHere = wishes.data !== undefined && last.data !== undefined
  if (isHere) return <Season view={view} inBook={wishes.data} last={last.data ?? undefined} />
  return (
    <Page title={t('season.title')}>
      <ReadState query={wishes}>{() => <ReadState query={last}>{() => null}</ReadState>}</ReadState>
    </Page>
  )
}

interface SeasonProps {
  view: SeasonView
  inBook: SeasonWishes
  last: KeptSeasonPlan | undefined
}

function Season({ view, inBook, last }: SeasonProps) {
  const t = useWords()
  const [, navigate] = useLocation()
  const now = useNow()
  const work = useSeasonJob()
  const kept = useKeptWishes(inBook)
  const [seconds, setSeconds] = useState<number>(usualTimeLimit)
  const jars = useRead('jars.list', {}).data
  const purchases = useRead('purchases.list', {}).data
  const { job, isMaking } = work
  const plan = job?.plan ?? last?.plan
  const isKept = plan !== undefined && plan.madeAt === last?.plan.madeAt
  const isChanged = plan !== undefined && !sameWishes(plan.wishes, kept.wishes)
  const dueCount = (purchases?.lines ?? []).filter((line) => isDue(line, now)).length
  const act = nextAct({
    hasJars: jars === undefined || jars.some(({ jar }) => !jar.isRetired),
    isMaking,
    plan,
    isKept,
    isChanged,
    dueCount,
  })
  const make = () => work.make(kept.wishes, seconds)
  const isAlsoKept = plan !== undefined && !isKept && !isMaking && act !== 'keep'

  function press() {
    switch (act) {
      case 'addJars':
        return navigate('/cellar-room')
      case 'make':
      case 'makeAnew':
        return make()
      case 'keep':
        return work.keep()
      case 'wish':
        return navigate(viewPath('wishes'))
      case 'buy':
        return navigate(viewPath('buy'))
      case 'none':
        return undefined
    }
  }

  const isThere = act === 'buy' ? view === 'buy' : act === 'wish' && view === 'wishes'
  return (
    <Page
      title={t('season.title')}
      lead={
        <div aria-live="polite">
          <Answer
            plan={plan}
            keptAt={isKept ? last?.keptAt : undefined}
            isChanged={isChanged}
            isMaking={isMaking}
            hasNoJars={act === 'addJars'}
          />
        </div>
      }
      actions={
        <>
          {act !== 'none' && !isThere && (
            <Button kind="primary" onPress={press} isBusy={act === 'keep' && work.isKeeping}>
              {actWords(t, act, dueCount)}
            </Button>
          )}
          {isAlsoKept && (
            <Button onPress={work.keep} isBusy={work.isKeeping}>
              {t('season.act.keep')}
            </Button>
          )}
          {plan && !isMaking && act !== 'makeAnew' && act !== 'addJars' && (
            <Button onPress={make}>{t('season.act.makeAnew')}</Button>
          )}
        </>
      }
    >
      <SeasonViews here={view} />
      <FailureNote error={work.error ?? kept.error} />
      <Making work={work} hasOlder={plan !== undefined && plan !== job?.plan} />
      {view === 'plan' && plan && (
        <PlanView
          plan={plan}
          isExplaining={isMaking && plan === job?.plan}
          seconds={seconds}
          onSeconds={setSeconds}
          onMake={isMaking ? undefined : (longer) => work.make(kept.wishes, longer)}
        />
      )}
      {view === 'buy' && <BuyView />}
      {view === 'wishes' && <WishesView kept={kept} plan={plan} />}
      {view === 'fruit' && <FruitView />}
      {view === 'compare' && <CompareView jobId={isKept ? undefined : job?.plan && job.jobId} />}
    </Page>
  )
}

const actWords = (t: ReturnType<typeof useWords>, act: NextAct, count: number): string =>
  act === 'buy' ? t('season.act.buy', { count }) : t(`season.act.${act}`)
