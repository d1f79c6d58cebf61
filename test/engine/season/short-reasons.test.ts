import { describe, expect, it } from 'vitest'
import { PlanSketch } from '../../../main/engine/season/plan-sketch.ts'
import { searchLoads } from '../../../main/engine/season/search-loads.ts'
import type { Loading, SeasonQuestion } from '../../../main/engine/season/season-program.ts'
import { shortReasons } from '../../../main/engine/season/short-reasons.ts'
import type { SeasonLimit } from '../../../shared/schemas/season.ts'
import { limited, madeQuestion, type Made } from './season-questions.ts'

const scarce: Made = {
  kinds: 8,
  jars: [
    [2000, 2],
    [3000, 2],
    [4000, 2],
    [10_000, 2],
  ],
  weeks: 52,
  litres: [4, 16],
  seasonWeeks: [3, 8],
  steepWeeks: [2, 10],
}

/** The question without some of its limits; each size of jar has two more. */
function eased(question: SeasonQuestion, limits: readonly SeasonLimit[]): SeasonQuestion {
  const is = (limit: SeasonLimit) => limits.includes(limit)
  return {
    ...question,
    classes: question.classes.map((one, index) =>
      is('jars') ? { ...one, jarIds: [...one.jarIds, `more-${index}`, `still-${index}`] } : one,
    ),
    spirits: question.spirits.map((supply) =>
      is('spirit') ? { ...supply, mayBuy: true } : supply,
    ),
    moneyMinor: is('money') ? undefined : question.moneyMinor,
    shelfBottles: is('shelf') ? undefined : question.shelfBottles,
  }
}

/** Litres of the kind alone that still go into that plan. */
function moreOf(question: SeasonQuestion, loading: Loading, kindIndex: number): number {
  const alone = question.kinds.map((kind, index) =>
    index === kindIndex ? kind : { ...kind, tiers: [], wantedL: 0 },
  )
  const sketch = new PlanSketch({ ...question, kinds: alone }, loading)
  const before = sketch.madeL[kindIndex]!
  sketch.complete()
  return sketch.madeL[kindIndex]! - before
}

describe('shortReasons', () => {
  it('names limits that let more in once all of them are eased, and none that could stay, in 24 limited years', () => {
    const wrong: string[] = []
    const told = new Map<string, number>()
    for (let seed = 1; seed <= 24; seed += 1) {
      const question = limited(seed, madeQuestion(seed, scarce))
      const filled = new PlanSketch(
        question,
        searchLoads(question, { near: 0, enough: 0, isTimeUp: () => true }),
      )
      filled.complete()
      const { loading } = filled
      shortReasons(question, loading).forEach((reasons, kindIndex) => {
        const shortL = question.kinds[kindIndex]!.wantedL - filled.madeL[kindIndex]!
        const who = `year ${seed}, kind ${kindIndex}, ${shortL.toFixed(3)} L short by ${reasons.join()}`
        if (shortL > 1e-3 !== reasons.length > 0) wrong.push(`${who}: short without a reason`)
        for (const reason of reasons) told.set(reason, (told.get(reason) ?? 0) + 1)
        if (reasons.length === 0 || reasons.includes('tooLittle')) return
        if (moreOf(eased(question, reasons), loading, kindIndex) < 1e-4)
          wrong.push(`${who}: no more with all of them eased`)
        for (const kept of reasons) {
          const others = reasons.filter((one) => one !== kept)
          if (moreOf(eased(question, others), loading, kindIndex) > 1e-4)
            wrong.push(`${who}: more although ${kept} stays`)
        }
      })
    }
    expect(wrong).toEqual([])
    for (const reason of ['jars', 'money', 'shelf', 'spirit', 'tooLittle'])
      expect(told.get(reason) ?? 0, reason).toBeGreaterThan(3)
  })
})
