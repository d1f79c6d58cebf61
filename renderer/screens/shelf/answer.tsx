/** The answer to the shelf's question: how much there is, how it stands, what to drink first. */
import { Fragment } from 'react'
import { Link } from 'wouter'
import { useWords } from '../../app/words/use-words.ts'
import { useSettings } from '../../app/settings.tsx'
import { PhaseMark } from '../../parts/ageing/phase-mark.tsx'
import { Verdict } from '../../../shared/schemas/moves.ts'
import type { ShelfLots } from '../../../shared/schemas/shelf.ts'
import { viewPath } from './views.ts'
import styles from './answer.module.css'
import { numberFormat } from '../../parts/formatters/formatters.ts'

/** More are told on their own view. */
const mostNamed = 3

export function Answer({ shelf: { lots, drinkFirst } }: { shelf: ShelfLots }) {
  const t = useWords()
  const { locale } = useSettings()
  const standing = lots.filter(({ lot }) => lot.count > 0)
  const bottles = standing.reduce((sum, { lot }) => sum + lot.count, 0)
  const phases = Verdict.options
    .map((phase) => ({ phase, count: standing.filter((one) => one.window.phase === phase).length }))
    .filter(({ count }) => count > 0)
  const first = [...new Set(drinkFirst.map(({ bottleLotId }) => bottleLotId))]
  const named = first.slice(0, mostNamed).flatMap((id) => {
    const found = lots.find(({ lot }) => lot.id === id)
    return found ? [found.lot] : []
  })
  const more = first.length - named.length
  const plain = numberFormat(locale)
  return (
    <div className={styles.answer}>
      <p>
        <strong className={styles.stock}>
          {t('shelf.answer.stock', {
            bottles: t('parts.bottles', { count: bottles }).replace(
              String(bottles),
              plain.format(bottles),
            ),
            lots: t('shelf.answer.lots', { count: standing.length }),
          })}
        </strong>
        {phases.map(({ phase, count }) => (
          <span key={phase} className={styles.phase}>
            <PhaseMark phase={phase} />
            {t(`shelf.answer.phases.${phase}`, { count })}
          </span>
        ))}
      </p>
      {named.length > 0 && (
        <p>
          {t('shelf.answer.drinkFirst')}{' '}
          {named.map(({ id, name }, index) => (
            <Fragment key={id}>
              {index > 0 && ', '}
              <Link href={`/shelf/${encodeURIComponent(id)}`}>{name}</Link>
            </Fragment>
          ))}
          {more > 0 && (
            <>
              {' '}
              <Link href={viewPath('first')}>
                {t('shelf.answer.drinkFirstMore', { count: more })}
              </Link>
            </>
          )}
        </p>
      )}
    </div>
  )
}
