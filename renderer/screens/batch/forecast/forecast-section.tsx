/** Where each jar on fruit is going: when it settles, what is out of the fruit, what is left in it. */
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchSummary } from '../../../../shared/schemas/cellar.ts'
import type { BatchForecast } from '../../../../shared/schemas/steeping.ts'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { Section } from '../../../parts/page/page.tsx'
import type { LoggedKind } from '../../../parts/moves/kinds.ts'
import type { Prefill } from '../log/log-panel.tsx'
import { useForecast } from '../use-steeping.ts'
import { FitNote } from './fit-note.tsx'
import { JarForecastBlock } from './jar-forecast-block.tsx'
import styles from './forecast.module.css'

export interface ForecastProps {
  summary: BatchSummary
  onOpen: (kind: LoggedKind, prefill?: Prefill) => void
}

export function ForecastSection(props: ForecastProps) {
  const t = useWords()
  const forecast = useForecast(props.summary.batch.id)
  return (
    <Section title={t('batch.forecast.title')} term="halfTime">
      <ReadState query={forecast}>{(data) => <Shown {...props} forecast={data} />}</ReadState>
    </Section>
  )
}

function Shown({ summary, forecast, onOpen }: ForecastProps & { forecast: BatchForecast }) {
  const t = useWords()
  const { jars, fit } = forecast
  if (jars.length === 0) {
    const isWaiting = summary.stage === 'empty' || summary.stage === 'layered'
    return <p>{t(isWaiting ? 'batch.forecast.notYet' : 'batch.forecast.none')}</p>
  }
  return (
    <div className={styles.section}>
      <div className={styles.jars}>
        {jars.map((jar) => (
          <JarForecastBlock
            key={jar.jarId}
            forecast={jar}
            contents={summary.jars.find(({ jarId }) => jarId === jar.jarId)}
            onOpen={onOpen}
          />
        ))}
      </div>
      <FitNote batchId={summary.batch.id} fit={fit} />
      <p className={styles.quiet}>{t('batch.forecast.give')}</p>
    </div>
  )
}
