import { describe, expect, it } from 'vitest'
import { matterKinds, matterOf, noMatter, scaleMatter } from '../../../shared/matter.ts'
import { liquidVolumeMl, sugarDraw } from '../../../main/engine/index.ts'
import { sugarDrawChecks } from '../../references/steeping-checks.ts'

/** Held liquid of about 33 % vol, 180 g/L. */
const litre = matterOf({ ethanolG: 264, waterG: 590, sugarG: 184, acidG: 12, solublesG: 15 })
const heldOf = (volumeMl: number) => scaleMatter(litre, volumeMl / liquidVolumeMl(litre))

describe('sugarDraw', () => {
  it('recovers what the worked example of the craft reference does', () => {
    const { heldL, sugarKg, expected, tolerance } = sugarDrawChecks.recovered
    const { recoveredFraction, undissolvedG } = sugarDraw({
      held: heldOf(1000 * heldL),
      sugarG: 1000 * sugarKg,
      draw: 1,
    })
    expect(undissolvedG).toBe(0)
    expect(Math.abs(recoveredFraction - expected)).toBeLessThanOrEqual(tolerance)
  })

  it('neither makes nor loses a gram, and leaves one composition', () => {
    for (const draw of [1, 2, 3, 7]) {
      const held = heldOf(600)
      const { out, left, undissolvedG } = sugarDraw({ held, sugarG: 400, draw })
      for (const kind of matterKinds) {
        const added = kind === 'sugarG' ? 400 - undissolvedG : 0
        expect(out[kind] + left[kind]).toBeCloseTo(held[kind] + added, 9)
      }
      expect(out.ethanolG / out.waterG).toBeCloseTo(left.ethanolG / left.waterG, 9)
      expect(liquidVolumeMl(left) / 600).toBeCloseTo({ 1: 0.55, 2: 0.45 }[draw] ?? 0.4, 9)
    }
  })

  it('does not dissolve sugar that the held spirit cannot', () => {
    const strong = matterOf({ ethanolG: 400, waterG: 100 })
    const { undissolvedG, out, left } = sugarDraw({ held: strong, sugarG: 300, draw: 1 })
    expect(undissolvedG).toBeGreaterThan(200)
    expect(out.sugarG + left.sugarG).toBeCloseTo(300 - undissolvedG, 9)
  })

  it('brings nothing out of dry fruit, and no share of spirit where there is none', () => {
    expect(sugarDraw({ held: noMatter, sugarG: 100, draw: 1 })).toEqual({
      out: noMatter,
      left: noMatter,
      undissolvedG: 100,
      recoveredFraction: 0,
    })
    const juice = matterOf({ waterG: 500, sugarG: 50 })
    expect(sugarDraw({ held: juice, sugarG: 100, draw: 1 }).recoveredFraction).toBe(0)
  })

  it('refuses a draw before the first', () => {
    expect(() => sugarDraw({ held: litre, sugarG: 1, draw: 0 })).toThrow(
      'sugar draw is 0 (count), must be 1 to Infinity (count)',
    )
  })
})
