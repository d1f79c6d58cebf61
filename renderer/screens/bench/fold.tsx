/** Something that is there for those who ask, behind its question. */
import type { ReactNode } from 'react'
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components'
import styles from './fold.module.css'

export function Fold({ title, children }: { title: string; children: ReactNode }) {
  return (
    <Disclosure className={styles['fold'] ?? ''}>
      <Heading level={3} className={styles['heading'] ?? ''}>
        <Button slot="trigger" className={styles['trigger'] ?? ''}>
          <span className={styles['mark']} aria-hidden>
            ›
          </span>
          <span className={styles['title']}>{title}</span>
        </Button>
      </Heading>
      <DisclosurePanel className={styles['panel'] ?? ''}>{children}</DisclosurePanel>
    </Disclosure>
  )
}
