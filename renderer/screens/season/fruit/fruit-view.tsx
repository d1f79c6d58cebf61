/** The fruit year of the maker's region, own kinds first, and the region itself, set in place. */
import { useMemo, useState } from 'react'
import { msPerDay } from '../../../../shared/spans-of-time.ts'
import { useRead } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { byNextSeason } from '../../../charts/fruit-year-rows.ts'
import { FruitYearKey } from '../../../charts/fruit-year-key.tsx'
import { FruitYearTable } from '../../../charts/fruit-year-table.tsx'
import { FruitYear } from '../../../charts/fruit-year.tsx'
import { msPerWeek, weeksDomain } from '../../../charts/week-scale.ts'
import { Button } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { useFruitColour } from '../../../parts/names/use-fruit-colour.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { Section } from '../../../parts/page/page.tsx'
import { useNow } from '../../../parts/time/use-now.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { SeasonCalendar } from '../../../../shared/schemas/season.ts'
import { RegionForm } from './region-form.tsx'
import styles from './fruit-view.module.css'

/** So many weeks before today are shown, too: what has just gone by. */
const weeksBefore = 6
const stepWeeks = 13

export function FruitView() {
  const t = useWords()
  const now = useNow()
  const [shift, setShift] = useState(0)
  const [isTable, setTable] = useState(false)
  const today = Math.floor(now.getTime() / msPerDay) * msPerDay
  const from = new Date(today + (shift * stepWeeks - weeksBefore) * msPerWeek).toISOString()
  const calendar = useRead('season.calendar', { from }, { keepsLast: true })
  return (
    <>
      {calendar.data && <RegionForm region={calendar.data.region} />}
      <Section
        title={t('season.fruit.title')}
        actions={
          <span className={styles.actions}>
            <Button kind="quiet" onPress={() => setShift(shift - 1)}>
              {t('season.fruit.earlier')}
            </Button>
            {shift !== 0 && (
              <Button kind="quiet" onPress={() => setShift(0)}>
                {t('season.fruit.toToday')}
              </Button>
            )}
            <Button kind="quiet" onPress={() => setShift(shift + 1)}>
              {t('season.fruit.later')}
            </Button>
            <Button kind="quiet" onPress={() => setTable(!isTable)}>
              {t(isTable ? 'season.asChart' : 'season.asTable')}
            </Button>
          </span>
        }
      >
        <ReadState query={calendar}>
          {(found) => <Year calendar={found} isTable={isTable} />}
        </ReadState>
      </Section>
    </>
  )
}

function Year({ calendar, isTable }: { calendar: SeasonCalendar; isTable: boolean }) {
  const t = useWords()
  const times = useTimes()
  const fruitName = useKindName()
  const colourOf = useFruitColour()
  const [withOthers, setWithOthers] = useState(false)
  const { weekStarts, fruits } = calendar
  const startMs = Date.parse(weekStarts[0] ?? '')
  const nowMs = times.now.getTime()
  const domain = weeksDomain(startMs, weekStarts.length)
  const nowWeek = Math.floor((nowMs - startMs) / msPerWeek)
  const all = useMemo(() => byNextSeason(fruits, nowWeek), [fruits, nowWeek])
  const own = all.filter(({ isOwnKind }) => isOwnKind)
  const shown = withOthers || own.length === 0 ? all : own
  const otherCount = all.length - own.length
  return (
    <>
      <p className={styles.quiet}>
        {t('season.fruit.between', {
          from: times.day(new Date(domain.fromMs).toISOString()),
          to: times.day(new Date(domain.toMs - msPerDay).toISOString()),
        })}
      </p>
      {isTable ? (
        <FruitYearTable fruits={shown} fruitName={fruitName} />
      ) : (
        <>
          <FruitYearKey />
          <FruitYear
            fruits={shown}
            weekStarts={weekStarts}
            domain={domain}
            nowMs={nowMs}
            fruitName={fruitName}
            colourOf={colourOf}
            hrefOf={(fruitId) => `#/fruits/${encodeURIComponent(fruitId)}`}
            headings={{ own: t('season.fruit.own'), others: t('season.fruit.others') }}
          />
        </>
      )}
      {own.length > 0 && otherCount > 0 && (
        <div>
          <Button onPress={() => setWithOthers(!withOthers)}>
            {withOthers
              ? t('season.fruit.hideOthers')
              : t('season.fruit.showOthers', { count: otherCount })}
          </Button>
        </div>
      )}
    </>
  )
}
