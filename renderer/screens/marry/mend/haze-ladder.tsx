/** Against a haze: what the trade does, the gentlest first, with doses for this jar. */
import { useRead } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { Section } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import styles from '../marry-screen.module.css'
import type { PlaceShown } from '../places.ts'
import result from '../result/result.module.css'

/** A spoonful is enough, with four times as much strong spirit. */
const sampleMl = 10
const spiritTimes = 4
/** Of the volume, at each racking. */
const rackingLoss = 0.03

const steps = ['test', 'chill', 'rack', 'bentonite', 'louche', 'pectin'] as const

export function HazeLadder({ jar, onRaise }: { jar: PlaceShown; onRaise: () => void }) {
  const t = useWords()
  const { text, size } = useQuantities()
  const query = useRead('mend.solve', {
    jarId: jar.place.slice('jar:'.length),
    wishes: {},
    parts: [],
  })
  return (
    <ReadState query={query}>
      {({ haze, before }) => {
        const { bentoniteG, bentoniteWaterMl } = haze
        const values = {
          sample: text(sampleMl, 'volume'),
          spirit: text(sampleMl * spiritTimes, 'volume'),
          strong: size(80, 'strength').text,
          trial: size(100, 'volume').text,
          limit: size(15, 'strength').text,
          loss: text(before.volumeMl * rackingLoss, 'volume'),
          low: text(bentoniteG.low, 'mass'),
          high: text(bentoniteG.high, 'mass'),
          waterLow: text(bentoniteWaterMl.low, 'volume'),
          waterHigh: text(bentoniteWaterMl.high, 'volume'),
        }
        return (
          <Section title={t('marry.haze.title')} term="lees">
            <ol className={styles.ladder}>
              {steps.map((step) => (
                <li key={step}>
                  <h3>{t(`marry.haze.${step}.title`)}</h3>
                  <p>{t(`marry.haze.${step}.text`, values)}</p>
                  {step === 'louche' && (
                    <Button kind="quiet" onPress={onRaise}>
                      {t('marry.haze.louche.action')}
                    </Button>
                  )}
                </li>
              ))}
            </ol>
            <p className={result.small}>{t('marry.haze.source')}</p>
          </Section>
        )
      }}
    </ReadState>
  )
}
