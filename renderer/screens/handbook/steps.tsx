/** A jar's way from fruit to glass, each step with the vessel as it then looks. */
import { useWords } from '../../app/words/use-words.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { Vessel, type VesselProps } from '../../parts/vessel/vessel.tsx'
import { steps, type Step } from './chapters.ts'
import styles from './handbook.module.css'

type Picture = Pick<
  VesselProps,
  'shape' | 'capacityMl' | 'fillMl' | 'liquidMl' | 'pulpMl' | 'bedMl' | 'colour'
>

/** For juicy fruit; common practice, no source. */
const coverPctVol = { low: 50, high: 80 } as const

const red = '#8c1f2f'
const pale = '#d98b7c'
const jar = { shape: 'jar', capacityMl: 3000 } as const
const bottle = { shape: 'bottle', capacityMl: 500 } as const

const pictures: Readonly<Record<Step, Picture>> = {
  layer: { ...jar, fillMl: 1500, liquidMl: 200, pulpMl: 1100, bedMl: 300, colour: pale },
  cover: { ...jar, fillMl: 2700, liquidMl: 1500, pulpMl: 1100, bedMl: 100, colour: pale },
  steep: { ...jar, fillMl: 2700, liquidMl: 1700, pulpMl: 1000, colour: red },
  drawOff: { ...jar, fillMl: 1100, pulpMl: 1000, liquidMl: 100, colour: red },
  sugarDraw: { ...jar, fillMl: 1400, pulpMl: 800, liquidMl: 450, bedMl: 150, colour: red },
  press: { ...jar, fillMl: 350, pulpMl: 340, liquidMl: 10, colour: pale },
  marry: { shape: 'demijohn', capacityMl: 5000, fillMl: 3000, liquidMl: 3000, colour: red },
  filter: { shape: 'flask', capacityMl: 3000, fillMl: 2800, liquidMl: 2800, colour: red },
  bottle: { ...bottle, fillMl: 485, liquidMl: 485, colour: red },
  rest: { ...bottle, fillMl: 280, liquidMl: 280, colour: '#8a3a2a' },
}

export function Steps() {
  const t = useWords()
  const quantities = useQuantities()
  const strengths = {
    low: quantities.text(coverPctVol.low, 'strength'),
    high: quantities.text(coverPctVol.high, 'strength'),
  }
  return (
    <ol className={styles.steps}>
      {steps.map((id) => (
        <li key={id}>
          <Vessel {...pictures[id]} heightPx={92} isDecorative />
          <div>
            <h2>{t(`handbook.step.${id}.name`)}</h2>
            <p>{t(`handbook.step.${id}.text`, strengths)}</p>
            <p className={styles.quiet}>
              {t('handbook.log')} {t(`handbook.step.${id}.log`)}
            </p>
          </div>
        </li>
      ))}
    </ol>
  )
}
