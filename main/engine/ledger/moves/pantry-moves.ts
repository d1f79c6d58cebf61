/** Buying, and what goes from the pantry into a jar: fruit, sugar, acid, spirit, and water from the tap. */
import {
  addMatter,
  mapMatter,
  massOf,
  matterOf,
  scaleMatter,
  splitMatter,
  subtractMatter,
  type Matter,
} from '../../../../shared/matter.ts'
import type { FruitTissue } from '../../../../shared/schemas/fruits.ts'
import type { Goods } from '../../../../shared/schemas/goods.ts'
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import { densityOfSpirit } from '../../alcoholometry/density-of-spirit.ts'
import { massFractionOfStrength } from '../../alcoholometry/strength.ts'
import { densityOfWater } from '../../solution/density-of-water.ts'
import { liquidVolumeMl } from '../../solution/liquid-volume.ts'
import { matterOfGoods } from '../../fruit/fruit-library.ts'
import { fruitTissue } from '../../fruit/fruit-tissue.ts'
import { addFruit, coveredAgain, killed, tissueOf } from '../fruit-charge.ts'
import { jarPlace, lotPlace, type CellarState, type LotState } from '../cellar-state.ts'
import {
  allowed,
  nothingThere,
  notEnough,
  refused,
  shareOf,
  slackG,
  slackMl,
  type Outcome,
  type Refused,
} from '../refusal.ts'
import type { MoveContext, Tuning } from './context.ts'
import { freeVolumeMl } from '../jar-liquid.ts'
import { hasSpirit, heldVolumeMl, occupiedJar, pourInto, receivingJar } from './jar-access.ts'

export function buy(cellar: CellarState, move: MoveOf<'buy'>, { atMs }: MoveContext): Outcome {
  const place = lotPlace(move.lotId)
  if (cellar.lots.has(move.lotId)) return refused({ code: 'alreadyThere', place })
  const bought = matterBought(move)
  if (!bought) return refused({ code: 'wrongGoods', place })
  const { goods, priceMinor } = move
  const lot: LotState = { goods, boughtAtMs: atMs, bought, matter: bought, priceMinor }
  return allowed({
    lots: new Map([[move.lotId, lot]]),
    transfers: [{ from: 'outside:supplier', to: place, matter: bought }],
  })
}

/** The grams in a purchase; undefined when it lacks what its goods are measured by. */
function matterBought({ goods, massG, volumeMl }: MoveOf<'buy'>): Matter | undefined {
  if (goods.kind === 'spirit')
    return volumeMl === undefined ? undefined : spiritMatter(volumeMl, goods.strengthPctVol)
  if (massG === undefined) return undefined
  if (goods.kind === 'acid') return acidMatter(massG)
  if (!goods.composition) return undefined
  const { edible, inertG } = matterOfGoods(goods.composition, massG)
  return { ...edible, pulpG: edible.pulpG + inertG }
}

function spiritMatter(volumeMl: number, strengthPctVol: number): Matter {
  const massFraction = massFractionOfStrength(strengthPctVol)
  const massG = (volumeMl * densityOfSpirit({ massFraction, temperatureC: 20 })) / 1000
  const ethanolG = massG * massFraction
  return matterOf({ ethanolG, waterG: massG - ethanolG })
}

/**
 * Citric acid powder is taken as anhydrous: every gram is acid. The monohydrate, which is sold under
 * the same name, holds 8.6 % of water of crystallisation, so its maker has that much less acid.
 */
const acidMatter = (massG: number): Matter => matterOf({ acidG: massG })

