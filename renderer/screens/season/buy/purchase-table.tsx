/** The lines of the purchase list, group by group, each to be ticked off or taken back. */
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { Table, type Column } from '../../../parts/table/table.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { PurchaseLine } from '../../../../shared/schemas/season.ts'
import type { PurchaseGroup } from './purchase-groups.ts'
import { useGoodsWords } from './use-goods-words.ts'
import styles from './buy.module.css'

export interface PurchaseTableProps {
  groups: readonly PurchaseGroup[]
  titleOf: (group: PurchaseGroup) => string
  onTick: (line: PurchaseLine) => void
}

export function PurchaseTable({ groups, titleOf, onTick }: PurchaseTableProps) {
  const t = useWords()
  const times = useTimes()
  const words = useGoodsWords()
  const untick = useWrite('purchases.tick')
  const takeBack = ({ key }: PurchaseLine) =>
    untick.mutate({ key: newId(), lineKey: key, isTicked: false })
  const columns: Column<PurchaseLine>[] = [
    {
      key: 'what',
      header: t('season.buy.what'),
      isRowHeader: true,
      cell: (line) => (
        <>
          {words.goods(line)}
          {words.purpose(line) !== undefined && (
            <span className={styles.small}>{words.purpose(line)}</span>
          )}
          {!line.ticked && words.atHand(line) && (
            <span className={styles.small}>{words.atHand(line)}</span>
          )}
        </>
      ),
    },
    {
      key: 'howMuch',
      header: t('season.buy.howMuch'),
      align: 'end',
      cell: (line) => words.amount({ ...line, ...line.ticked }),
    },
    {
      key: 'price',
      header: t('season.buy.price'),
      align: 'end',
      cell: ({ ticked, priceMinor }) => {
        const price = ticked ? ticked.priceMinor : priceMinor
        return price === undefined ? (
          t('season.buy.noPrice')
        ) : (
          <Quantity value={Math.round(price)} dimension="money" />
        )
      },
    },
    {
      key: 'shop',
      header: t('season.buy.shop'),
      isMinor: true,
      cell: ({ shop }) => t(`season.shop.${shop}`),
    },
    {
      key: 'from',
      header: t('season.buy.from'),
      cell: ({ from }) => times.day(from),
    },
    {
      key: 'tick',
      header: <span className="visually-hidden">{t('season.buy.tick')}</span>,
      cell: (line) => (
        <TickCell line={line} onTick={onTick} onTakeBack={takeBack} isBusy={untick.isPending} />
      ),
    },
  ]
  return (
    <div className={styles.list}>
      <FailureNote error={untick.error} />
      <Table<PurchaseLine>
        caption={t('season.buy.title')}
        rows={groups.flatMap(({ lines }) => lines)}
        groupTitle={(line) => {
          const begun = groups.find(({ lines }) => lines[0] === line)
          return begun && titleOf(begun)
        }}
        rowKey={({ key }) => key}
        columns={columns}
      />
    </div>
  )
}

interface TickCellProps {
  line: PurchaseLine
  onTick: (line: PurchaseLine) => void
  onTakeBack: (line: PurchaseLine) => void
  isBusy: boolean
}

function TickCell({ line, onTick, onTakeBack, isBusy }: TickCellProps) {
  const t = useWords()
  const times = useTimes()
  const goods = useGoodsWords().goods(line)
  const { ticked } = line
  if (!ticked)
    return (
      <Button onPress={() => onTick(line)} aria-label={t('season.buy.tickOne', { goods })}>
        {t('season.buy.tick')}
      </Button>
    )
  return (
    <span className={styles.tick}>
      <span className={styles.ticked}>{t('season.buy.ticked', { day: times.day(ticked.at) })}</span>
      {ticked.canBeTakenBack ? (
        <Button
          kind="quiet"
          isBusy={isBusy}
          onPress={() => onTakeBack(line)}
          aria-label={t('season.buy.takeBackOne', { goods })}
        >
          {t('season.buy.takeBack')}
        </Button>
      ) : (
        <span className={styles.ticked}>{t('season.buy.used')}</span>
      )}
    </span>
  )
}
