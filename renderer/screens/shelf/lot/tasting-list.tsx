/** The tastings in words, the newest first: when, from which glass, the verdict, the scores. */
import { useWords } from '../../../app/words/use-words.ts'
import { useSettings } from '../../../app/settings.tsx'
import { PhaseWord } from '../../../parts/ageing/phase-word.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import { TasteAxis, type MoveOf } from '../../../../shared/schemas/moves.ts'
import type { ShelfPage } from '../../../../shared/schemas/shelf.ts'
import styles from './lot.module.css'
import { numberFormat } from '../../../parts/formatters/formatters.ts'

export function TastingList({ page: { tastings } }: { page: ShelfPage }) {
  const t = useWords()
  const times = useTimes()
  const newestFirst = tastings
    .flatMap(({ id, move }) => (move.kind === 'taste' ? [{ id, move }] : []))
    .toSorted((a, b) => b.move.at.localeCompare(a.move.at))
  if (newestFirst.length === 0) return null
  return (
    <ul className={styles.tastings} aria-label={t('shelf.lot.tastings')}>
      {newestFirst.map(({ id, move }) => (
        <li key={id} className={styles.tasting}>
          <time dateTime={move.at}>{times.day(move.at)}</time>
          <div>
            <p className={styles.tastingHead}>
              {move.verdict && <PhaseWord phase={move.verdict} />}
              {move.jarId !== undefined && (
                <span className={styles.quiet}>{t('shelf.lot.ofJar')}</span>
              )}
              {move.glass && (
                <span className={styles.quiet}>{t('shelf.lot.glass', { glass: move.glass })}</span>
              )}
            </p>
            {move.note && <p className={styles.note}>{move.note}</p>}
            <Scores move={move} />
          </div>
        </li>
      ))}
    </ul>
  )
}

function Scores({ move: { scores } }: { move: MoveOf<'taste'> }) {
  const t = useWords()
  const { locale } = useSettings()
  const plain = numberFormat(locale, { maximumFractionDigits: 1 })
  const given = TasteAxis.options.flatMap((axis) => {
    const score = scores[axis]
    return score === undefined ? [] : [{ axis, score }]
  })
  if (given.length === 0) return null
  return (
    <ul className={styles.scores}>
      {given.map(({ axis, score }) => (
        <li key={axis}>
          {t(`shelf.axis.${axis}`)} <strong>{plain.format(score)}</strong>
        </li>
      ))}
    </ul>
  )
}
