/** The way between marrying several and mending one. */
import { useWords } from '../../app/words/use-words.ts'
import styles from './marry-screen.module.css'

const tabs = [
  { name: 'marry', href: '#/marry' },
  { name: 'mend', href: '#/marry/mend' },
] as const

export function Tabs({ here }: { here: (typeof tabs)[number]['name'] }) {
  const t = useWords()
  return (
    <nav className={styles.tabs} aria-label={t('marry.tabs.label')}>
      {tabs.map(({ name, href }) => (
        <a key={name} href={href} aria-current={name === here ? 'page' : undefined}>
          {t(`marry.tabs.${name}`)}
        </a>
      ))}
    </nav>
  )
}
