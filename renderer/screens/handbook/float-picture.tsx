/** Why a hydrometer lies in a sweet liquid: the same float in water, in spirit and in a liqueur. */
import { useWords } from '../../app/words/use-words.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { floats } from './floats.ts'
import styles from './handbook.module.css'

const glass = { width: 96, height: 190, gap: 56, level: 46 } as const
/** Pixels of stem a kg/m³: what a float sinks deeper in a lighter liquid. */
const pixelsPerKg = 0.85

export function FloatPicture() {
  const t = useWords()
  const quantities = useQuantities()
  const { width, height, gap, level } = glass
  return (
    <figure className={styles.figure}>
      <svg
        viewBox={`0 0 ${floats.length * (width + gap)} ${height + 8}`}
        className={styles.floats}
        aria-hidden="true"
      >
        {floats.map(({ id, densityKgPerM3 }, index) => {
          const x = index * (width + gap) + gap / 2
          const sunk = (1000 - densityKgPerM3) * pixelsPerKg
          const top = 8 + sunk
          return (
            <g key={id} transform={`translate(${x} 0)`}>
              <path
                className={styles.glass}
                d={`M0 26 V${height} q0 6 6 6 H${width - 6} q6 0 6 -6 V26`}
              />
              <rect
                className={styles[id]}
                x="2"
                y={level}
                width={width - 4}
                height={height - level + 4}
              />
              <path
                className={styles.float}
                d={`M${width / 2 - 3} ${top} h6 v70 l8 10 v34 q0 8 -11 8 t-11 -8 v-34 l8 -10 z`}
              />
              <path className={styles.surface} d={`M2 ${level} H${width - 2}`} />
            </g>
          )
        })}
      </svg>
      <ul className={styles.under}>
        {floats.map(({ id, strengthPctVol, sugarGPerL, densityKgPerM3 }) => (
          <li key={id}>
            <strong>{t(`handbook.float.${id}`)}</strong>
            {strengthPctVol > 0 && <span>{quantities.text(strengthPctVol, 'strength')}</span>}
            {sugarGPerL > 0 && <span>{quantities.text(sugarGPerL, 'sugar')}</span>}
            <span>{quantities.text(densityKgPerM3, 'density')}</span>
          </li>
        ))}
      </ul>
      <figcaption>
        <strong>{t('handbook.float.title')}.</strong> {t('handbook.float.text')}
      </figcaption>
    </figure>
  )
}
