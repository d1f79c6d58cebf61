/** A vessel and what is in it as paths in pixels, from the geometry in millimetres. */
import { vesselGeometry, type VesselGeometry } from './vessel-geometry.ts'
import { vesselLevels, type VesselContents } from './vessel-levels.ts'
import { vesselProfiles, type VesselShape } from './vessel-profiles.ts'

export interface VesselDrawing {
  readonly width: number
  readonly height: number
  readonly outline: string
  readonly bed: string
  readonly fruit: string
  readonly liquid: string
  /** Left and right end, and height, of the liquid's surface; absent when nothing stands in it. */
  readonly surface?: { readonly from: number; readonly to: number; readonly y: number }
  /** Where the safe fill line meets the right-hand wall. */
  readonly tick: { readonly x: number; readonly y: number }
  readonly shine: { readonly x: number; readonly from: number; readonly to: number }
  readonly mouth: { readonly x: number; readonly y: number; readonly radius: number }
  /** Radius at which a piece of fruit is drawn. */
  readonly pieceRadius: number
}

/** Room around the drawing for strokes. */
const edge = 2

/** Lists draw the same few bottles over and over; more than these are not kept. */
const drawn = new Map<string, VesselDrawing>()
const mostKept = 400

export function drawVessel(
  shape: VesselShape,
  capacityMl: number,
  contents: VesselContents,
  mmPerPixel: number,
): VesselDrawing {
  const { fillMl, liquidMl, pulpMl, bedMl } = contents
  const key = [shape, capacityMl, fillMl, liquidMl, pulpMl, bedMl, mmPerPixel].join(' ')
  const known = drawn.get(key)
  if (known) return known
  if (drawn.size >= mostKept) drawn.clear()
  const drawing = newDrawing(shape, capacityMl, contents, mmPerPixel)
  drawn.set(key, drawing)
  return drawing
}

function newDrawing(
  shape: VesselShape,
  capacityMl: number,
  contents: VesselContents,
  mmPerPixel: number,
): VesselDrawing {
  const geometry = vesselGeometry(shape, capacityMl)
  const radius = geometry.maxRadiusMm / mmPerPixel
  const closure = closureHeight(shape, radius)
  const sideRoom = vesselProfiles[shape].closure === 'stoneLid' ? radius * 0.16 : 0
  const width = 2 * (radius + edge + sideRoom)
  const height = geometry.heightMm / mmPerPixel + closure + 2 * edge
  const x = width / 2
  const bottom = height - edge
  const yOf = (heightMm: number) => bottom - heightMm / mmPerPixel
  const region = (fromMm: number, toMm: number) =>
    regionPath(geometry, fromMm, toMm, x, bottom, mmPerPixel)
  const levels = vesselLevels(contents, capacityMl)
  const bedTopMm = geometry.heightOfMm(levels.bedTopMl)
  const liquidTopMm = geometry.heightOfMm(levels.liquidTopMl)
  const surfaceRadius = geometry.radiusAtMm(liquidTopMm) / mmPerPixel
  const tickMm = geometry.heightOfMm(geometry.safeFillMl)
  const shineMm = geometry.heightMm * 0.42
  return {
    width,
    height,
    outline: region(0, geometry.heightMm),
    bed: region(0, bedTopMm),
    fruit: region(bedTopMm, geometry.heightOfMm(levels.fruitTopMl)),
    liquid: region(0, liquidTopMm),
    ...(contents.liquidMl > 0 && {
      surface: { from: x - surfaceRadius, to: x + surfaceRadius, y: yOf(liquidTopMm) },
    }),
    tick: { x: x + geometry.radiusAtMm(tickMm) / mmPerPixel, y: yOf(tickMm) },
    shine: {
      x: x - (geometry.radiusAtMm(shineMm) / mmPerPixel) * 0.74,
      from: yOf(geometry.heightMm * 0.52),
      to: yOf(geometry.heightMm * 0.16),
    },
    mouth: {
      x,
      y: yOf(geometry.heightMm),
      radius: geometry.radiusAtMm(geometry.heightMm) / mmPerPixel,
    },
    pieceRadius: Math.min(7, Math.max(1.7, 8 / mmPerPixel)),
  }
}

/** Room above the brim. */
const closureHeight = (shape: VesselShape, radius: number): number => {
  switch (vesselProfiles[shape].closure) {
    case 'lid':
      return Math.max(3, radius * 0.2)
    case 'cork':
      return Math.max(3, radius * 0.33)
    case 'stoneLid':
      return Math.max(4, radius * 0.28)
  }
}

/** Points up one wall; always as many, so that a level that changes can be moved smoothly. */
const steps = 28

function regionPath(
  geometry: VesselGeometry,
  fromMm: number,
  toMm: number,
  x: number,
  bottom: number,
  mmPerPixel: number,
): string {
  const right: string[] = []
  const left: string[] = []
  const top = Math.max(fromMm, toMm)
  for (let step = 0; step <= steps; step += 1) {
    // Closer together at both ends, where walls turn.
    const share = (1 - Math.cos((Math.PI * step) / steps)) / 2
    const heightMm = fromMm + (top - fromMm) * share
    const radius = geometry.radiusAtMm(heightMm) / mmPerPixel
    const y = round(bottom - heightMm / mmPerPixel)
    right.push(`${round(x + radius)} ${y}`)
    left.unshift(`${round(x - radius)} ${y}`)
  }
  return `M${right.join('L')}L${left.join('L')}Z`
}

const round = (pixels: number) => Math.round(pixels * 100) / 100
