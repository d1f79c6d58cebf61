/** A lot's page: what is left and how its window stands; tastings, opened bottles, where it came from. */
import { Link } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { useRead } from '../../../app/queries.ts'
import { Button, ButtonLink } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { useBatches } from '../../../parts/names/use-names.ts'
import { Page } from '../../../parts/page/page.tsx'
import type { ShelfPage } from '../../../../shared/schemas/shelf.ts'
import { ActDialog } from '../acts/act-dialog.tsx'
import { ActMenu } from '../acts/act-menu.tsx'
import { useActs } from '../acts/use-acts.ts'
import { useWindowWords } from '../use-window-words.ts'
import { ColourSection } from './colour-section.tsx'
import { LineageSection } from './lineage-section.tsx'
import { LotAnswer } from './lot-answer.tsx'
import { MovesSection } from './moves-section.tsx'
import { OpenedSection } from './opened-section.tsx'
import { SiblingsSection } from './siblings-section.tsx'
import { TastingsSection } from './tastings-section.tsx'
import { WindowSection } from './window-section.tsx'
import styles from './lot.module.css'

export function LotScreen({ bottleLotId }: { bottleLotId: string }) {
  const t = useWords()
  const page = useRead('shelf.page', { bottleLotId })
  // Colours and names are on every line: without them the page would be drawn twice.
  const batches = useRead('batches.list', {})
  const bottles = useRead('bottles.list', {})
  const jars = useRead('jars.list', {})
  if (page.data && batches.data && bottles.data && jars.data) return <Shown page={page.data} />
  const waiting = [page, batches, bottles, jars].find(({ isError }) => isError) ?? page
  return (
    <Page title={t('shelf.title')} before={<Back />}>
      <ReadState<unknown> query={waiting}>{() => null}</ReadState>
    </Page>
  )
}

const Back = () => {
  const t = useWords()
  return <Link href="/shelf">{t('shelf.lot.back')}</Link>
}

function Shown({ page }: { page: ShelfPage }) {
  const t = useWords()
  const acts = useActs()
  const windowWords = useWindowWords()
  const { shelfLot } = page
  const { lot, window } = shelfLot
  const colour = useBatches().get(lot.batchId)?.batch.colour
  const isGone = lot.count === 0
  return (
    <Page
      title={lot.name}
      windowTitle={t('shelf.lineage.bottlesOf', { name: lot.name })}
      before={<Back />}
      lead={
        isGone
          ? t('shelf.lot.gone')
          : t('shelf.lot.lead', {
              left: lot.count,
              filled: lot.filledCount,
              window: windowWords.long(window),
            })
      }
      actions={
        <>
          <ButtonLink kind="quiet" href={`/labels?lots=${encodeURIComponent(lot.id)}`}>
            {t('shelf.lots.label')}
          </ButtonLink>
          <ActMenu
            lot={lot}
            without={['drawBottle', 'taste']}
            onChoose={(kind) => acts.begin({ kind, lot })}
          />
          <Button onPress={() => acts.begin({ kind: 'taste', lot })}>
            {t('shelf.act.taste.name')}
          </Button>
          {!isGone && (
            <Button kind="primary" onPress={() => acts.begin({ kind: 'drawBottle', lot })}>
              {t('shelf.act.drawBottle.name')}
            </Button>
          )}
        </>
      }
    >
      <LotAnswer page={page} />
      <div className={styles.columns}>
        <WindowSection page={page} colour={colour} />
        <ColourSection page={page} colour={colour} />
      </div>
      <OpenedSection page={page} acts={acts} />
      <TastingsSection page={page} acts={acts} />
      <LineageSection bottleLotId={lot.id} />
      <SiblingsSection page={page} />
      <MovesSection page={page} />
      <ActDialog acts={acts} />
    </Page>
  )
}
