/** How many tests passed, failed and were skipped, out of what the test programs report. */
import * as z from 'zod'

export interface Count {
  passed: number
  failed: number
  skipped: number
}

export const noCount: Count = { passed: 0, failed: 0, skipped: 0 }

/** A step that is one question: its exit code is the answer. */
export const countOfExit = (exitCode: number): Count =>
  exitCode === 0 ? { ...noCount, passed: 1 } : { ...noCount, failed: 1 }

const VitestReport = z.object({
  numPassedTests: z.number(),
  numFailedTests: z.number(),
  numPendingTests: z.number(),
  numTodoTests: z.number(),
})

export function countOfVitest(report: unknown, exitCode: number): Count {
  const { success, data } = VitestReport.safeParse(report)
  if (!success) return countOfCrash
  const counted = {
    passed: data.numPassedTests,
    failed: data.numFailedTests,
    skipped: data.numPendingTests + data.numTodoTests,
  }
  return withCrash(counted, exitCode)
}

const PlaywrightReport = z.object({
  stats: z.object({
    expected: z.number(),
    unexpected: z.number(),
    flaky: z.number(),
    skipped: z.number(),
  }),
})

export function countOfPlaywright(report: unknown, exitCode: number): Count {
  const { success, data } = PlaywrightReport.safeParse(report)
  if (!success) return countOfCrash
  const { expected, unexpected, flaky, skipped } = data.stats
  return withCrash({ passed: expected, failed: unexpected + flaky, skipped }, exitCode)
}

/** All tests of a listing, none of which was run. */
export function skippedOfPlaywright(report: unknown): Count {
  const listed = JSON.stringify(report ?? {}).match(/"tests":\[/g)?.length ?? 0
  return { ...noCount, skipped: Math.max(1, listed) }
}

const countOfCrash = countOfExit(1)

/** A file that cannot even be loaded has no failed test, and still must not pass. */
const withCrash = (counted: Count, exitCode: number): Count =>
  exitCode !== 0 && counted.failed === 0 ? { ...counted, failed: 1 } : counted

export const sumOf = (counts: readonly Count[]): Count =>
  counts.reduce(
    (sum, { passed, failed, skipped }) => ({
      passed: sum.passed + passed,
      failed: sum.failed + failed,
      skipped: sum.skipped + skipped,
    }),
    noCount,
  )

export const told = ({ passed, failed, skipped }: Count): string =>
  `${passed} passed, ${failed} failed, ${skipped} skipped`
