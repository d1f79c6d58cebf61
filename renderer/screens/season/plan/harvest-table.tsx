/** The season as planned beside a poor and a good harvest; what those mean is stated. */
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { formatShare } from '../../../parts/quantity/format-share.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table } from '../../../parts/table/table.tsx'
import type { SeasonPlan, SeasonTotals, SeasonVariant } from '../../../../shared/schemas/season.ts'
import styles from './plan.module.css'

interface Row {
  readonly key: string
  readonly header: string
  readonly tell: (totals: SeasonTotals) => string
}

export function HarvestTable({ plan }: { plan: SeasonPlan }) {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const rows: Row[] = [
    {
      key: 'volume',
      header: t('season.harvestSection.volume'),
      tell: ({ volumeMl }) => text(volumeMl.value, 'volume'),
    },
    {
      key: 'bottles',
      header: t('season.harvestSection.bottles'),
      tell: ({ bottles }) => text(bottles, 'count'),
    },
    {
      key: 'short',
      header: t('season.harvestSection.short'),
      tell: ({ shortMl }) => text(shortMl, 'volume'),
    },
    {
      key: 'fruit',
      header: t('season.harvestSection.fruit'),
      tell: ({ fruitG }) => text(fruitG, 'mass'),
    },
    {
      key: 'money',
      header: t('season.harvestSection.money'),
      tell: ({ moneyMinor, isWholeMoney }) => {
        const money = text(Math.round(moneyMinor), 'money')
        return isWholeMoney ? money : t('season.harvestSection.atLeast', { money })
      },
    },
  ]
  const variants = plan.variants.toSorted((a) => (a.harvest === 'poor' ? -1 : 1))
  const weeks = ({ factors: { seasonWeeks } }: SeasonVariant) => {
    const count = Math.abs(seasonWeeks)
    if (count === 0) return t('season.harvestSection.same')
    return t(seasonWeeks < 0 ? 'season.harvestSection.shorter' : 'season.harvestSection.longer', {
      count,
    })
  }
  return (
    <>
      <Table<Row>
        caption={t('season.harvestSection.caption')}
        rows={rows}
        rowKey={({ key }) => key}
        columns={[
          {
            key: 'row',
            header: t('season.harvestSection.row'),
            isRowHeader: true,
            cell: ({ header }) => header,
          },
          {
            key: 'planned',
            header: t('season.harvestSection.planned'),
            align: 'end',
            cell: ({ tell }) => tell(plan.totals),
          },
          ...variants.map((variant) => ({
            key: variant.harvest,
            header: t(`season.harvest.${variant.harvest}`),
            align: 'end' as const,
            cell: ({ tell }: Row) => tell(variant.totals),
          })),
        ]}
      />
      <p className={styles.small}>
        {variants
          .map((variant) =>
            t('season.harvestSection.factors', {
              harvest: t(`season.harvest.${variant.harvest}`),
              price: formatShare(variant.factors.fruitPrice, locale),
              yield: formatShare(variant.factors.yield, locale),
              weeks: weeks(variant),
            }),
          )
          .join(' ')}{' '}
        {t('season.harvestSection.stated')}{' '}
        {variants
          .filter(({ isProven }) => !isProven)
          .map(({ harvest }) =>
            t('season.harvestSection.notProven', { harvest: t(`season.harvest.${harvest}`) }),
          )
          .join(' ')}
      </p>
    </>
  )
}
