/** The frame of a screen: its name, the answer to its question, the one next action, the rest. */
import { useEffect, type ReactNode } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Term } from '../term/term.tsx'
import type { TermId } from '../term/terms.ts'
import styles from './page.module.css'

export interface PageProps {
  title: string
  /** The window's, where the title alone would be that of another screen too. */
  windowTitle?: string
  /** The answer to the screen's question, in a sentence. */
  lead?: ReactNode
  /** The one next action, and at most a quieter one. */
  actions?: ReactNode
  /** Small, before the title, such as a way back. */
  before?: ReactNode
  children?: ReactNode
}

export function Page({ title, windowTitle = title, lead, actions, before, children }: PageProps) {
  const t = useWords()
  useEffect(() => {
    document.title = `${windowTitle} · ${t('shell.name')}`
  }, [windowTitle, t])
  return (
    <div className={styles.page}>
      <header className={styles.header}>
        <div className={styles.heading}>
          {before}
          <h1>{title}</h1>
          {lead !== undefined && <div className={styles.lead}>{lead}</div>}
        </div>
        {actions !== undefined && <div className={styles.actions}>{actions}</div>}
      </header>
      {children}
    </div>
  )
}

export interface SectionProps {
  title: string
  /** Explained beside the title. */
  term?: TermId
  /** To the right of the title. */
  actions?: ReactNode
  children: ReactNode
}

export function Section({ title, term, actions, children }: SectionProps) {
  return (
    <section className={styles.section} aria-label={title}>
      <div className={styles.sectionHead}>
        <div className={styles.sectionTitle}>
          <h2>{title}</h2>
          {term && <Term id={term} />}
        </div>
        {actions}
      </div>
      {children}
    </section>
  )
}

/** Nothing here yet: what that means, and the one thing to do about it. */
export function Empty({ children, action }: { children: ReactNode; action?: ReactNode }) {
  return (
    <div className={styles.empty}>
      <p>{children}</p>
      {action}
    </div>
  )
}
