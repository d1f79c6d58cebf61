/** The lot's window as a bar, and why it is as it is. */
import { useWords } from '../../../app/words/use-words.ts'
import { AgeingBarAlone } from '../../../charts/ageing-bar-alone.tsx'
import { AgeingKey } from '../../../charts/ageing-key.tsx'
import { Section } from '../../../parts/page/page.tsx'
import type { ShelfPage } from '../../../../shared/schemas/shelf.ts'
import styles from './lot.module.css'

interface WindowSectionProps {
  page: ShelfPage
  colour: string | undefined
}

export function WindowSection({ page: { shelfLot }, colour }: WindowSectionProps) {
  const t = useWords()
  const { because } = shelfLot.window
  return (
    <Section title={t('shelf.lot.window')} term="window">
      <AgeingBarAlone shelfLot={shelfLot} colour={colour} />
      <AgeingKey />
      {because.length === 0 ? (
        <p>{t('shelf.lot.usual')}</p>
      ) : (
        <div>
          <p>{t('shelf.lot.because')}</p>
          <ul className={styles.reasons}>
            {because.map((reason) => (
              <li key={reason}>{t(`shelf.because.${reason}`)}</li>
            ))}
          </ul>
        </div>
      )}
    </Section>
  )
}
