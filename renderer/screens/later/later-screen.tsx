/** A screen that is not made yet: what it will be for, and what to use meanwhile. */
import { useWords } from '../../app/words/use-words.ts'
import { ButtonLink } from '../../parts/button/button.tsx'
import { Page } from '../../parts/page/page.tsx'
import styles from './later-screen.module.css'

export type LaterName = 'season'

export function LaterScreen({ name }: { name: LaterName }) {
  const t = useWords()
  const goesTo = name === 'season' ? 'today' : 'batches'
  return (
    <Page title={t(`shell.screens.${name}`)} lead={t('shell.later.lead')}>
      <div className={styles.text}>
        <p>{t(`shell.later.${name}.what`)}</p>
        <p>{t(`shell.later.${name}.meanwhile`)}</p>
        <ButtonLink href={`/${goesTo}`}>{t(`shell.later.goTo.${goesTo}`)}</ButtonLink>
      </div>
    </Page>
  )
}
