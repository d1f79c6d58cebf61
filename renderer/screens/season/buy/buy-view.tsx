/** The purchase list: this week on top, ticked off as it is bought, printed or saved. */
import { useState } from 'react'
import { Link } from 'wouter'
import { useRead } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { focusOnMount } from '../../../parts/fields/focus-on-mount.ts'
import { Segments } from '../../../parts/fields/segments.tsx'
import { Empty } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { PurchaseLine, PurchaseList } from '../../../../shared/schemas/season.ts'
import { ListFiles } from './list-files.tsx'
import { purchaseGroups, type PurchaseGroup } from './purchase-groups.ts'
import { useGoodsWords } from './use-goods-words.ts'
import { PurchaseTable } from './purchase-table.tsx'
import { TickDialog } from './tick-dialog.tsx'
import styles from './buy.module.css'

export function BuyView() {
  const t = useWords()
  const list = useRead('purchases.list', {})
  return (
    <ReadState query={list}>
      {(found) =>
        found.planKeptAt === undefined && found.lines.length === 0 ? (
          <Empty>{t('season.buy.none')}</Empty>
        ) : found.lines.length === 0 ? (
          <Empty>{t('season.buy.nothing')}</Empty>
        ) : (
          <List list={found} />
        )
      }
    </ReadState>
  )
}

function List({ list }: { list: PurchaseList }) {
  const t = useWords()
  const times = useTimes()
  const { text } = useQuantities()
  const [by, setBy] = useState<'week' | 'shop'>('week')
  const [ticking, setTicking] = useState<PurchaseLine>()
  const [told, setTold] = useState<string>()
  const words = useGoodsWords()
  const groups = purchaseGroups(list.lines, by, times.now)
  const isWhole = list.lines.every(
    ({ ticked, priceMinor }) => ticked !== undefined || priceMinor !== undefined,
  )
  const title = ({ of, from, shop }: PurchaseGroup) => {
    switch (of) {
      case 'week':
        return t('season.buy.week', { day: times.day(from) })
      case 'shop':
        return t(`season.shop.${shop ?? 'market'}`)
      default:
        return t(`season.buy.${of}`)
    }
  }
  const sums = [
    t(isWhole ? 'season.buy.open' : 'season.buy.openAtLeast', {
      money: text(Math.round(list.openMinor), 'money'),
    }),
    ...(list.paidMinor > 0
      ? [t('season.buy.paid', { money: text(Math.round(list.paidMinor), 'money') })]
      : []),
  ]
  return (
    <>
      <div className={styles.bar}>
        <p className={styles.sums}>{sums.join(', ')}</p>
        <Segments
          label={t('season.buy.by')}
          value={by}
          onChange={setBy}
          choices={[
            { value: 'week', label: t('season.buy.byWeek') },
            { value: 'shop', label: t('season.buy.byShop') },
          ]}
        />
        <ListFiles by={by} />
      </div>
      {told !== undefined && (
        // The button that was pressed is gone with its line: the focus goes to what came of it.
        <output key={told} ref={focusOnMount} tabIndex={-1}>
          {told}
        </output>
      )}
      <p className={styles.note}>
        {t('season.buy.calendar')} <Link href="/today/calendar">{t('season.buy.toCalendar')}</Link>
      </p>
      <PurchaseTable groups={groups} titleOf={title} onTick={setTicking} />
      <TickDialog
        line={ticking}
        onClose={() => setTicking(undefined)}
        onBought={(line, amount) => {
          setTicking(undefined)
          setTold(
            t('season.buy.isBought', { goods: words.goods(line), amount: words.amount(amount) }),
          )
        }}
      />
    </>
  )
}
