/** What stands in the way, what was cut for it, and what easing a limit would bring. */
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { listFormat } from '../../../parts/formatters/formatters.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table } from '../../../parts/table/table.tsx'
import type { SeasonPlan, SeasonRelief } from '../../../../shared/schemas/season.ts'
import { leastMl } from '../rounding.ts'
import { useLimitWords } from './use-limit-words.ts'
import styles from './plan.module.css'

export interface LimitsSectionProps {
  plan: SeasonPlan
  isExplaining: boolean
}

export function LimitsSection({ plan, isExplaining }: LimitsSectionProps) {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const kindName = useKindName()
  const { bound } = useLimitWords(plan)
  const cut = plan.kinds.filter(({ shortMl }) => shortMl >= leastMl)
  const list = listFormat(locale, { type: 'conjunction' })
  return (
    <div className={styles.columns}>
      <div className={styles.part}>
        {plan.binding.length === 0 ? (
          <p>{t('season.limits.none')}</p>
        ) : (
          [...Map.groupBy(plan.binding, ({ limit }) => limit)].map(([limit, reached]) => (
            <div key={limit} className={styles.part}>
              <h3>{t(`season.limitName.${limit}`)}</h3>
              <ul className={styles.list}>
                {reached.map((binding) => (
                  <li key={bound(binding)}>{bound(binding)}</li>
                ))}
              </ul>
            </div>
          ))
        )}
        {cut.length > 0 && (
          <>
            <h3>{t('season.limits.cutTitle')}</h3>
            <ul className={styles.list}>
              {[...Map.groupBy(cut, ({ cutBy }) => cutBy.join())].map(([reasons, kinds]) => (
                <li key={reasons}>
                  {t('season.limits.cut', {
                    limits: list.format(
                      (kinds[0]?.cutBy ?? []).map((limit) => t(`season.limit.${limit}`)),
                    ),
                    kinds: list.format(
                      kinds.map(({ kindId, shortMl }) =>
                        t('season.limits.kindCut', {
                          kind: kindName(kindId),
                          volume: text(shortMl, 'volume'),
                        }),
                      ),
                    ),
                  })}
                </li>
              ))}
            </ul>
          </>
        )}
      </div>
      {(plan.binding.length > 0 || plan.reliefs.length > 0) && (
        <div className={styles.part}>
          <h3>{t('season.limits.helps')}</h3>
          {plan.reliefs.length > 0 ? (
            <ReliefTable plan={plan} />
          ) : (
            <p className={styles.quiet}>
              {t(isExplaining ? 'season.limits.working' : 'season.limits.notAsked')}
            </p>
          )}
        </div>
      )}
    </div>
  )
}

function ReliefTable({ plan }: { plan: SeasonPlan }) {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const kindName = useKindName()
  const { eased } = useLimitWords(plan)
  const list = listFormat(locale, { type: 'unit' })
  return (
    <Table<SeasonRelief>
      caption={t('season.limits.helpsCaption')}
      rows={plan.reliefs}
      rowKey={({ eases, by }) => `${eases} ${by}`}
      columns={[
        {
          key: 'ease',
          header: t('season.limits.ease'),
          isRowHeader: true,
          cell: (relief) => eased(relief),
        },
        {
          key: 'gains',
          header: t('season.limits.gains'),
          align: 'end',
          cell: ({ gainsMl, isProven }) => (
            <>
              {gainsMl < leastMl ? (
                t('season.limits.nothing')
              ) : (
                <Quantity value={gainsMl} dimension="volume" />
              )}
              {!isProven && <span className={styles.small}>{t('season.limits.notProven')}</span>}
            </>
          ),
        },
        {
          key: 'kinds',
          header: t('season.limits.kinds'),
          cell: ({ kinds }) =>
            list.format(
              kinds
                .filter(({ gainsMl }) => Math.abs(gainsMl) >= leastMl)
                .map(({ kindId, gainsMl }) =>
                  t('season.limits.kindGain', {
                    kind: kindName(kindId),
                    volume: `${gainsMl > 0 ? '+' : '−'}${text(Math.abs(gainsMl), 'volume')}`,
                  }),
                ),
            ),
        },
        {
          key: 'costs',
          header: t('season.limits.costs'),
          align: 'end',
          cell: ({ costsMinor }) => <Quantity value={Math.round(costsMinor)} dimension="money" />,
        },
      ]}
    />
  )
}
