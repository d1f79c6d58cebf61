/** How near the best the plan is known to be, and how long the next search may take. */
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { numberFormat } from '../../../parts/formatters/formatters.ts'
import { classes } from '../../../parts/classes.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { Term } from '../../../parts/term/term.tsx'
import { formatShare } from '../../../parts/quantity/format-share.ts'
import type { SeasonPlan } from '../../../../shared/schemas/season.ts'
import { formatSeconds } from '../format-seconds.ts'
import { longerThan, timeLimits } from './time-limits.ts'
import styles from './plan.module.css'

export interface SurenessProps {
  plan: SeasonPlan
  seconds: number
  onSeconds: (seconds: number) => void
  onMake: ((seconds: number) => void) | undefined
}

export function Sureness({
  plan: { proof, kinds, notices },
  seconds,
  onSeconds,
  onMake,
}: SurenessProps) {
  const t = useWords()
  const { locale } = useSettings()
  if (kinds.length === 0) return null
  const longer = longerThan(seconds)
  const isTimeUp = notices.some(({ code }) => code === 'timeUp')
  const open = isTimeUp ? 'season.notice.timeUp' : 'season.sure.open'
  return (
    <div className={styles.sure}>
      <p className={classes(isTimeUp && styles.notice, isTimeUp ? styles.warning : styles.quiet)}>
        {t(proof.isProven ? 'season.sure.proven' : open, {
          seconds: formatSeconds(proof.seconds, locale),
          gap: shareOfGap(proof.gapShare, locale),
        })}
        <Term id="gap" />{' '}
        {!proof.isProven && onMake && longer !== undefined && (
          <Button
            kind="quiet"
            onPress={() => {
              onSeconds(longer)
              onMake(longer)
            }}
          >
            {t('season.sure.longer')}
          </Button>
        )}
      </p>
      <Segments
        label={t('season.sure.upTo')}
        value={String(seconds)}
        onChange={(chosen) => onSeconds(Number(chosen))}
        choices={timeLimits.map((limit) => ({
          value: String(limit),
          label:
            limit < 60
              ? t('season.sure.seconds', { count: limit })
              : t('season.sure.minutes', { count: limit / 60 }),
        }))}
      />
    </div>
  )
}

/** A gap that is not proved away is never told as none. */
const shareOfGap = (gap: number, locale: string) =>
  gap < 0.005
    ? numberFormat(locale, { style: 'percent', maximumFractionDigits: 1 }).format(
        Math.max(0.001, gap),
      )
    : formatShare(gap, locale)