export function charge(
  cellar: CellarState,
  move: MoveOf<'charge'>,
  { atMs, fruitOf, tuning }: MoveContext,
): Outcome {
  const taken = takeFromLot(cellar, move.lotId, 'fruit', move.massG)
  if (!taken.ok) return taken
  const { lot, part } = taken.found
  const { goods } = lot
  if (goods.kind !== 'fruit' || !goods.composition)
    return refused({ code: 'wrongGoods', place: lotPlace(move.lotId) })
  const refuseG = move.refuseG ?? 0
  if (refuseG > move.massG - slackG)
    return notEnough(lotPlace(move.lotId), 'g', refuseG, move.massG, 0)
  const jar = receivingJar(cellar, move.jarId, move.batchId, atMs, 'layered')
  if (!jar.ok) return jar

  // Refuse is stones, stalks and cores first, flesh only once those are out.
  const { edible, inertG } = matterOfGoods(goods.composition, move.massG)
  const edibleG = move.massG - inertG
  const fleshG = Math.max(0, refuseG - inertG)
  const refuse = {
    ...scaleMatter(edible, fleshG / edibleG),
    pulpG: Math.min(refuseG, inertG) + (edible.pulpG * fleshG) / edibleG,
  }
  const charged = subtractMatter(part, refuse)
  const isDrowned = hasSpirit(jar.found)
  const facts = move.tissue ?? fruitTissue(fruitOf(goods.fruitId))
  const tissue = tissueOf(
    {
      facts: tuning ? tunedFacts(facts, tuning) : facts,
      cut: move.cut,
      pieceScale: tuning?.pieceScale ?? 1,
      pieceMm: move.pieceMm,
      edibleG: edibleG - fleshG,
    },
    charged.waterG,
  )
  const fruit = addFruit(jar.found.fruit, isDrowned ? killed(tissue) : tissue, {
    fruitId: goods.fruitId,
    massG: move.massG - refuseG,
  })
  const { free, held, bed } = jar.found.bodies
  const stage = isDrowned ? 'steeping' : 'layered'
  return allowed({
    jars: new Map([
      [
        move.jarId,
        {
          ...jar.found,
          fruit,
          stage,
          bodies: { free, held: addMatter(held, juicier(charged, tuning)), bed },
          colourFraction:
            (jar.found.colourFraction * (jar.found.fruit?.edibleG ?? 0)) / fruit.edibleG,
        },
      ],
    ]),
    lots: new Map([[move.lotId, taken.found.left]]),
    transfers: [
      { from: lotPlace(move.lotId), to: jarPlace(move.jarId), matter: charged },
      ...(massOf(refuse) > 0
        ? [{ from: lotPlace(move.lotId), to: 'outside:waste', matter: refuse }]
        : []),
    ],
    stage,
  })
}

const tunedFacts = (facts: FruitTissue, { pace, hold }: Tuning): FruitTissue => ({
  ...facts,
  pace: pace * (facts.pace ?? 1),
  drainedLPerKg: hold * facts.drainedLPerKg,
  pressedLPerKg: hold * facts.pressedLPerKg,
})

/** The same fruit with more or less juice of the same composition. */
const juicier = (charged: Matter, tuning: Tuning | undefined): Matter =>
  tuning
    ? mapMatter(charged, (g, kind) => (kind === 'pulpG' ? g : (1 + tuning.juice) * g))
    : charged

export function sugar(
  cellar: CellarState,
  move: MoveOf<'sugar'> | MoveOf<'coverWithSugar'>,
  { atMs }: MoveContext,
): Outcome {
  const taken = takeFromLot(cellar, move.lotId, 'sweetener', move.massG)
  if (!taken.ok) return taken
  const jar = receivingJar(cellar, move.jarId, move.batchId, atMs, 'layered')
  if (!jar.ok) return jar
  const { part, lot } = taken.found
  // Crystals lie at the bottom until they dissolve; honey is liquid already.
  const isCrystal = lot.goods.kind === 'sweetener' && lot.goods.sweetenerId === 'sugar'
  const { free, held, bed } = jar.found.bodies
  const sweetened = {
    ...jar.found,
    bodies: isCrystal
      ? { free, held, bed: addMatter(bed, part) }
      : { free: addMatter(free, part), held, bed },
  }
  return allowed({
    jars: new Map([[move.jarId, sweetened]]),
    lots: new Map([[move.lotId, taken.found.left]]),
    transfers: [{ from: lotPlace(move.lotId), to: jarPlace(move.jarId), matter: part }],
    stage: jar.found.stage,
  })
}

/** Spent fruit under sugar: it shrinks, and gives up part of what it held. */
export function coverWithSugar(
  cellar: CellarState,
  move: MoveOf<'coverWithSugar'>,
  context: MoveContext,
): Outcome {
  const outcome = sugar(cellar, move, context)
  if (!outcome.ok) return outcome
  const jar = outcome.effect.jars?.get(move.jarId)
  if (!jar?.fruit) return refused({ code: 'noFruit', place: jarPlace(move.jarId) })
  if (jar.fruit.cells === 'living') return outcome
  const fruit = coveredAgain(jar.fruit, heldVolumeMl(jar))
  const stage = 'sugarDraw'
  return allowed({
    ...outcome.effect,
    jars: new Map([[move.jarId, { ...jar, fruit, stage }]]),
    stage,
  })
}

