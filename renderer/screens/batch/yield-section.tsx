/** What went in, and what came out so far. */
import { useWords } from '../../app/words/use-words.ts'
import type { BatchPage } from '../../../shared/schemas/cellar.ts'
import { useSettings } from '../../app/settings.tsx'
import { useCosts, useCostWords } from '../../parts/cost/use-costs.ts'
import { Section } from '../../parts/page/page.tsx'
import { volumePriceUnit } from '../../parts/quantity/price-units.ts'
import { Quantity } from '../../parts/quantity/quantity.tsx'
import styles from './yield-section.module.css'
import { numberFormat } from '../../parts/formatters/formatters.ts'

export function YieldSection({ page }: { page: BatchPage }) {
  const t = useWords()
  const { locale } = useSettings()
  const { fruitG, sugarAddedG, ethanolPouredMl, ethanolRecoveredFraction, liquidMl, bottledMl } =
    page.yield
  const filled = page.summary.bottleLots.reduce((sum, lot) => sum + lot.filledCount, 0)
  const percent = numberFormat(locale, { style: 'percent', maximumFractionDigits: 1 })
  return (
    <Section title={t('batch.yield.title')} term="yield">
      <dl className={styles.list}>
        <div>
          <dt>{t('batch.yield.fruit')}</dt>
          <dd>
            <Quantity value={fruitG} dimension="mass" />
          </dd>
        </div>
        <div>
          <dt>{t('batch.yield.sugar')}</dt>
          <dd>
            <Quantity value={sugarAddedG} dimension="mass" />
          </dd>
        </div>
        <div>
          <dt>{t('batch.yield.ethanol')}</dt>
          <dd>
            <Quantity value={ethanolPouredMl} dimension="volume" />
          </dd>
        </div>
        <div>
          <dt>{t('batch.yield.liquid')}</dt>
          <dd>
            <Quantity value={liquidMl} dimension="volume" />
          </dd>
        </div>
        <div>
          <dt>{t('batch.yield.bottled')}</dt>
          <dd>
            <Quantity value={bottledMl} dimension="volume" />
            {filled > 0 && (
              <span className={styles.quiet}>{t('parts.bottles', { count: filled })}</span>
            )}
          </dd>
        </div>
        <CostOfBatch page={page} />
        {ethanolRecoveredFraction !== undefined && (
          <div>
            <dt>{t('batch.yield.recovered')}</dt>
            <dd>
              {percent.format(ethanolRecoveredFraction)}
              <span className={styles.quiet}>{t('batch.yield.rest')}</span>
            </dd>
          </div>
        )}
      </dl>
    </Section>
  )
}

/** Of all that stands in the batch's jars and bottles; what was drunk or given went with its cost. */
function CostOfBatch({ page: { summary } }: { page: BatchPage }) {
  const t = useWords()
  const { units } = useSettings()
  const costs = useCosts()
  const words = useCostWords()
  const places = [
    ...summary.jars.map(({ jarId }) => `jar:${jarId}`),
    ...summary.bottleLots.map(({ id }) => `bottles:${id}`),
  ].flatMap((place) => costs.get(place) ?? [])
  const cost = {
    minor: places.reduce((sum, one) => sum + one.cost.minor, 0),
    isComplete: places.every((one) => one.cost.isComplete),
  }
  const litres = places.reduce(
    (sum, one) => sum + (one.perLitre ? one.cost.minor / one.perLitre : 0),
    0,
  )
  const told = words(cost)
  const unit = volumePriceUnit(units)
  const each =
    litres > 0 ? words({ ...cost, minor: (cost.minor / litres) * unit.share }) : undefined
  if (places.length === 0 || told === undefined) return null
  return (
    <div>
      <dt>{t('batch.yield.cost')}</dt>
      <dd>
        {told}
        {each !== undefined && (
          <span className={styles.quiet}>
            {t(`batch.yield.perLitre.${unit.id}`, { cost: each })}
          </span>
        )}
      </dd>
    </div>
  )
}
