/** The balance of the whole cellar by kind of matter, and in a sentence whether it adds up. */
import { useWords } from '../../app/words/use-words.ts'
import type { Balance } from '../../../shared/schemas/cellar.ts'
import { massOf, matterKinds } from '../../../shared/matter.ts'
import { useSettings } from '../../app/settings.tsx'
import { classes } from '../../parts/classes.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { Table, type Column } from '../../parts/table/table.tsx'
import { balanceRows, verdictOn, type BalanceRow } from './balance-rows.ts'
import styles from './balance-table.module.css'
import { numberFormat } from '../../parts/formatters/formatters.ts'

const gramsPer = { metric: { unit: 'kg', grams: 1000 }, us: { unit: 'lb', grams: 453.59237 } }

export function BalanceTable({ balance }: { balance: Balance }) {
  const t = useWords()
  const { locale, units } = useSettings()
  const quantities = useQuantities()
  const { unit, grams } = gramsPer[units]
  const format = numberFormat(locale, {
    minimumFractionDigits: 3,
    maximumFractionDigits: 3,
  })
  // Adding zero turns -0 into 0.
  const rounded = (massG: number) => Math.round((massG / grams) * 1000) / 1000 + 0
  const amount = (massG: number) => format.format(rounded(massG))
  const verdict = verdictOn(balance)
  const columns: Column<BalanceRow>[] = [
    {
      key: 'row',
      header: t('safekeeping.row'),
      isRowHeader: true,
      cell: ({ key, part }) => (
        <span className={classes(part === 'missing' && styles.missing)}>
          {t(`safekeeping.balanceRow.${key}`)}
        </span>
      ),
    },
    ...matterKinds.map((kind) => ({
      key: kind,
      header: t(`safekeeping.balanceColumn.${kind}`),
      align: 'end' as const,
      cell: ({ matter }: BalanceRow) => (
        <span className={classes(rounded(matter[kind]) === 0 && styles.quiet)}>
          {amount(matter[kind])}
        </span>
      ),
    })),
    {
      key: 'total',
      header: t('safekeeping.total'),
      align: 'end',
      cell: ({ matter }) => <strong>{amount(massOf(matter))}</strong>,
    },
  ]
  const rows = balanceRows(balance)
  return (
    <>
      <p className={verdict.isBalanced ? undefined : styles.hole}>
        {t(verdict.isBalanced ? 'safekeeping.balanced' : 'safekeeping.unbalanced', {
          total: quantities.text(verdict.cameInG, 'mass'),
          missing: quantities.text(verdict.missingG, 'mass'),
        })}
      </p>
      <p className={styles.quiet}>{t('safekeeping.balanceText', { unit })}</p>
      <Table
        caption={t('safekeeping.balance')}
        columns={columns}
        rows={rows.filter(({ part }) => part !== 'missing')}
        rowKey={({ key }) => key}
        startsGroup={({ key }) => key === 'inPantry' || key === 'drunk'}
        {...optionalFoot(rows.find(({ part }) => part === 'missing'))}
      />
    </>
  )
}

const optionalFoot = (foot: BalanceRow | undefined) => (foot ? { foot } : {})
