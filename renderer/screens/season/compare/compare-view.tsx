/** Last season: what was planned then, what was done, and what is planned now. */
import { useRead } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { Empty, Section } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table } from '../../../parts/table/table.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { Cost } from '../../../../shared/schemas/marrying.ts'
import type { SeasonComparison } from '../../../../shared/schemas/season.ts'
import { LaidDown } from './laid-down.tsx'
import styles from './compare.module.css'

type Kind = SeasonComparison['kinds'][number]

/** Kinds of which nothing was planned, done, or is planned, have no line. */
const isOfUse = ({ now, earlier, happened }: Kind): boolean =>
  [now, earlier, happened].some((one) => one !== undefined && one.volumeMl + one.fruitG > 0) ||
  (happened?.inJarsMl ?? 0) > 0

export function CompareView({ jobId }: { jobId: string | undefined }) {
  const t = useWords()
  const comparison = useRead(
    'season.compare',
    { ...(jobId !== undefined && { jobId }) },
    { keepsLast: true },
  )
  return (
    <Section title={t('season.compare.title')}>
      <ReadState query={comparison}>
        {(found) => {
          const kinds = found.kinds.filter(isOfUse)
          return kinds.length === 0 ? (
            <Empty>{t('season.compare.empty')}</Empty>
          ) : (
            <Compared comparison={{ ...found, kinds }} />
          )
        }}
      </ReadState>
    </Section>
  )
}

function Compared({ comparison }: { comparison: SeasonComparison }) {
  const t = useWords()
  const times = useTimes()
  const { text } = useQuantities()
  const kindName = useKindName()
  const { from, to, earlier, kinds, money: paid } = comparison
  const greatest = Math.max(
    1,
    ...kinds.flatMap((kind) => [
      kind.now?.volumeMl ?? 0,
      kind.earlier?.volumeMl ?? 0,
      (kind.happened?.volumeMl ?? 0) + (kind.happened?.inJarsMl ?? 0),
    ]),
  )
  const money = (cost: Cost | undefined) => {
    if (cost === undefined) return t('season.compare.nothing')
    const words = text(Math.round(cost.minor), 'money')
    return cost.isComplete ? words : t('season.compare.atLeast', { money: words })
  }
  const sums: Kind = { kindId: 'all kinds together' }
  const isSum = (kind: Kind) => kind === sums
  return (
    <>
      <p>
        {t('season.compare.between', { from: times.day(from), to: times.day(to) })}{' '}
        {earlier
          ? t('season.compare.earlier', { day: times.day(earlier.keptAt) })
          : t('season.compare.noEarlier')}
      </p>
      <Table<Kind>
        caption={t('season.compare.caption')}
        rows={kinds.toSorted((a, b) => kindName(a.kindId).localeCompare(kindName(b.kindId)))}
        rowKey={({ kindId }) => kindId}
        foot={sums}
        columns={[
          {
            key: 'kind',
            header: t('season.compare.kind'),
            isRowHeader: true,
            cell: (kind) =>
              isSum(kind) ? (
                t('season.compare.money')
              ) : (
                <span className={styles.kind}>{kindName(kind.kindId)}</span>
              ),
          },
          {
            key: 'then',
            header: t('season.compare.plannedThen'),
            cell: (kind) =>
              isSum(kind) ? (
                money(paid.earlier)
              ) : (
                <LaidDown laidDown={kind.earlier} greatest={greatest} look="planned">
                  {kind.earlier?.startAt !== undefined &&
                    t('season.compare.first', { day: times.day(kind.earlier.startAt) })}
                </LaidDown>
              ),
          },
          {
            key: 'done',
            header: t('season.compare.done'),
            cell: (kind) =>
              isSum(kind) ? (
                money(paid.happened)
              ) : (
                <LaidDown laidDown={kind.happened} greatest={greatest} look="done">
                  {kind.happened && <Happened happened={kind.happened} />}
                </LaidDown>
              ),
          },
          {
            key: 'now',
            header: t('season.compare.now'),
            cell: (kind) =>
              isSum(kind) ? (
                money(paid.now)
              ) : (
                <LaidDown laidDown={kind.now} greatest={greatest} look="planned" />
              ),
          },
        ]}
      />
      <p className={styles.small}>{t('season.compare.key')}</p>
    </>
  )
}

function Happened({ happened }: { happened: NonNullable<Kind['happened']> }) {
  const t = useWords()
  const times = useTimes()
  const { text } = useQuantities()
  const { inJarsMl, spent, firstAt } = happened
  const told = [
    firstAt !== undefined && t('season.compare.first', { day: times.day(firstAt) }),
    inJarsMl > 0 && t('season.compare.inJars', { volume: text(inJarsMl, 'volume') }),
    spent !== undefined &&
      t(spent.isComplete ? 'season.compare.spent' : 'season.compare.spentAtLeast', {
        money: text(Math.round(spent.minor), 'money'),
      }),
  ]
  return told.filter((words) => words !== false).join(' · ')
}
