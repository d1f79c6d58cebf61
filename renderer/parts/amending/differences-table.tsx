/** Every place that would stand otherwise today, before and after, in one table. */
import { useWords } from '../../app/words/use-words.ts'
import type { Differences, LiquidNumbers } from '../../../shared/schemas/amending.ts'
import { useBatches, useGoodsName, useJars } from '../names/use-names.ts'
import type { Dimension } from '../quantity/units.ts'
import { useQuantities } from '../quantity/use-quantities.ts'
import { Table } from '../table/table.tsx'
import styles from './consequences.module.css'

/** Both sides of one number; null where there is none. */
type Sides = readonly [before: number | null, after: number | null]

interface Row {
  readonly key: string
  readonly group: keyof Differences
  readonly name: string
  /** What else changes, in words. */
  readonly also?: string | undefined
  readonly liquid: readonly [LiquidNumbers | null, LiquidNumbers | null] | undefined
  readonly amounts: readonly { readonly sides: Sides; readonly dimension: Dimension | 'bottles' }[]
}

export function DifferencesTable({ differences }: { differences: Differences }) {
  const t = useWords()
  const rows = useRows(differences)
  if (rows.length === 0) return <p className={styles.quiet}>{t('amending.nothing')}</p>
  return (
    <Table<Row>
      caption={t('amending.title')}
      rows={rows}
      rowKey={({ key }) => key}
      groupTitle={(row) =>
        rows.find(({ group }) => group === row.group) === row
          ? t(`amending.group.${row.group}`)
          : undefined
      }
      columns={[
        {
          key: 'what',
          header: t('amending.what'),
          isRowHeader: true,
          cell: ({ name, also }) => (
            <>
              {name}
              {also !== undefined && <span className={styles.small}>{also}</span>}
            </>
          ),
        },
        ...(['strengthPctVol', 'sugarGPerL'] as const).map((name) => ({
          key: name,
          header: t(name === 'strengthPctVol' ? 'amending.strength' : 'amending.sugar'),
          align: 'end' as const,
          cell: ({ liquid }: Row) =>
            liquid?.some((side) => side !== null) && (
              <Change
                sides={[liquid[0]?.[name] ?? null, liquid[1]?.[name] ?? null]}
                dimension={name === 'strengthPctVol' ? 'strength' : 'sugar'}
              />
            ),
        })),
        {
          key: 'amount',
          header: t('amending.amount'),
          align: 'end',
          cell: ({ amounts }) =>
            amounts.map(({ sides, dimension }) => (
              <Change key={dimension} sides={sides} dimension={dimension} />
            )),
        },
      ]}
    />
  )
}

/** A number that stays is shown quietly; one that is gone, or new, says so. */
function Change({ sides, dimension }: { sides: Sides; dimension: Dimension | 'bottles' }) {
  const t = useWords()
  const { text } = useQuantities()
  const told = (value: number | null) => {
    if (value === null) return t('amending.none')
    return dimension === 'bottles' ? t('parts.bottles', { count: value }) : text(value, dimension)
  }
  const [before, after] = [told(sides[0]), told(sides[1])]
  return before === after ? (
    <div className={styles.same}>{after}</div>
  ) : (
    <div className={styles.change}>{t('amending.change', { before, after })}</div>
  )
}

const volume = (...sides: Sides) => ({ sides, dimension: 'volume' as const })

function useRows({ batches, jars, bottles, opened, pantry }: Differences): Row[] {
  const t = useWords()
  const names = useBatches()
  const vessels = useJars()
  const goodsName = useGoodsName()
  return [
    ...batches.map(({ batchId, before, after }): Row => {
      const stage = (side: typeof before) =>
        side ? t(`codes.stage.${side.stage}`) : t('amending.none')
      const [was, is] = [stage(before), stage(after)]
      const liquid = [before?.liquid ?? null, after?.liquid ?? null] as const
      return {
        key: `batch ${batchId}`,
        group: 'batches',
        name: names.get(batchId)?.batch.name ?? batchId,
        also: was === is ? undefined : t('amending.change', { before: was, after: is }),
        liquid,
        amounts: [volume(liquid[0]?.volumeMl ?? null, liquid[1]?.volumeMl ?? null)],
      }
    }),
    ...jars.map(({ jarId, before, after }): Row => ({
      key: `jar ${jarId}`,
      group: 'jars',
      name: vessels.get(jarId)?.jar.name ?? t('parts.place.theJar'),
      liquid: [before, after],
      amounts: [volume(before?.volumeMl ?? null, after?.volumeMl ?? null)],
    })),
    ...bottles.map(({ bottleLotId, name, before, after }): Row => ({
      key: `bottles ${bottleLotId}`,
      group: 'bottles',
      name,
      liquid: [before?.liquid ?? null, after?.liquid ?? null],
      amounts: [{ sides: [before?.count ?? null, after?.count ?? null], dimension: 'bottles' }],
    })),
    ...opened.map(({ openedId, name, before, after }): Row => ({
      key: `opened ${openedId}`,
      group: 'opened',
      name,
      liquid: [before, after],
      amounts: [volume(before?.volumeMl ?? null, after?.volumeMl ?? null)],
    })),
    ...pantry.map(({ lotId, goods, before, after }): Row => {
      const isLiquid = (before ?? after)?.volumeMl !== undefined
      return {
        key: `pantry ${lotId}`,
        group: 'pantry',
        name: goodsName(goods),
        liquid: undefined,
        amounts: [
          isLiquid
            ? volume(before?.volumeMl ?? null, after?.volumeMl ?? null)
            : { sides: [before?.massG ?? null, after?.massG ?? null], dimension: 'mass' },
        ],
      }
    }),
  ]
}
