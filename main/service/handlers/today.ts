/** What needs hands now: every batch that is not finished, and what a careful maker should see. */
import { allBatches } from '../../cellar/batch-store.ts'
import { allJars } from '../../cellar/jar-store.ts'
import { settledJar } from '../../engine/index.ts'
import { batchSummary, cautionsOf } from '../describe.ts'
import { nowMs, type ChannelsOf, type Handlers } from './handler.ts'

export const todayHandlers: Handlers<ChannelsOf<'today'>> = {
  'today.list': (session) => {
    const now = nowMs(session)
    const jars = allJars(session.book)
    const { fruits } = session
    const { cellar } = session.ledger.folded
    return {
      batches: allBatches(session.book)
        .map((batch) => batchSummary(session, batch, now))
        .filter(({ stage }) => stage !== 'finished'),
      cautions: [...cellar.jars].flatMap(([id, jar]) =>
        cautionsOf(id, settledJar(jar, Math.max(now, jar.atMs)), { jars, fruits }, now),
      ),
    }
  },
}
