/** The whole chain from left to right: what flows into each stage, its vessels to scale, what it gives. */
import { memo } from 'react'
import { useWords, type Words } from '../../app/words/use-words.ts'
import type { ChainStage, DraftOutcome } from '../../../shared/schemas/drafts.ts'
import { QuantityMark } from '../../parts/quantity/quantity-mark.tsx'
import { Quantity } from '../../parts/quantity/quantity.tsx'
import { useQuantities, type Quantities } from '../../parts/quantity/use-quantities.ts'
import { useTimes, type Times } from '../../parts/time/use-times.ts'
import { bottleBrimMl } from '../../parts/vessel/bottle-brim.ts'
import { JarVessel } from '../../parts/vessel/jar-vessel.tsx'
import { Vessel } from '../../parts/vessel/vessel.tsx'
import { useDraftWords } from './use-draft-words.ts'
import { useInflowWords } from './use-inflow-words.ts'
import styles from './chain.module.css'

export interface ChainProps {
  outcome: DraftOutcome
  bottleSizeMl: number
  colour: string
}

const mmPerPixel = 3.1
const mostBottlesDrawn = 6

export const Chain = memo(function Chain({ outcome, bottleSizeMl, colour }: ChainProps) {
  const told: Told = {
    t: useWords(),
    words: useDraftWords(),
    inflowWords: useInflowWords(),
    times: useTimes(),
    q: useQuantities(),
  }
  const { t } = told
  return (
    <ol className={styles.chain} aria-label={t('draft.chain.label')}>
      {outcome.stages.map((stage, index) => (
        <StageCard
          key={`${stage.key} ${stage.ordinal}`}
          stage={stage}
          index={index}
          outcome={outcome}
          bottleSizeMl={bottleSizeMl}
          colour={colour}
          told={told}
        />
      ))}
    </ol>
  )
})

/** How everything is said: asked for once, not by each stage. */
interface Told {
  readonly t: Words
  readonly words: ReturnType<typeof useDraftWords>
  readonly inflowWords: ReturnType<typeof useInflowWords>
  readonly times: Times
  readonly q: Quantities
}

interface StageCardProps extends ChainProps {
  stage: ChainStage
  index: number
  told: Told
}

function StageCard({ stage, index, outcome, bottleSizeMl, colour, told }: StageCardProps) {
  const { t, words, inflowWords, times, q } = told
  const { key, ordinal, from, to, liquid, vessels, inflows, lossMl, bottles } = stage
  const name = t(`draft.stage.${key}`)
  const isRepeated = outcome.stages.filter((other) => other.key === key).length > 1
  const warnings = outcome.warnings.filter((warning) => warning.stage === index)
  const [first, last] = [times.day(from), times.day(to)]
  return (
    <li className={styles.stage} data-warned={warnings.length > 0 || undefined}>
      <h3 className={styles.name}>
        {isRepeated ? t('draft.chain.numbered', { stage: name, count: ordinal }) : name}
      </h3>
      <p className={styles.span}>
        {first === last ? first : t('draft.chain.span', { from: first, to: last })}
      </p>
      <ul className={styles.inflows}>
        {inflows.map((inflow, at) => (
          <li key={`${inflow.what} ${at}`} className={styles.inflow}>
            {inflowWords(inflow)}
          </li>
        ))}
      </ul>
      <div className={styles.vessels}>
        {vessels.map(({ jarId, contents }) => {
          const jar = outcome.vessels.find((vessel) => vessel.jarId === jarId)
          return (
            jar && (
              <JarVessel
                key={jarId}
                jar={jar}
                contents={contents}
                colour={colour}
                mmPerPixel={mmPerPixel}
              />
            )
          )
        })}
        {bottles !== undefined && (
          <>
            {Array.from({ length: Math.min(mostBottlesDrawn, bottles) }, (_, at) => (
              <Vessel
                key={at}
                shape="bottle"
                capacityMl={bottleBrimMl(bottleSizeMl)}
                fillMl={bottleSizeMl}
                liquidMl={bottleSizeMl}
                colour={colour}
                mmPerPixel={mmPerPixel}
                isDecorative
              />
            ))}
            <span className={styles.count}>{t('parts.bottles', { count: bottles })}</span>
          </>
        )}
      </div>
      {vessels.map(({ jarId, peakFillMl }) => {
        const jar = outcome.vessels.find((vessel) => vessel.jarId === jarId)
        return (
          jar && (
            <p key={jarId} className={styles.fill}>
              {words.jarName(outcome, jarId)}
              {': '}
              {t('draft.chain.headspace', {
                volume: q.text(Math.max(0, jar.capacityMl - peakFillMl), 'volume'),
              })}
            </p>
          )
        )
      })}
      {liquid && (
        <dl className={styles.liquid}>
          <dt>{t(`draft.gives.${key}`)}</dt>
          <dd>
            <Quantity value={liquid.volumeMl} dimension="volume" />
          </dd>
          {liquid.strengthPctVol > 0 && (
            <>
              <dt>
                <QuantityMark kind="strength" /> {t('parts.quantity.strength')}
              </dt>
              <dd>
                <Quantity value={liquid.strengthPctVol} dimension="strength" />
              </dd>
            </>
          )}
          <dt>
            <QuantityMark kind="sugar" /> {t('parts.quantity.sugar')}
          </dt>
          <dd>
            <Quantity value={liquid.sugarGPerL} dimension="sugar" />
          </dd>
        </dl>
      )}
      {lossMl !== undefined && (
        <p className={styles.fill}>{t('draft.chain.loss', { volume: q.text(lossMl, 'volume') })}</p>
      )}
      {warnings.map((warning) => (
        <p key={words.warning(warning, outcome)} className={styles.warning}>
          {words.warning(warning, outcome)}
        </p>
      ))}
    </li>
  )
}
