/** One draft: read from the book, then turned on paper until it is right. */
import { useWords } from '../../app/words/use-words.ts'
import { useRead } from '../../app/queries.ts'
import { ButtonLink } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { Page } from '../../parts/page/page.tsx'
import { DraftEditor } from './draft-editor.tsx'

export function DraftScreen({ draftId }: { draftId: string }) {
  const t = useWords()
  const query = useRead('drafts.page', { draftId })
  if (query.isPending) return <output>{t('parts.loading')}</output>
  if (query.isError)
    return (
      <Page title={t('draft.title')}>
        <FailureNote
          error={query.error}
          action={<ButtonLink href="/draft">{t('draft.editor.back')}</ButtonLink>}
        />
      </Page>
    )
  return <DraftEditor kept={query.data.draft} />
}
