/** Fruits over the weeks: how sure each is to be had, by height and pattern as well as colour. */
import { useState, type PointerEvent } from 'react'
import { useWords } from '../app/words/use-words.ts'
import { classes } from '../parts/classes.ts'
import { useTimes } from '../parts/time/use-times.ts'
import type { FruitSeason } from '../../shared/schemas/season.ts'
import { ownDatesWithin, supplyStretches } from './fruit-year-rows.ts'
import type { TimeDomain } from './time-axis.ts'
import { TimeAxis, TimeLines } from './time-ruler.tsx'
import { placeInDomain } from './timeline-rows.ts'
import { useFruitYearWords } from './use-fruit-year-words.ts'
import { useMonthTicks } from './use-month-ticks.ts'
import styles from './fruit-year.module.css'

export interface FruitYearProps {
  fruits: readonly FruitSeason[]
  weekStarts: readonly string[]
  domain: TimeDomain
  nowMs: number
  fruitName: (fruitId: string) => string
  colourOf: (fruitId: string) => string
  /** Where a fruit's name leads. */
  hrefOf: (fruitId: string) => string
  /** Heading above the first own kind and above the first other one. */
  headings: { own: string; others: string }
}

export function FruitYear(props: FruitYearProps) {
  const { fruits, weekStarts, domain, nowMs, fruitName, colourOf, hrefOf, headings } = props
  const t = useWords()
  const words = useFruitYearWords()
  const times = useTimes()
  const [told, setTold] = useState<{ fruit: FruitSeason; week?: number | undefined }>()
  const ruler = { domain, ticks: useMonthTicks(domain), nowMs }
  const weekAt = ({ currentTarget, clientX }: PointerEvent<HTMLElement>) => {
    const { left, width } = currentTarget.getBoundingClientRect()
    return Math.floor(((clientX - left) / Math.max(1, width)) * weekStarts.length)
  }
  const start = told?.week === undefined ? undefined : weekStarts[told.week]
  const supply = told?.week === undefined ? undefined : told.fruit.weeks[told.week]
  return (
    <div className={styles.chart}>
      <p className={styles.told}>
        {told ? words.line(fruitName(told.fruit.fruitId), told.fruit) : t('season.fruit.hint')}
        {start !== undefined &&
          supply !== undefined &&
          ` ${t('season.fruit.atWeek', { day: times.day(start), supply: t(`season.supply.${supply}`) })}`}
      </p>
      <TimeAxis {...ruler} today={t('season.today')} isRuled isCrowded />
      <div className={styles.frame}>
        <TimeLines {...ruler} />
        {[true, false].map((isOwn) => {
          const group = fruits.filter(({ isOwnKind }) => isOwnKind === isOwn)
          if (group.length === 0) return null
          const heading = isOwn ? headings.own : headings.others
          return (
            <section key={heading} aria-label={heading}>
              <h3 className={styles.heading}>{heading}</h3>
              <ul>
                {group.map((fruit) => (
                  <li key={fruit.fruitId}>
                    <a
                      className={styles.row}
                      href={hrefOf(fruit.fruitId)}
                      aria-label={words.line(fruitName(fruit.fruitId), fruit)}
                      onFocus={() => setTold({ fruit })}
                      onPointerEnter={() => setTold({ fruit })}
                    >
                      <span className={styles.name}>{fruitName(fruit.fruitId)}</span>
                      <span
                        className={styles.track}
                        style={{ '--liquid': colourOf(fruit.fruitId) }}
                        onPointerMove={(event) => setTold({ fruit, week: weekAt(event) })}
                        onPointerLeave={() => setTold({ fruit })}
                        aria-hidden
                      >
                        <Year fruit={fruit} domain={domain} />
                      </span>
                    </a>
                  </li>
                ))}
              </ul>
            </section>
          )
        })}
      </div>
    </div>
  )
}

interface YearProps {
  fruit: FruitSeason
  domain: TimeDomain
}

function Year({ fruit, domain }: YearProps) {
  const place = (atMs: number) => placeInDomain(domain, atMs)
  return (
    <>
      {supplyStretches(fruit.weeks, domain.fromMs).map(({ supply, fromMs, toMs }) => (
        <span
          key={fromMs}
          className={classes(styles.stretch, fruit.isAllYear ? styles.allYear : styles[supply])}
          style={{ left: place(fromMs), width: `calc(${place(toMs)} - ${place(fromMs)})` }}
        />
      ))}
      {ownDatesWithin(fruit.learned, domain).map((atMs, index) => (
        <span key={`${atMs} ${index}`} className={styles.ownDate} style={{ left: place(atMs) }} />
      ))}
    </>
  )
}
