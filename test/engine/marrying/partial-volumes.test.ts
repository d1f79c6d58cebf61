import { describe, expect, it } from 'vitest'
import { liquidVolumeMl } from '../../../main/engine/index.ts'
import { addedVolumeMl, partialVolumes } from '../../../main/engine/marrying/partial-volumes.ts'
import { matterOf } from '../../../shared/matter.ts'

describe('partialVolumes', () => {
  // 2 mol of ethanol in 8 of water: literature has 55.4 and 17.9 mL/mol at 20 °C (from memory).
  it('finds that a gram of ethanol takes 1.2 ml in weak spirit and one of water a little less than 1', () => {
    const growth = partialVolumes(matterOf({ ethanolG: 2 * 46.07, waterG: 8 * 18.015 }))
    expect(growth.ethanolG).toBeGreaterThan(1.18)
    expect(growth.ethanolG).toBeLessThan(1.23)
    expect(growth.waterG).toBeGreaterThan(0.97)
    expect(growth.waterG).toBeLessThan(1.0)
  })

  it('adds up to the volume, to the last digits', () => {
    const amounts = { ethanolG: 316, waterG: 560, sugarG: 200, acidG: 8, solublesG: 12 }
    const matter = matterOf(amounts)
    const volumeMl = liquidVolumeMl(matter)
    expect(addedVolumeMl(matter, partialVolumes(amounts))).toBeCloseTo(volumeMl, 9)
  })

  it.each(['ethanolG', 'waterG', 'sugarG', 'acidG', 'solublesG'] as const)(
    'tells by how much the volume grows with a gram more: %s',
    (kind) => {
      const amounts = { ethanolG: 316, waterG: 560, sugarG: 200, acidG: 8, solublesG: 12 }
      const more = { ...amounts, [kind]: amounts[kind] + 0.5 }
      const less = { ...amounts, [kind]: amounts[kind] - 0.5 }
      const grownMl = liquidVolumeMl(matterOf(more)) - liquidVolumeMl(matterOf(less))
      // Its own step is small: the difference over a whole gram differs by curvature alone.
      expect(Math.abs(partialVolumes(amounts)[kind] - grownMl)).toBeLessThan(1e-3)
    },
  )

  it('knows what a first gram would add of something that is not in it', () => {
    const growth = partialVolumes(matterOf({ ethanolG: 316, waterG: 560 }))
    const withSugar = liquidVolumeMl(matterOf({ ethanolG: 316, waterG: 560, sugarG: 1 }))
    const without = liquidVolumeMl(matterOf({ ethanolG: 316, waterG: 560 }))
    expect(growth.sugarG).toBeCloseTo(withSugar - without, 2)
  })
})
