/** What went in, and what came out so far. */
import { useWords } from '../../app/words/use-words.ts'
import type { BatchPage } from '../../../shared/schemas/cellar.ts'
import { useSettings } from '../../app/settings.tsx'
import { Section } from '../../parts/page/page.tsx'
import { Quantity } from '../../parts/quantity/quantity.tsx'
import styles from './yield-section.module.css'

export function YieldSection({ page }: { page: BatchPage }) {
  const t = useWords()
  const { locale } = useSettings()
  const { fruitG, sugarAddedG, ethanolPouredMl, ethanolRecoveredFraction, liquidMl, bottledMl } =
    page.yield
  const filled = page.summary.bottleLots.reduce((sum, lot) => sum + lot.filledCount, 0)
  const percent = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 1 })
  return (
    <Section title={t('batch.yield.title')}>
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
