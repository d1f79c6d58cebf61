/** What closes a vessel, drawn on its mouth. */
import { vesselProfiles, type VesselShape } from './vessel-profiles.ts'
import type { VesselDrawing } from './vessel-drawing.ts'
import styles from './vessel.module.css'

export function Closure({ shape, mouth }: { shape: VesselShape; mouth: VesselDrawing['mouth'] }) {
  const { x, y, radius } = mouth
  switch (vesselProfiles[shape].closure) {
    case 'lid': {
      const height = Math.max(2.5, radius * 0.2)
      return (
        <rect
          className={styles.lid}
          x={x - radius * 1.06}
          y={y - height}
          width={radius * 2.12}
          height={height}
          rx={Math.min(2, height / 3)}
        />
      )
    }
    case 'cork': {
      const height = Math.max(2.5, radius * 0.9)
      const top = radius * 1.02
      const path = `M${x - top} ${y - height}H${x + top}L${x + radius * 0.82} ${y}H${x - radius * 0.82}Z`
      return <path className={styles.cork} d={path} />
    }
    case 'stoneLid': {
      const height = Math.max(2.5, radius * 0.12)
      const knob = Math.max(2, radius * 0.14)
      return (
        <g className={styles.stone}>
          <rect x={x - radius * 1.06} y={y - height} width={radius * 2.12} height={height} rx={1} />
          <rect
            x={x - knob}
            y={y - height - knob * 0.9}
            width={knob * 2}
            height={knob}
            rx={knob / 3}
          />
        </g>
      )
    }
  }
}
