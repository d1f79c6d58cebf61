/** Bottles laid down, lot by lot: what each is, how many are left, and taking from them. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useRead } from '../../app/queries.ts'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Empty, Page } from '../../parts/page/page.tsx'
import type { BottleLot } from '../../../shared/schemas/cellar.ts'
import { ShelfTable } from './shelf-table.tsx'
import { TakeDialog, type Taking } from './take-dialog.tsx'

export function ShelfScreen() {
  const t = useWords()
  const bottles = useRead('bottles.list', {})
  const count = (bottles.data ?? []).reduce((sum, lot) => sum + lot.count, 0)
  const isStocked = (bottles.data?.length ?? 0) > 0
  return (
    <Page title={t('shelf.title')} lead={isStocked ? t('shelf.lead', { count }) : undefined}>
      <ReadState query={bottles}>
        {(lots) =>
          lots.length === 0 ? (
            <Empty action={<ButtonLink href="/batches">{t('shelf.toBatches')}</ButtonLink>}>
              {t('shelf.empty')}
            </Empty>
          ) : (
            <Lots lots={lots} />
          )
        }
      </ReadState>
    </Page>
  )
}

function Lots({ lots }: { lots: readonly BottleLot[] }) {
  const t = useWords()
  const [taking, setTaking] = useState<Taking>()
  const [showsGone, setShowsGone] = useState(false)
  const newestFirst = lots.toSorted((a, b) => b.bottledAt.localeCompare(a.bottledAt))
  const shown = newestFirst.filter(({ count }) => count > 0 || showsGone)
  return (
    <>
      <ShelfTable lots={shown} onTake={setTaking} />
      {shown.length < lots.length && (
        <p>
          <Button kind="quiet" onPress={() => setShowsGone(true)}>
            {t('shelf.showGone')}
          </Button>
        </p>
      )}
      <TakeDialog taking={taking} onClose={() => setTaking(undefined)} />
    </>
  )
}
