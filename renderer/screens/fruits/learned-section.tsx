/** What the maker's own batches say, beside the facts, and which batches those are. */
import { Link } from 'wouter'
import type { FruitPage } from '../../../shared/schemas/fruits.ts'
import { useWords } from '../../app/words/use-words.ts'
import { useBatches } from '../../parts/names/use-names.ts'
import { Section } from '../../parts/page/page.tsx'
import { learnedLines, type LearnedLine } from './learned-lines.ts'
import styles from './learned-section.module.css'
import { useFigureWords } from './use-figure-words.ts'

export function LearnedSection({ page }: { page: FruitPage }) {
  const t = useWords()
  const lines = learnedLines(page.learned)
  return (
    <Section title={t('fruits.learned.title')} term="learned">
      {lines.length === 0 ? (
        <p className={styles.none}>{t('fruits.learned.none')}</p>
      ) : (
        <ul className={styles.lines}>
          {lines.map((line) => (
            <li key={line.quantity}>
              <Line line={line} page={page} />
            </li>
          ))}
        </ul>
      )}
    </Section>
  )
}

function Line({ line, page }: { line: LearnedLine; page: FruitPage }) {
  const t = useWords()
  const words = useFigureWords()
  const { quantity, learned, figure } = line
  const told = (value: number) => words.figure(figure(Math.round(value * 100) / 100))
  // A yield is the trade's whoever keeps the facts; the others are what the facts say.
  const origin = quantity === 'yieldLPerKg' ? 'library' : page.origin
  return (
    <>
      <h3 className={styles.quantity}>{t(`fruits.learned.quantity.${quantity}`)}</h3>
      <p>
        {t('fruits.learned.line', {
          count: learned.batchIds.length,
          own: told(learned.own),
          base: t(`fruits.learned.base.${origin}`),
          library: told(learned.library),
          blended: told(learned.blended),
        })}
      </p>
      <BatchLinks batchIds={learned.batchIds} />
    </>
  )
}

function BatchLinks({ batchIds }: { batchIds: readonly string[] }) {
  const t = useWords()
  const batches = useBatches()
  return (
    <ul className={styles.batches} aria-label={t('fruits.learned.batches')}>
      {batchIds.map((id) => (
        <li key={id}>
          <Link href={`/batches/${encodeURIComponent(id)}`}>
            {batches.get(id)?.batch.name ?? t('parts.batchUnknown')}
          </Link>
        </li>
      ))}
    </ul>
  )
}
