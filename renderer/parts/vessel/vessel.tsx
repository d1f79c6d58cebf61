/**
 * The emblem: a vessel drawn to scale with what the ledger knows is in it. Use one `mmPerPixel`
 * for all vessels that stand together, so that their sizes compare.
 */
import { memo, useId } from 'react'
import { classes } from '../classes.ts'
import { Closure } from './closure.tsx'
import { useVesselWords } from './use-vessel-words.ts'
import { drawVessel } from './vessel-drawing.ts'
import { vesselGeometry } from './vessel-geometry.ts'
import type { VesselContents } from './vessel-levels.ts'
import type { VesselShape } from './vessel-profiles.ts'
import styles from './vessel.module.css'

/** Millimetres a pixel for each place where vessels stand: a litre jar is 26, 60 or 110 px high. */
export const vesselScale = { list: 6, shelf: 2.6, page: 1.4 } as const

export interface VesselProps extends Partial<VesselContents> {
  shape: VesselShape
  capacityMl: number
  /** `#rrggbb` of the batch; left out, the vessel is drawn empty. */
  colour?: string | undefined
  mmPerPixel?: number
  /** Draws to this height instead of to scale, for a vessel that stands alone. */
  heightPx?: number
  /** Said instead of the drawing's own description. */
  label?: string
  /** True when the same is said in words beside it. */
  isDecorative?: boolean
}

export const Vessel = memo(function Vessel({
  shape,
  capacityMl,
  fillMl = 0,
  liquidMl = 0,
  pulpMl = 0,
  bedMl = 0,
  colour,
  mmPerPixel = vesselScale.list,
  heightPx,
  label,
  isDecorative = false,
}: VesselProps) {
  const patternId = useId()
  const contents = { fillMl, liquidMl, pulpMl, bedMl }
  const words = useVesselWords()
  const scale =
    heightPx === undefined
      ? mmPerPixel
      : vesselGeometry(shape, capacityMl).heightMm / Math.max(8, heightPx * 0.88 - 6)
  const drawing = drawVessel(shape, capacityMl, contents, scale)
  const { pieceRadius: piece, surface, tick, shine } = drawing
  const said = isDecorative
    ? { 'aria-hidden': true }
    : { role: 'img', 'aria-label': label ?? words({ shape, capacityMl, ...contents }) }
  const column = piece * 2.2
  const row = piece * 1.9
  return (
    <svg
      {...said}
      className={styles.vessel}
      width={drawing.width}
      height={drawing.height}
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      style={colour === undefined ? undefined : { '--liquid': colour }}
    >
      <path className={styles.glass} d={drawing.outline} />
      {colour !== undefined && (
        <>
          <path className={styles.liquid} d={drawing.liquid} />
          {pulpMl > 0 && (
            <>
              <pattern
                id={patternId}
                width={column}
                height={row * 2}
                patternUnits="userSpaceOnUse"
                className={styles.pieces}
              >
                <circle cx={column / 2} cy={row / 2} r={piece * 0.94} />
                <circle cx={0} cy={row * 1.5} r={piece} />
                <circle cx={column} cy={row * 1.5} r={piece} />
              </pattern>
              <path d={drawing.fruit} fill={`url(#${patternId})`} />
            </>
          )}
          {bedMl > 0 && <path className={styles.bed} d={drawing.bed} />}
          {surface && (
            <line
              className={styles.surface}
              x1={surface.from}
              x2={surface.to}
              y1={surface.y}
              y2={surface.y}
            />
          )}
        </>
      )}
      <line className={styles.shine} x1={shine.x} x2={shine.x} y1={shine.from} y2={shine.to} />
      <path
        className={classes(styles.wall, shape === 'crock' && styles.stoneWall)}
        d={drawing.outline}
      />
      <line className={styles.tick} x1={tick.x - 5} x2={tick.x} y1={tick.y} y2={tick.y} />
      <Closure shape={shape} mouth={drawing.mouth} />
    </svg>
  )
})
