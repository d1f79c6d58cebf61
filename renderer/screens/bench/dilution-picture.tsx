/**
 * Two liquids poured into one, to scale: the measures are equally wide, so heights are volumes, and
 * what contraction takes away is the gap below the dashed line where both together would stand.
 */
import { useWords } from '../../app/words/use-words.ts'
import type { BenchPicture } from '../../../shared/schemas/bench.ts'
import { useMeasuredText } from './use-measured-text.ts'
import styles from './dilution-picture.module.css'

type Dilution = Extract<BenchPicture, { kind: 'dilution' }>

const width = 568
const wide = 92
const tall = 190
const floor = 212
// Words stand centred under each measure, and may be wider than it.
const lefts = { spirit: 34, water: 178, together: 346 }

export function DilutionPicture({ picture }: { picture: Dilution }) {
  const t = useWords()
  const { text } = useMeasuredText()
  const { spiritMl, waterMl, resultMl, contractionMl, spiritPctVol, resultPctVol } = picture
  const bothMl = spiritMl + waterMl
  const perMl = tall / Math.max(bothMl, resultMl)
  const volume = (ml: number) => text(ml, 'volume')
  const swells = contractionMl < 0
  const words = {
    spirit: volume(spiritMl),
    water: volume(waterMl),
    result: volume(resultMl),
    gap: volume(Math.abs(contractionMl)),
  }
  const gapMiddle = floor - ((bothMl + resultMl) / 2) * perMl
  return (
    <svg
      className={styles.picture}
      viewBox={`0 0 ${width} 268`}
      role="img"
      aria-label={t(swells ? 'bench.dilution.labelSwells' : 'bench.dilution.label', words)}
    >
      <Measure left={lefts.spirit} level={spiritMl * perMl} pctVol={spiritPctVol} />
      <Measure left={lefts.water} level={waterMl * perMl} pctVol={0} />
      <Measure left={lefts.together} level={resultMl * perMl} pctVol={resultPctVol} />
      <text className={styles.sign} x={(lefts.spirit + wide + lefts.water) / 2} y={floor - 70}>
        +
      </text>
      <path
        className={styles.arrow}
        d={`M${lefts.water + wide + 20} ${floor - 76}h34m-9 -7l9 7l-9 7`}
      />
      <rect
        className={styles.gap}
        x={lefts.together}
        width={wide}
        y={floor - Math.max(bothMl, resultMl) * perMl}
        height={Math.abs(contractionMl) * perMl}
      />
      <line
        className={styles.both}
        x1={lefts.together - 10}
        x2={lefts.together + wide + 10}
        y1={floor - bothMl * perMl}
        y2={floor - bothMl * perMl}
      />
      <text className={styles.note} x={lefts.together + wide + 14} y={gapMiddle + 4}>
        {t(swells ? 'bench.dilution.gapMore' : 'bench.dilution.gap', words)
          .split(/(?<=:)/)
          .map((line, index) => (
            <tspan key={line} x={lefts.together + wide + 14} dy={index === 0 ? 0 : 19}>
              {line.trim()}
            </tspan>
          ))}
      </text>
      <Caption left={lefts.spirit} top={words.spirit}>
        {`${text(spiritPctVol, 'strength')} ${t('bench.dilution.spirit')}`}
      </Caption>
      <Caption left={lefts.water} top={words.water}>
        {t('bench.dilution.water')}
      </Caption>
      <Caption left={lefts.together} top={words.result}>
        {`${text(resultPctVol, 'strength')} ${t('bench.dilution.together')}`}
      </Caption>
    </svg>
  )
}

/** A straight glass measure; the stronger what is in it, the deeper its tint. */
function Measure({ left, level, pctVol }: { left: number; level: number; pctVol: number }) {
  const tint = Math.round(12 + 0.5 * pctVol)
  const base = pctVol === 0 ? 'var(--glass-line)' : 'var(--strength)'
  const surface = floor - level
  return (
    <g>
      <rect
        x={left}
        y={surface}
        width={wide}
        height={level}
        style={{ fill: `color-mix(in oklab, ${base} ${pctVol === 0 ? 20 : tint}%, transparent)` }}
      />
      <line className={styles.surface} x1={left} x2={left + wide} y1={surface} y2={surface} />
      {[0.25, 0.5, 0.75].map((share) => (
        <line
          key={share}
          className={styles.mark}
          x1={left + wide - 9}
          x2={left + wide}
          y1={floor - share * tall}
          y2={floor - share * tall}
        />
      ))}
      <path
        className={styles.glass}
        d={`M${left} ${floor - tall - 14}V${floor}H${left + wide}V${floor - tall - 14}`}
      />
    </g>
  )
}

function Caption({ left, top, children }: { left: number; top: string; children: string }) {
  return (
    <text className={styles.caption} x={left + wide / 2} y={floor + 24}>
      <tspan className={styles.volume} x={left + wide / 2}>
        {top}
      </tspan>
      <tspan x={left + wide / 2} dy={21}>
        {children}
      </tspan>
    </text>
  )
}
