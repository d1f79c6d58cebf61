/** The places a maker names as parts of a blend, as the engine takes them: matter, limits, cost. */
import { addMatter } from '../../shared/matter.ts'
import type { Cost, MarryPart } from '../../shared/schemas/marrying.ts'
import {
  acidPart,
  acidPlace,
  jarPlace,
  matterInBottles,
  settledJar,
  tapPlace,
  waterPart,
  type BlendPart,
  type JarState,
} from '../engine/index.ts'
import { costsOfView, free } from './cellar-costs.ts'
import { nowMs } from './handlers/handler.ts'
import { notFound, ServiceError } from './service-error.ts'
import type { Session } from './session.ts'

export function blendPart(session: Session, part: MarryPart): BlendPart {
  const { place, ...limits } = part
  if (place === tapPlace) return waterPart(limits)
  if (place === acidPlace) return acidPart(limits)
  const [kind, id = ''] = place.split(':')
  switch (kind) {
    case 'jar':
      return jarPart(session, part, id)
    case 'lot':
      return lotPart(session, part, id)
    case 'bottles':
      return bottlePart(session, part, id)
    default:
      throw notFound('place', place)
  }
}

/** The jar as it stands now. */
export function jarNow(session: Session, jarId: string): JarState | undefined {
  const jar = session.ledger.folded.cellar.jars.get(jarId)
  return jar && settledJar(jar, Math.max(nowMs(session), jar.atMs))
}

/**
 * All that is mended or married in a jar: its liquid with the sugar at the bottom, which will
 * dissolve in it. Beside fruit the sugar is the fruit's as much, and is left out.
 */
export function standingPart(session: Session, jarId: string): BlendPart {
  const place = jarPlace(jarId)
  const part = jarPart(session, { place }, jarId)
  const jar = jarNow(session, jarId)
  if (!jar || jar.fruit) return part
  const matter = addMatter(jar.bodies.free, jar.bodies.bed)
  return { ...part, matter, cost: costOf(session, place, 1) }
}

/** The liquid that pours; what the fruit still holds stays out of it, and so does its cost. */
function jarPart(session: Session, part: MarryPart, jarId: string): BlendPart {
  const jar = jarNow(session, jarId)
  if (!jar) throw new ServiceError('nothingThere', `there is nothing in ${part.place}`, part)
  const { free: matter, held, bed } = jar.bodies
  const paidG = (of: typeof matter) => of.ethanolG + of.waterG + of.sugarG + of.acidG + of.solublesG
  const freeG = paidG(matter)
  const allG = freeG + paidG(held) + paidG(bed)
  const base = { ...part, kind: 'extract', unit: 'ml', matter, isEndless: false } as const
  return { ...base, cost: costOf(session, part.place, allG > 0 ? freeG / allG : 0) }
}

function lotPart(session: Session, part: MarryPart, lotId: string): BlendPart {
  const lot = session.ledger.folded.cellar.lots.get(lotId)
  if (!lot) throw notFound('lot', lotId)
  const { kind } = lot.goods
  if (kind === 'fruit')
    throw new ServiceError('wrongGoods', `${part.place} is fruit, not a part of a blend`, part)
  const unit = kind === 'spirit' ? 'ml' : 'g'
  const base = { ...part, kind, unit, matter: lot.matter, isEndless: false } as const
  return { ...base, cost: costOf(session, part.place, 1) }
}

function bottlePart(session: Session, part: MarryPart, bottleLotId: string): BlendPart {
  const lot = session.ledger.folded.cellar.bottles.get(bottleLotId)
  if (!lot) throw notFound('bottle lot', bottleLotId)
  const base = { ...part, kind: 'extract', unit: 'bottles', isEndless: false } as const
  return {
    ...base,
    matter: matterInBottles(lot),
    count: lot.count,
    cost: costOf(session, part.place, 1),
  }
}

function costOf({ ledger }: Session, place: string, share: number): Cost {
  const { minor, isComplete } = costsOfView(ledger).places.get(place) ?? free
  return { minor: minor * share, isComplete }
}
