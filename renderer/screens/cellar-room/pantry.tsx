/** The pantry: what was bought and what is left of it, lot by lot. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Link } from 'wouter'
import type { PantryLot } from '../../../shared/schemas/cellar.ts'
import { Button } from '../../parts/button/button.tsx'
import { useGoodsName } from '../../parts/names/use-names.ts'
import { Empty, Section } from '../../parts/page/page.tsx'
import { Quantity } from '../../parts/quantity/quantity.tsx'
import { FirstRows } from '../../parts/table/first-rows.tsx'
import { Table, type Column } from '../../parts/table/table.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import { BuyDialog } from './buy-dialog.tsx'
import styles from './pantry.module.css'

/** Less than this is what clings to the bag. */
const traceG = 0.5

const rowsAtOnce = 100

const isUsedUp = ({ massG }: PantryLot) => massG < traceG

export function Pantry({ lots }: { lots: readonly PantryLot[] }) {
  const t = useWords()
  const [isBuying, setBuying] = useState(false)
  const [showsUsedUp, setShowsUsedUp] = useState(false)
  const shown = lots
    .filter((lot) => showsUsedUp || !isUsedUp(lot))
    .toSorted((a, b) => b.boughtAt.localeCompare(a.boughtAt))
  const buy = <Button onPress={() => setBuying(true)}>{t('cellarRoom.buy')}</Button>
  return (
    <Section title={t('cellarRoom.pantry')} actions={shown.length > 0 && buy}>
      {shown.length === 0 ? (
        <Empty action={buy}>{t('cellarRoom.pantryEmpty')}</Empty>
      ) : (
        <FirstRows rows={shown} atOnce={rowsAtOnce}>
          {(rows) => <PantryTable lots={rows} />}
        </FirstRows>
      )}
      {lots.some(isUsedUp) && !showsUsedUp && (
        <p>
          <Button kind="quiet" onPress={() => setShowsUsedUp(true)}>
            {t('cellarRoom.showUsedUp')}
          </Button>
        </p>
      )}
      <BuyDialog isOpen={isBuying} onClose={() => setBuying(false)} />
    </Section>
  )
}

function PantryTable({ lots }: { lots: readonly PantryLot[] }) {
  const t = useWords()
  const times = useTimes()
  const goodsName = useGoodsName()
  const columns: Column<PantryLot>[] = [
    {
      key: 'goods',
      header: t('cellarRoom.columns.goods'),
      isRowHeader: true,
      cell: ({ id, goods }) => (
        <>
          <span className={styles.goods}>{goodsName(goods)}</span>{' '}
          <Link
            href={`/lineage/lot/${encodeURIComponent(id)}`}
            className={styles.whereTo}
            aria-label={t('shelf.lineage.whereToOf', { name: goodsName(goods) })}
          >
            {t('shelf.lineage.whereTo')}
          </Link>
        </>
      ),
    },
    {
      key: 'left',
      header: t('cellarRoom.columns.left'),
      align: 'end',
      cell: (lot) =>
        isUsedUp(lot) ? (
          t('cellarRoom.usedUp')
        ) : (
          <strong>
            <Amount massG={lot.massG} volumeMl={lot.volumeMl} />
          </strong>
        ),
    },
    {
      key: 'bought',
      header: t('cellarRoom.columns.bought'),
      align: 'end',
      cell: (lot) => <Amount massG={lot.boughtMassG} volumeMl={lot.boughtVolumeMl} />,
    },
    {
      key: 'price',
      header: t('cellarRoom.columns.price'),
      align: 'end',
      cell: ({ priceMinor }) =>
        priceMinor !== undefined && <Quantity value={priceMinor} dimension="money" />,
    },
    {
      key: 'boughtAt',
      header: t('cellarRoom.columns.boughtAt'),
      align: 'end',
      cell: ({ boughtAt }) => times.day(boughtAt),
    },
  ]
  return (
    <Table caption={t('cellarRoom.pantry')} columns={columns} rows={lots} rowKey={({ id }) => id} />
  )
}

/** Spirit is told by volume, everything else by mass. */
function Amount({ massG, volumeMl }: { massG: number; volumeMl: number | undefined }) {
  return volumeMl === undefined ? (
    <Quantity value={massG} dimension="mass" />
  ) : (
    <Quantity value={volumeMl} dimension="volume" />
  )
}
