/** When the fruit is to be had: the year as a strip, in words, and around the Mediterranean. */
import type { FruitPage } from '../../../shared/schemas/fruits.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Section } from '../../parts/page/page.tsx'
import { useNow } from '../../parts/time/use-now.ts'
import styles from './season-section.module.css'
import { SeasonStrip } from './season-strip.tsx'
import { SourceNote } from './source-note.tsx'
import { useSeasonWords } from './use-season-words.ts'

export function SeasonSection({ page: { fruit, sourceMeanings } }: { page: FruitPage }) {
  const t = useWords()
  const words = useSeasonWords()
  const month = useNow().getMonth() + 1
  const { season, mediterraneanShiftWeeks: shift = 0, sources } = fruit
  return (
    <Section title={t('fruits.season.title')}>
      <SeasonStrip season={season} month={month} hasLetters />
      <p className={styles.words}>{words(season)}</p>
      {season && (
        <p className={styles.where}>
          {t('fruits.season.north')}{' '}
          {shift !== 0 &&
            t(shift < 0 ? 'fruits.season.earlier' : 'fruits.season.later', {
              count: Math.abs(shift),
            })}
        </p>
      )}
      <SourceNote code={sources['season']} meanings={sourceMeanings} />
    </Section>
  )
}
