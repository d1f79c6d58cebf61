import { useWords } from '../../app/words/use-words.ts'
import { Link } from 'wouter'
import type { BottleLot } from '../../../shared/schemas/cellar.ts'
import type { PlaceCost } from '../../../shared/schemas/marrying.ts'
import { Button } from '../../parts/button/button.tsx'
import { useCosts, useCostWords } from '../../parts/cost/use-costs.ts'
import { BatchName } from '../../parts/names/batch-name.tsx'
import { useBatches } from '../../parts/names/use-names.ts'
import { Strength, Sugar } from '../../parts/quantity/composition.tsx'
import { Quantity } from '../../parts/quantity/quantity.tsx'
import { Table, type Column } from '../../parts/table/table.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import { bottleBrimMl } from '../../parts/vessel/batch-vessels.tsx'
import { Vessel } from '../../parts/vessel/vessel.tsx'
import type { Taking } from './take-dialog.tsx'
import styles from './shelf-table.module.css'

export interface ShelfTableProps {
  lots: readonly BottleLot[]
  onTake: (taking: Taking) => void
}

export function ShelfTable({ lots, onTake }: ShelfTableProps) {
  const t = useWords()
  const times = useTimes()
  const batches = useBatches()
  const costs = useCosts()
  const columns: Column<BottleLot>[] = [
    {
      key: 'name',
      header: t('shelf.columns.name'),
      isRowHeader: true,
      cell: (lot) => {
        const batch = batches.get(lot.batchId)?.batch
        return (
          <span className={styles.lot}>
            <LotVessel lot={lot} colour={batch?.colour} />
            <span>
              <Link href={`/batches/${encodeURIComponent(lot.batchId)}`} className={styles.link}>
                <BatchName batch={{ name: lot.name, colour: batch?.colour ?? 'transparent' }} />
              </Link>
              {batch && batch.name !== lot.name && (
                <span className={styles.batch}>{batch.name}</span>
              )}
            </span>
          </span>
        )
      },
    },
    {
      key: 'bottled',
      header: t('shelf.columns.bottled'),
      isMinor: true,
      cell: (lot) => times.day(lot.bottledAt),
    },
    {
      key: 'size',
      header: t('shelf.columns.size'),
      align: 'end',
      cell: (lot) => <Quantity value={lot.bottleSizeMl} dimension="volume" isSize />,
    },
    {
      key: 'left',
      header: t('shelf.columns.left'),
      align: 'end',
      cell: (lot) => (
        <span className={styles.left}>
          {lot.count === 0 ? t('shelf.none') : lot.count}
          <span className={styles.filled}>{t('shelf.ofFilled', { filled: lot.filledCount })}</span>
        </span>
      ),
    },
    {
      key: 'strength',
      header: t('shelf.columns.strength'),
      align: 'end',
      cell: (lot) => lot.liquid && <Strength pctVol={lot.liquid.strengthPctVol} />,
    },
    {
      key: 'sugar',
      header: t('shelf.columns.sugar'),
      align: 'end',
      cell: (lot) => lot.liquid && <Sugar gPerL={lot.liquid.sugarGPerL} />,
    },
    {
      key: 'cost',
      header: t('shelf.columns.cost'),
      align: 'end',
      isMinor: true,
      cell: (lot) => <LotCost cost={costs.get(`bottles:${lot.id}`)} />,
    },
    {
      key: 'actions',
      header: t('shelf.columns.actions'),
      align: 'end',
      cell: (lot) =>
        lot.count > 0 && (
          <span className={styles.actions}>
            <Button
              aria-label={t('shelf.drawNamed', { name: lot.name })}
              onPress={() => onTake({ kind: 'drawBottle', lot })}
            >
              {t('shelf.draw')}
            </Button>
            <Button
              kind="quiet"
              aria-label={t('shelf.giveNamed', { name: lot.name })}
              onPress={() => onTake({ kind: 'give', lot })}
            >
              {t('shelf.give')}
            </Button>
          </span>
        ),
    },
  ]
  return <Table caption={t('shelf.list')} columns={columns} rows={lots} rowKey={({ id }) => id} />
}

function LotCost({ cost }: { cost: PlaceCost | undefined }) {
  const t = useWords()
  const words = useCostWords()
  if (!cost) return null
  const { isComplete } = cost.cost
  const bottle = words({ minor: cost.perBottle ?? 0, isComplete })
  const glass = words({ minor: cost.perGlass ?? 0, isComplete })
  if (bottle === undefined || glass === undefined) return t('parts.cost.unknown')
  return (
    <span className={styles.left}>
      {bottle}
      <span className={styles.filled}>{t('shelf.aGlass', { cost: glass })}</span>
    </span>
  )
}

function LotVessel({ lot, colour }: { lot: BottleLot; colour: string | undefined }) {
  const isGone = lot.count === 0
  const filledMl = isGone ? 0 : lot.bottleSizeMl
  return (
    <span className={styles.vessel}>
      <Vessel
        shape="bottle"
        capacityMl={bottleBrimMl(lot.bottleSizeMl)}
        fillMl={filledMl}
        liquidMl={filledMl}
        colour={isGone ? undefined : colour}
        isDecorative
      />
    </span>
  )
}
