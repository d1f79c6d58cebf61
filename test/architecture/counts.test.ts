/** The runner's sums: a step that breaks must never count as passed. */
import { describe, expect, it } from 'vitest'
import {
  countOfExit,
  countOfPlaywright,
  countOfVitest,
  skippedOfPlaywright,
  sumOf,
  told,
} from '../counts.ts'

const vitest = { numPassedTests: 7, numFailedTests: 0, numPendingTests: 2, numTodoTests: 1 }
const playwright = { stats: { expected: 5, unexpected: 0, flaky: 0, skipped: 1 } }

describe('the counts', () => {
  it('take what the reports say', () => {
    expect(countOfVitest(vitest, 0)).toEqual({ passed: 7, failed: 0, skipped: 3 })
    expect(countOfPlaywright(playwright, 0)).toEqual({ passed: 5, failed: 0, skipped: 1 })
  })

  it('have one failure when a report is missing or strange', () => {
    for (const report of [undefined, null, {}, { stats: {} }, []]) {
      expect(countOfVitest(report, 0).failed).toBe(1)
      expect(countOfPlaywright(report, 0).failed).toBe(1)
    }
  })

  it('have one failure when no test failed and the program did', () => {
    expect(countOfVitest(vitest, 1)).toEqual({ passed: 7, failed: 1, skipped: 3 })
    expect(countOfPlaywright(playwright, 1).failed).toBe(1)
    expect(countOfExit(1)).toEqual({ passed: 0, failed: 1, skipped: 0 })
  })

  it('call a test that passed at the second try failed', () => {
    const stats = { expected: 4, unexpected: 0, flaky: 1, skipped: 0 }
    expect(countOfPlaywright({ stats }, 0)).toEqual({ passed: 4, failed: 1, skipped: 0 })
  })

  it('skip each listed test, and at least one', () => {
    const listing = { suites: [{ specs: [{ tests: [{}] }, { tests: [{}] }] }] }
    expect(skippedOfPlaywright(listing).skipped).toBe(2)
    expect(skippedOfPlaywright(undefined).skipped).toBe(1)
  })

  it('add up to the closing line', () => {
    expect(told(sumOf([countOfExit(0), countOfVitest(vitest, 0), countOfExit(1)]))).toBe(
      '8 passed, 1 failed, 3 skipped',
    )
  })
})
