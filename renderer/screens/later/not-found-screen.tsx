import { useWords } from '../../app/words/use-words.ts'
import { ButtonLink } from '../../parts/button/button.tsx'
import { Page } from '../../parts/page/page.tsx'

export function NotFoundScreen() {
  const t = useWords()
  return (
    <Page
      title={t('shell.notFound.title')}
      lead={t('shell.notFound.text')}
      actions={<ButtonLink href="/today">{t('shell.notFound.go')}</ButtonLink>}
    />
  )
}
