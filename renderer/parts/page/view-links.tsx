/** The ways to look at one thing, each with a path of its own. */
import styles from './view-links.module.css'

export interface ViewLink {
  /** A screen's path, such as `/season/buy`. */
  path: string
  words: string
  isHere: boolean
}

export const ViewLinks = ({ label, links }: { label: string; links: readonly ViewLink[] }) => (
  <nav className={styles.views} aria-label={label}>
    {links.map(({ path, words, isHere }) => (
      <a key={path} href={`#${path}`} aria-current={isHere ? 'page' : undefined}>
        {words}
      </a>
    ))}
  </nav>
)