/** Powder stirred into the liquid that pours: with none there, nothing could dissolve it. */
export function addAcid(
  cellar: CellarState,
  move: MoveOf<'addAcid'>,
  { atMs }: MoveContext,
): Outcome {
  const taken = takeFromLot(cellar, move.lotId, 'acid', move.massG)
  if (!taken.ok) return taken
  const jar = occupiedJar(cellar, move.jarId, move.batchId, atMs)
  if (!jar.ok) return jar
  if (freeVolumeMl(jar.found) < slackMl) return nothingThere(jarPlace(move.jarId))
  const { part, left } = taken.found
  return allowed({
    jars: new Map([[move.jarId, pourInto(jar.found, part)]]),
    lots: new Map([[move.lotId, left]]),
    transfers: [{ from: lotPlace(move.lotId), to: jarPlace(move.jarId), matter: part }],
    stage: jar.found.stage,
  })
}

export function pourSpirit(
  cellar: CellarState,
  move: MoveOf<'pourSpirit'>,
  { atMs }: MoveContext,
): Outcome {
  const lot = cellar.lots.get(move.lotId)
  const lotName = lotPlace(move.lotId)
  if (!lot) return refused({ code: 'unknownPlace', place: lotName })
  if (lot.goods.kind !== 'spirit') return refused({ code: 'wrongGoods', place: lotName })
  const { strengthPctVol } = lot.goods
  const askedMl = volumeAt20Ml(move.volumeMl, strengthPctVol, move.temperatureC ?? 20)
  const availableMl = liquidVolumeMl(lot.matter)
  if (availableMl < slackMl) return nothingThere(lotName)
  const share = shareOf(askedMl, availableMl, slackMl)
  if (share === undefined) return notEnough(lotName, 'ml', move.volumeMl, availableMl)
  const jar = receivingJar(cellar, move.jarId, move.batchId, atMs, 'layered')
  if (!jar.ok) return jar
  const { part, rest } = splitMatter(lot.matter, share)
  const poured = pourInto(jar.found, part)
  const stage = poured.fruit ? 'steeping' : jar.found.stage
  return allowed({
    jars: new Map([
      [
        move.jarId,
        {
          ...poured,
          stage,
          fruit: poured.fruit && { ...poured.fruit, isUnderSugar: false },
          strongestPctVol: Math.max(poured.strongestPctVol, strengthPctVol),
        },
      ],
    ]),
    lots: new Map([[move.lotId, { ...lot, matter: rest }]]),
    transfers: [{ from: lotName, to: jarPlace(move.jarId), matter: part }],
    stage,
  })
}

/** The volume at 20 °C of spirit measured warmer or colder. */
function volumeAt20Ml(volumeMl: number, strengthPctVol: number, temperatureC: number): number {
  if (temperatureC === 20) return volumeMl
  const massFraction = massFractionOfStrength(strengthPctVol)
  return (
    (volumeMl * densityOfSpirit({ massFraction, temperatureC })) /
    densityOfSpirit({ massFraction, temperatureC: 20 })
  )
}

export function pourWater(
  cellar: CellarState,
  move: MoveOf<'pourWater'>,
  { atMs }: MoveContext,
): Outcome {
  const jar = receivingJar(cellar, move.jarId, move.batchId, atMs, 'layered')
  if (!jar.ok) return jar
  const waterG = (move.volumeMl * densityOfWater(move.temperatureC ?? 20)) / 1000
  const matter = matterOf({ waterG })
  return allowed({
    jars: new Map([[move.jarId, pourInto(jar.found, matter)]]),
    transfers: [{ from: 'outside:tap', to: jarPlace(move.jarId), matter }],
    stage: jar.found.stage,
  })
}

type Taken = { ok: true; found: { lot: LotState; part: Matter; left: LotState } } | Refused

/** Takes a mass out of a pantry lot of the right kind. */
function takeFromLot(
  cellar: CellarState,
  lotId: string,
  kind: Goods['kind'],
  massG: number,
): Taken {
  const place = lotPlace(lotId)
  const lot = cellar.lots.get(lotId)
  if (!lot) return refused({ code: 'unknownPlace', place })
  if (lot.goods.kind !== kind) return refused({ code: 'wrongGoods', place })
  const availableG = massOf(lot.matter)
  if (availableG < slackG) return nothingThere(place)
  const share = shareOf(massG, availableG, slackG)
  if (share === undefined) return notEnough(place, 'g', massG, availableG)
  const { part, rest } = splitMatter(lot.matter, share)
  return { ok: true, found: { lot, part, left: { ...lot, matter: rest } } }
}
