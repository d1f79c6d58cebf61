/** Marrying and mending worked out from what stands in the cellar now; nothing is written. */
import { allJars } from '../../cellar/jar-store.ts'
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import type { Fill, MarryPart } from '../../../shared/schemas/marrying.ts'
import { describeJar, describeLiquid, jarPlace, marry, mend } from '../../engine/index.ts'
import { blendPart, jarNow } from '../blend-parts.ts'
import { costsOfView, free } from '../cellar-costs.ts'
import { lpSolver } from '../lp-solver.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { Session } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

export const marryingHandlers: Handlers<ChannelsOf<'marry'> | ChannelsOf<'mend'>> = {
  'marry.solve': async (session, { parts, wishes, prefer, holds, toJarId }) => {
    const solve = await lpSolver()
    const own = withTarget(session, parts, toJarId).map((part) => blendPart(session, part))
    const married = marry({ parts: own, wishes, prefer, holds, amount: 'most' }, solve)
    return { ...married, ...fillOf(session, toJarId, married.liquid?.volumeMl ?? 0) }
  },
  'mend.solve': async (session, { jarId, wishes, parts }) => {
    const solve = await lpSolver()
    const place = jarPlace(jarId)
    const state = jarNow(session, jarId)
    const before = state && describeLiquid(state.bodies.free)
    if (!before) throw new ServiceError('nothingThere', `there is nothing in ${place}`, { place })
    const jar = blendPart(session, { place })
    const additions = parts.map((part) => blendPart(session, part))
    const mended = mend({ jar, additions, wishes }, solve)
    return {
      before,
      costBefore: costsOfView(session.ledger).places.get(place) ?? free,
      ...mended,
      ...fillOf(session, jarId, mended.liquid?.volumeMl ?? before.volumeMl),
    }
  },
}

/** What stands in the vessel that is poured into takes part with all it has. */
function withTarget(session: Session, parts: MarryPart[], toJarId: string | undefined) {
  if (toJarId === undefined || !jarNow(session, toJarId)) return parts
  const place = jarPlace(toJarId)
  const { matter } = blendPart(session, { place })
  const least = describeLiquid(matter)?.volumeMl
  if (least === undefined) return parts
  return [{ place, least }, ...parts.filter((part) => part.place !== place)]
}

function fillOf(session: Session, jarId: string | undefined, liquidMl: number): { fill?: Fill } {
  if (jarId === undefined) return {}
  const jar = allJars(session.book).find(({ id }) => id === jarId)
  if (!jar) throw notFound('jar', jarId)
  const state = jarNow(session, jarId)
  const contents = state && describeJar(jarId, state)
  const solidMl = contents ? contents.heldMl + contents.pulpMl + contents.bedMl : 0
  const { capacityMl } = jar
  const safeMl = capacityMl * safeFillFraction
  return { fill: { jarId, fillMl: liquidMl + solidMl, capacityMl, safeMl } }
}
