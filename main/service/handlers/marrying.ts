/** Marrying and mending worked out from what stands in the cellar now; nothing is written. */
import { allJars } from '../../cellar/jar-store.ts'
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import type { Fill, MarryPart } from '../../../shared/schemas/marrying.ts'
import {
  describeJar,
  describeLiquid,
  jarPlace,
  marry,
  mend,
  type BlendPart,
} from '../../engine/index.ts'
import { blendPart, jarNow, standingPart } from '../blend-parts.ts'
import { lpSolver } from '../lp-solver.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { Session } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

export const marryingHandlers: Handlers<ChannelsOf<'marry'> | ChannelsOf<'mend'>> = {
  'marry.solve': async (session, { parts, wishes, prefer, holds, toJarId }) => {
    const solve = await lpSolver()
    const own = withTarget(session, parts, toJarId)
    const married = marry({ parts: own, wishes, prefer, holds, amount: 'most' }, solve)
    return { ...married, ...fillOf(session, toJarId, married.liquid?.volumeMl ?? 0) }
  },
  'mend.solve': async (session, { jarId, wishes, parts }) => {
    const solve = await lpSolver()
    const place = jarPlace(jarId)
    const jar = jarNow(session, jarId) && standingPart(session, jarId)
    const before = jar && describeLiquid(jar.matter)
    if (!before) throw new ServiceError('nothingThere', `there is nothing in ${place}`, { place })
    const additions = parts.map((part) => blendPart(session, part))
    const mended = mend({ jar, additions, wishes }, solve)
    return {
      before,
      costBefore: jar.cost,
      ...mended,
      ...fillOf(session, jarId, mended.liquid?.volumeMl ?? before.volumeMl),
    }
  },
}

/** What stands in the vessel that is poured into takes part with all it has. */
function withTarget(
  session: Session,
  parts: readonly MarryPart[],
  toJarId: string | undefined,
): BlendPart[] {
  const place = toJarId && jarPlace(toJarId)
  const others = parts.filter((part) => part.place !== place)
  const own = others.map((part) => blendPart(session, part))
  const standing =
    toJarId !== undefined && jarNow(session, toJarId) && standingPart(session, toJarId)
  const least = standing && describeLiquid(standing.matter)?.volumeMl
  return standing && least ? [{ ...standing, least }, ...own] : own
}

function fillOf(session: Session, jarId: string | undefined, liquidMl: number): { fill?: Fill } {
  if (jarId === undefined) return {}
  const jar = allJars(session.book).find(({ id }) => id === jarId)
  if (!jar) throw notFound('jar', jarId)
  const state = jarNow(session, jarId)
  const contents = state && describeJar(jarId, state)
  // Sugar at the bottom counts as liquid already, where there is no fruit.
  const bedMl = state?.fruit && contents ? contents.bedMl : 0
  const solidMl = contents ? contents.heldMl + contents.pulpMl + bedMl : 0
  const { capacityMl } = jar
  const safeMl = capacityMl * safeFillFraction
  return { fill: { jarId, fillMl: liquidMl + solidMl, capacityMl, safeMl } }
}
