import { useTranslation } from 'react-i18next'
import { ButtonLink } from '../../parts/button/button.tsx'
import { Page } from '../../parts/page/page.tsx'

export function NotFoundScreen() {
  const { t } = useTranslation()
  return (
    <Page
      title={t('shell.notFound.title')}
      lead={t('shell.notFound.text')}
      actions={<ButtonLink href="/today">{t('shell.notFound.go')}</ButtonLink>}
    />
  )
}
