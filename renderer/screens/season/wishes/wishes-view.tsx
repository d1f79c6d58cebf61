/** What drinking asks for and what the maker wishes, the limits, the prices; kept as they are written. */
import { useWords } from '../../../app/words/use-words.ts'
import { Section } from '../../../parts/page/page.tsx'
import type { SeasonPlan } from '../../../../shared/schemas/season.ts'
import type { KeptWishes } from '../use-kept-wishes.ts'
import { HowForm } from './how-form.tsx'
import { KindWishes } from './kind-wishes.tsx'
import { LimitsForm } from './limits-form.tsx'
import { PricesForm } from './prices-form.tsx'
import styles from './wishes.module.css'

export interface WishesViewProps {
  kept: KeptWishes
  plan: SeasonPlan | undefined
}

export function WishesView({ kept: { wishes, change, isKept }, plan }: WishesViewProps) {
  const t = useWords()
  return (
    <>
      <output className={styles.quiet}>
        {t(isKept ? 'season.wishes.kept' : 'season.wishes.keeping')}
      </output>
      <Section title={t('season.wishes.kinds')}>
        <KindWishes
          wishes={wishes.wishes}
          plan={plan}
          onChange={(changed) => change({ wishes: changed })}
        />
      </Section>
      <div className={styles.columns}>
        <Section title={t('season.wishes.limits')}>
          <LimitsForm limits={wishes.limits} onChange={(limits) => change({ limits })} />
        </Section>
        <Section title={t('season.wishes.how')}>
          <HowForm wishes={wishes} onChange={change} />
        </Section>
      </div>
      <Section title={t('season.wishes.prices')}>
        <PricesForm
          prices={wishes.prices}
          spiritPctVol={wishes.spiritPctVol}
          kindIds={[
            ...new Set([
              ...(plan?.kinds ?? []).map(({ kindId }) => kindId),
              ...wishes.wishes.map(({ kindId }) => kindId),
            ]),
          ]}
          plan={plan}
          onChange={(prices) => change({ prices })}
        />
      </Section>
    </>
  )
}
