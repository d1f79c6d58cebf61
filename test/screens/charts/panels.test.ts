import { describe, expect, it } from 'vitest'
import { curveQuantities } from '../../../renderer/charts/curve-quantities.ts'
import { stackPanels } from '../../../renderer/charts/panels.ts'

describe('stackPanels', () => {
  it('lets no panel reach into the next, and leaves room for each title', () => {
    for (let count = 1; count <= curveQuantities.length; count += 1) {
      const { panels, heightPx } = stackPanels(curveQuantities.slice(0, count))
      let bottom = 0
      for (const panel of panels) {
        expect(panel.topPx - bottom).toBeGreaterThanOrEqual(30)
        bottom = panel.topPx + panel.heightPx
      }
      expect(heightPx).toBeGreaterThanOrEqual(bottom)
    }
  })

  it('gives a single quantity 300 px', () => {
    expect(stackPanels(['acidGPerL']).panels[0]?.heightPx).toBe(300)
  })
})
