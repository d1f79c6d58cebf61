/** The answer to the season's question: what to lay down, what it takes, whether all wishes are met. */
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { listFormat } from '../../parts/formatters/formatters.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import type { SeasonPlan } from '../../../shared/schemas/season.ts'
import { mainLimit } from './main-limit.ts'
import { leastMl } from './rounding.ts'
import styles from './answer.module.css'

export interface AnswerProps {
  plan: SeasonPlan | undefined
  /** Absent while the plan is not kept. */
  keptAt: string | undefined
  isChanged: boolean
  isMaking: boolean
  hasNoJars: boolean
}

export function Answer({ plan, keptAt, isChanged, isMaking, hasNoJars }: AnswerProps) {
  const t = useWords()
  const { text } = useQuantities()
  const times = useTimes()
  const takes = useWhatItTakes()
  if (hasNoJars) return <p>{t('season.answer.noJars')}</p>
  if (!plan) return <p>{t(isMaking ? 'season.answer.making' : 'season.answer.none')}</p>
  const { totals, kinds } = plan
  const wantedMl = kinds.reduce((sum, kind) => sum + kind.wantedMl, 0)
  const codes = new Set(plan.notices.map(({ code }) => code))
  const isNothingWanted = codes.has('nothingWanted')
  const limit = mainLimit(plan)
  const short = text(totals.shortMl, 'volume')
  const status = [
    keptAt === undefined
      ? t('season.answer.notKept')
      : t('season.answer.kept', { day: times.day(keptAt) }),
    ...(isChanged ? [t('season.answer.changed')] : []),
  ]
  return (
    <div className={styles.answer}>
      <p className={styles.main}>
        {isNothingWanted
          ? t(codes.has('noHistory') ? 'season.answer.nothingYet' : 'season.answer.nothingWanted')
          : totals.batches === 0
            ? t('season.answer.nothingFits', { wanted: text(wantedMl, 'volume') })
            : t('season.answer.laidDown', {
                bottles: t('parts.bottles', { count: totals.bottles }),
                volume: text(totals.volumeMl.value, 'volume'),
              })}
      </p>
      {totals.batches > 0 && <p className={styles.rest}>{takes(plan)}</p>}
      <p className={styles.rest}>
        {!isNothingWanted &&
          (totals.shortMl < leastMl ? (
            t('season.answer.allMet')
          ) : (
            <strong className={styles.short}>
              {limit
                ? t('season.answer.shortBy', { volume: short, limit: t(`season.limit.${limit}`) })
                : t('season.answer.short', { volume: short })}
            </strong>
          ))}{' '}
        {status.join('. ').replace(/\.?$/, '.')}
      </p>
    </div>
  )
}

function useWhatItTakes(): (plan: SeasonPlan) => string {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  return ({ totals, notices }) => {
    const { spirits, moneyMinor, isWholeMoney, fruitG } = totals
    const poured = spirits
      .filter(({ volumeMl }) => volumeMl > 0)
      .map(({ strengthPctVol, volumeMl }) =>
        t('season.answer.spirit', {
          volume: text(volumeMl, 'volume'),
          strength: text(strengthPctVol, 'strength'),
        }),
      )
    const hasPrices = !notices.some(({ code }) => code === 'noPrices')
    const money = t(isWholeMoney ? 'season.answer.money' : 'season.answer.moneyAtLeast', {
      money: text(Math.round(moneyMinor), 'money'),
    })
    return t('season.answer.from', {
      fruit: text(fruitG, 'mass'),
      spirit:
        poured.length === 0
          ? t('season.answer.noSpirit')
          : listFormat(locale, { type: 'conjunction' }).format(poured),
      money: hasPrices ? money : '',
    })
  }
}
