/** Forward from a purchase: in which jars, bottles and glasses it ended up. */
import { Link } from 'wouter'
import { useWords } from '../../app/words/use-words.ts'
import { useRead } from '../../app/queries.ts'
import { LineageView } from '../../charts/lineage-view.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { useGoodsName } from '../../parts/names/use-names.ts'
import { Page } from '../../parts/page/page.tsx'

export function LineageScreen({ lotId }: { lotId: string }) {
  const t = useWords()
  const goodsName = useGoodsName()
  const lineage = useRead('lineage.of', { lotId })
  // Names are on every place of it: without them it would be drawn twice.
  const pantry = useRead('pantry.list', {})
  const bottles = useRead('bottles.list', {})
  const lot = pantry.data?.find(({ id }) => id === lotId)
  const waiting = [lineage, pantry, bottles].find(({ isError }) => isError) ?? lineage
  const title = lot
    ? t('shelf.lineage.title', { name: goodsName(lot.goods) })
    : t('shelf.lineage.titlePlain')
  return (
    <Page
      title={title}
      before={<Link href="/cellar-room">{t('shelf.lineage.back')}</Link>}
      lead={lineage.data && t('shelf.lineage.lead')}
    >
      {lineage.data && pantry.data && bottles.data ? (
        <LineageView
          lineage={lineage.data}
          title={t('shelf.lineage.titlePlain')}
          towards="destinations"
        />
      ) : (
        <ReadState<unknown> query={waiting}>{() => null}</ReadState>
      )}
    </Page>
  )
}
