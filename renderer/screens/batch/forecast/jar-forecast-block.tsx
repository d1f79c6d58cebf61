/** One jar's forecast: where it stands, where it rests, when, and what a week or a draw would bring. */
import type { ReactNode } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { JarContents } from '../../../../shared/schemas/cellar.ts'
import type { Banded, JarForecast } from '../../../../shared/schemas/steeping.ts'
import { useJars } from '../../../parts/names/use-names.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { LoggedKind } from '../../../parts/moves/kinds.ts'
import type { Prefill } from '../log/log-panel.tsx'
import { useShares } from '../use-shares.ts'
import { BookDiffers } from './book-differs.tsx'
import { SugarDrawNote } from './sugar-draw-note.tsx'
import { useArrivalWords } from './use-arrival-words.ts'
import styles from './forecast.module.css'

interface JarForecastBlockProps {
  forecast: JarForecast
  /** As the book has it. */
  contents: JarContents | undefined
  onOpen: (kind: LoggedKind, prefill?: Prefill) => void
}

/** How near to rest counts as there; the engine's own measure. */
const tolerancePctVol = 0.5

export function JarForecastBlock({ forecast, contents, onOpen }: JarForecastBlockProps) {
  const t = useWords()
  const { text } = useQuantities()
  const share = useShares()
  const arrival = useArrivalWords()
  const jars = useJars()
  const { jarId, now, resting, isSettled, settledAt, extractFraction, extractedAt } = forecast
  const { value, low, high } = extractFraction
  return (
    <article className={styles.jar}>
      <h3>{jars.get(jarId)?.jar.name ?? t('parts.place.theJar')}</h3>
      <dl className={styles.facts}>
        <Fact term={t('batch.forecast.now')}>
          <Pair {...now} />
        </Fact>
        <Fact term={t('batch.forecast.rests')}>
          <Pair {...resting} />
        </Fact>
        <Fact term={t('batch.forecast.near', { tolerance: text(tolerancePctVol, 'strength') })}>
          {isSettled ? t('batch.forecast.settled') : arrival(settledAt)}
        </Fact>
        <Fact term={t('batch.forecast.week')}>
          <WeekChange {...forecast.weekChange} />
        </Fact>
        <Fact term={t('batch.forecast.extract')}>
          {t('batch.forecast.extractRange', {
            share: share(value),
            low: share(low),
            high: share(high),
          })}{' '}
          <span className={styles.quiet}>
            {t('batch.forecast.colour', { share: share(forecast.colourFraction) })}
          </span>
        </Fact>
        <Fact term={t('batch.forecast.drawOffBy')}>{arrival(extractedAt)}</Fact>
      </dl>
      <SugarDrawNote forecast={forecast} onOpen={onOpen} />
      <BookDiffers forecast={forecast} contents={contents} onOpen={onOpen} />
    </article>
  )
}

function Fact({ term, children }: { term: string; children: ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  )
}

const halfWidth = ({ low, high }: Banded): number => (high - low) / 2

function Pair({ strengthPctVol, sugarGPerL }: JarForecast['now']) {
  return (
    <span className={styles.pair}>
      <Strength pctVol={strengthPctVol.value} uncertaintyPctVol={halfWidth(strengthPctVol)} />
      <Sugar gPerL={sugarGPerL.value} uncertaintyGPerL={halfWidth(sugarGPerL)} />
    </span>
  )
}

/** Less than this nobody tastes. */
const least = { strengthPctVol: 0.05, sugarGPerL: 0.5 }

function WeekChange({ strengthPctVol, sugarGPerL }: JarForecast['weekChange']) {
  const t = useWords()
  const { text } = useQuantities()
  const parts = [
    ...(Math.abs(strengthPctVol) < least.strengthPctVol
      ? []
      : [signed(strengthPctVol, text(strengthPctVol, 'strength'))]),
    ...(Math.abs(sugarGPerL) < least.sugarGPerL
      ? []
      : [signed(sugarGPerL, text(sugarGPerL, 'sugar'))]),
  ]
  return parts.length === 0 ? t('batch.forecast.weekNothing') : parts.join(', ')
}

const signed = (value: number, words: string) =>
  value > 0 ? `+${words}` : words.replace('-', '\u2212')
