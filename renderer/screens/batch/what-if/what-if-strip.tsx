/** The same batch kept warmer, turned more, cut smaller or drawn off earlier: what would it give? */
import { useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { Turned } from '../../../../shared/schemas/moves.ts'
import type { BatchCurve, WhatIf } from '../../../../shared/schemas/steeping.ts'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { Slider } from '../../../parts/fields/slider.tsx'
import { Toggles } from '../../../parts/fields/toggles.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import { msPerDay } from '../../../../shared/spans-of-time.ts'
import { drawOffRange, withChange, withoutPast, type Part } from './asked.ts'
import { Outcomes } from './outcomes.tsx'
import type { Asking } from './use-what-if.ts'
import styles from './what-if-strip.module.css'

interface WhatIfStripProps {
  asking: Asking
  curve: BatchCurve
  /** How warm it is kept now. */
  keptC: number
  firstDrawAt: string | undefined
  jarName: (jarId: string) => string
}

const asItIs = 'asItIs'
const cuts = ['pricked', 'cut', 'crushed'] as const

export function WhatIfStrip({ asking, curve, keptC, firstDrawAt, jarName }: WhatIfStripProps) {
  const t = useWords()
  const { text } = useQuantities()
  const times = useTimes()
  const { asked, answer, error } = asking
  const steepsOn = curve.series.some(({ points }) => (points.at(-1)?.at ?? '') > curve.now)
  const [since, setSince] = useState<WhatIf['since']>('start')
  const range = drawOffRange(curve, since, steepsOn ? undefined : firstDrawAt)
  const drawOffMs = asked?.drawOffAt === undefined ? range.toMs : Date.parse(asked.drawOffAt)
  const change = (part: Part) => asking.ask(withChange(asked, since, part))
  const asItIsChoice = { value: asItIs, label: t('batch.whatIf.asItIs') } as const
  return (
    <section className={styles.strip} aria-label={t('batch.whatIf.title')}>
      <div className={styles.head}>
        <h3>{t('batch.whatIf.title')}</h3>
        <p className={styles.hint}>{t('batch.whatIf.hint')}</p>
        {asked && (
          <Button kind="quiet" onPress={() => asking.ask(undefined)}>
            {t('batch.whatIf.clear')}
          </Button>
        )}
      </div>
      <div className={styles.controls}>
        <Slider
          label={t('batch.whatIf.temperature')}
          min={0}
          max={40}
          step={1}
          value={asked?.temperatureC ?? keptC}
          onChange={(temperatureC) => change({ temperatureC })}
          words={
            asked?.temperatureC === undefined
              ? `${text(keptC, 'temperature')}, ${t('batch.whatIf.asItIs')}`
              : text(asked.temperatureC, 'temperature')
          }
        />
        <Slider
          label={t('batch.whatIf.drawOff')}
          min={0}
          max={Math.max(1, Math.round((range.toMs - range.fromMs) / msPerDay))}
          step={1}
          value={Math.round((drawOffMs - range.fromMs) / msPerDay)}
          onChange={(day) =>
            change({ drawOffAt: new Date(range.fromMs + day * msPerDay).toISOString() })
          }
          words={
            asked?.drawOffAt === undefined ? t('batch.whatIf.asItIs') : times.day(asked.drawOffAt)
          }
        />
        <Segments
          label={t('batch.whatIf.turned')}
          value={asked?.turned ?? asItIs}
          onChange={(turned) => change({ turned: turned === asItIs ? undefined : turned })}
          choices={[
            asItIsChoice,
            ...Turned.options.map((value) => ({ value, label: t(`batch.whatIf.turns.${value}`) })),
          ]}
        />
        <div>
          <Segments
            label={t('batch.whatIf.cut')}
            value={cuts.find((cut) => cut === asked?.cut) ?? asItIs}
            onChange={(cut) => change({ cut: cut === asItIs ? undefined : cut })}
            choices={[
              asItIsChoice,
              ...cuts.map((value) => ({ value, label: t(`batch.whatIf.cuts.${value}`) })),
            ]}
          />
          <Toggles
            label={t('batch.whatIf.cut')}
            value={asked?.pieceScale === undefined ? [] : ['half']}
            onChange={([half]) => change({ pieceScale: half && 0.5 })}
            choices={[{ value: 'half', label: t('batch.whatIf.halfSize') }]}
          />
        </div>
        {steepsOn && (
          <Segments
            label={t('batch.whatIf.since')}
            value={since}
            onChange={(value) => {
              setSince(value)
              const past = value === 'now' ? withoutPast(asked, curve.now) : {}
              asking.ask(withChange(asked, value, past))
            }}
            choices={(['start', 'now'] as const).map((value) => ({
              value,
              label: t(`batch.whatIf.sinces.${value}`),
            }))}
          />
        )}
      </div>
      <FailureNote error={error} />
      {asked && !answer && !error && <output>{t('batch.whatIf.waiting')}</output>}
      {answer && <Outcomes outcomes={answer.outcomes} jarName={jarName} />}
    </section>
  )
}
