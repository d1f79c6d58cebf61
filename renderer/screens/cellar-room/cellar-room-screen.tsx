/** The vessels on their shelf, drawn to one scale with what stands in them, and the pantry. */
import { useWords } from '../../app/words/use-words.ts'
import { useRead } from '../../app/queries.ts'
import { ButtonLink } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Page } from '../../parts/page/page.tsx'
import { JarShelf } from './jar-shelf.tsx'
import { Pantry } from './pantry.tsx'

export function CellarRoomScreen() {
  const t = useWords()
  const jars = useRead('jars.list', {})
  const pantry = useRead('pantry.list', {})
  const inUse = (jars.data ?? []).filter(({ jar }) => !jar.isRetired)
  const empty = inUse.filter(({ contents }) => !contents)
  const lead =
    inUse.length > 0
      ? t('cellarRoom.lead', { count: empty.length, all: inUse.length })
      : t('cellarRoom.leadNone')
  return (
    <Page
      title={t('cellarRoom.title')}
      lead={jars.data && lead}
      actions={
        <>
          <ButtonLink kind="quiet" href="/bring-in/stock">
            {t('sheets.open')}
          </ButtonLink>
          <ButtonLink kind="quiet" href="/moves">
            {t('moves.open')}
          </ButtonLink>
        </>
      }
    >
      <ReadState query={jars}>{(all) => <JarShelf jars={all} />}</ReadState>
      <ReadState query={pantry}>{(lots) => <Pantry lots={lots} />}</ReadState>
    </Page>
  )
}
