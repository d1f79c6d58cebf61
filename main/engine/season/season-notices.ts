/** What a maker should know of a plan before reading it: what it lacked, and what it could not do. */
import type { SeasonNotice } from '../../../shared/schemas/season.ts'
import type { Reckoned } from './reckon-season.ts'
import type { SeasonFacts } from './season-facts.ts'
import type { KindAsked } from './season-kinds.ts'

export function seasonNotices(
  facts: SeasonFacts,
  kinds: readonly KindAsked[],
  reckoned: Reckoned,
  kindNotices: readonly SeasonNotice[],
): SeasonNotice[] {
  const { totals, solved, asked, purchases } = reckoned
  const { mustSettle } = asked.question
  const isAnyPrice = purchases.some(({ priceMinor }) => priceMinor !== undefined)
  return [
    ...code('noJars', facts.jars.length === 0),
    ...code('noHistory', !facts.stocks.some(({ isOwnHistory }) => isOwnHistory)),
    ...code(
      'nothingWanted',
      kinds.every(({ demand }) => demand.wantedMl === 0),
    ),
    ...code('noPrices', purchases.length > 0 && !isAnyPrice),
    ...code('somePricesMissing', isAnyPrice && !totals.isWholeMoney),
    ...code('timeUp', !solved.isProven),
    ...solved.settled.flatMap(({ homelessMl }, index): SeasonNotice[] => {
      const batchId = mustSettle[index]?.batchId
      return homelessMl > 1 && batchId ? [{ code: 'standingWithoutJar', batchId }] : []
    }),
    ...kindNotices,
    ...[...asked.tooLittle].map((kindId): SeasonNotice => ({ code: 'tooLittleForAnyJar', kindId })),
  ]
}

const code = (one: SeasonNotice['code'], isSo: boolean): SeasonNotice[] =>
  isSo ? [{ code: one }] : []
