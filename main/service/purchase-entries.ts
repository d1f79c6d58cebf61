/** What the kept plan says is to be bought, for the calendar: one entry a week and shop. */
import { readSettings } from '../cellar/setting-store.ts'
import { addDays } from '../engine/index.ts'
import type { CalendarEntry } from '../papers/calendar.ts'
import { paperQuantities } from '../papers/paper-quantities.ts'
import { shoppingWords } from '../papers/purchase-lines.ts'
import { paperWords } from '../papers/words/paper-words.ts'
import { purchaseList } from './purchase-list.ts'
import type { Session } from './session.ts'

/**
 * Named by the plan, the week and the shop: ticking a line off rewrites its entry, the last one
 * cancels it, and another plan kept cancels all and begins anew.
 */
export function purchaseEntries(session: Session): CalendarEntry[] {
  const { planId, lines } = purchaseList(session)
  const settings = readSettings(session.book)
  const q = paperQuantities(settings)
  const words = paperWords(settings)
  const open = lines.filter(({ ticked }) => ticked === undefined)
  // The weeks of a plan begin on a Monday at 0:00 UTC: that day is meant, in any time zone.
  return [...Map.groupBy(open, ({ from, shop }) => `${from.slice(0, 10)}.${shop}`)].flatMap(
    ([weekAndShop, own]) => {
      const [first] = own
      if (!first) return []
      const monday = first.from.slice(0, 10)
      return {
        uid: `buy.${planId}.${weekAndShop}@ratafia`,
        firstDay: monday,
        lastDay: addDays(monday, 6),
        summary: words.purchases.errand(first.shop),
        description: own
          .map((line) => shoppingWords(line, session.fruits.fruitOf, q, words))
          .join('\n'),
      }
    },
  )
}
