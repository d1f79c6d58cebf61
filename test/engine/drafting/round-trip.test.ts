import { describe, expect, it } from 'vitest'
import { outcomeOf, solveDraft } from '../../../main/engine/index.ts'
import { facts, plainDraft, seededDraft } from './seeded-drafts.ts'

describe('solveDraft', () => {
  it('returns the target within 0.05 % vol and 0.5 g/L over 500 seeded drafts', () => {
    const misses: string[] = []
    let strengthMiss = 0
    let sugarMiss = 0
    for (let seed = 1; seed <= 500; seed += 1) {
      const { begun, turned } = seededDraft(seed)
      const target = outcomeOf(turned, facts)
      if (!target.finished) throw new Error(`seed ${seed} gives no liqueur`)
      const { strengthPctVol, sugarGPerL } = target.finished
      const volumeMl = target.bottledMl + target.remainderMl
      const wishes = { volumeMl, strengthPctVol, sugarGPerL }
      const solved = solveDraft({ spec: begun, pins: [], wishes }, facts)
      // Forward again, from nothing but the numbers found.
      const again = outcomeOf(solved.spec, facts)
      const strengthOff = Math.abs((again.finished?.strengthPctVol ?? 0) - strengthPctVol)
      const sugarOff = Math.abs((again.finished?.sugarGPerL ?? 0) - sugarGPerL)
      const volumeOff = Math.abs(again.bottledMl + again.remainderMl - volumeMl) / volumeMl
      strengthMiss = Math.max(strengthMiss, strengthOff)
      sugarMiss = Math.max(sugarMiss, sugarOff)
      if (strengthOff > 0.05 || sugarOff > 0.5 || volumeOff > 0.001 || solved.unmet.length > 0)
        misses.push(
          `seed ${seed} ${begun.fruits[0]?.fruitId}: ${strengthOff} ${sugarOff} ${volumeOff} ${JSON.stringify(solved.unmet)}`,
        )
    }
    expect(misses).toEqual([])
    expect(strengthMiss).toBeLessThan(0.05)
    expect(sugarMiss).toBeLessThan(0.5)
  })

  it('gives the same numbers for the same wishes, and changes nothing it was given', () => {
    const spec = Object.freeze(plainDraft('sour_cherry'))
    const wishes = Object.freeze({ bottles: 10, strengthPctVol: 30, sugarGPerL: 220 })
    const once = solveDraft({ spec, pins: [], wishes }, facts)
    const twice = solveDraft({ spec, pins: [], wishes }, facts)
    expect(twice).toEqual(once)
    expect(once.outcome.bottles).toBe(10)
  })
})
