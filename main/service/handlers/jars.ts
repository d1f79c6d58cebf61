/** The vessels, and what stands in them now. */
import { allJars, putJar } from '../../cellar/jar-store.ts'
import { describeJar, settledJar } from '../../engine/index.ts'
import { notFound, ServiceError } from '../service-error.ts'
import { nowMs, type ChannelsOf, type Handlers } from './handler.ts'

export const jarHandlers: Handlers<ChannelsOf<'jars'>> = {
  'jars.list': (session) =>
    allJars(session.book).map((jar) => {
      const state = session.ledger.folded.cellar.jars.get(jar.id)
      if (!state) return { jar }
      const now = Math.max(nowMs(session), state.atMs)
      return { jar, contents: describeJar(jar.id, settledJar(state, now)) }
    }),
  'jars.add': ({ book }, { jars }) => {
    const known = new Set(allJars(book).map((jar) => jar.id))
    const taken = jars.find((jar) => known.has(jar.id))
    if (taken) throw new ServiceError('alreadyThere', `jar ${taken.id} exists`, { id: taken.id })
    book.transaction(() => jars.forEach((jar) => putJar(book, jar))).immediate()
    return {}
  },
  'jars.change': ({ book, ledger }, jar) => {
    if (!allJars(book).some(({ id }) => id === jar.id)) throw notFound('jar', jar.id)
    if (jar.isRetired && ledger.folded.cellar.jars.has(jar.id))
      throw new ServiceError('stillInUse', `jar ${jar.id} is not empty`, { id: jar.id })
    book.transaction(() => putJar(book, jar)).immediate()
    return jar
  },
}
