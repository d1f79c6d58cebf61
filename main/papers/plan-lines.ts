/** A draft in the words of a kitchen wall: what to buy, and what to do on which day. */
import type { DraftOutcome, DraftSpec, Purchase } from '../../shared/schemas/drafts.ts'
import type { Fruit } from '../../shared/schemas/fruits.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import type { PaperQuantities } from './paper-quantities.ts'
import type { PaperWords } from './words/paper-words.ts'

export interface PlanLine {
  readonly day: string
  readonly deed: string
  /** What comes of it, in a quieter weight. */
  readonly result: string
}

export interface PlanToTell {
  readonly spec: DraftSpec
  readonly outcome: DraftOutcome
  readonly fruitOf: (fruitId: string) => Fruit
}

export function shoppingLines(plan: PlanToTell, q: PaperQuantities, words: PaperWords): string[] {
  return plan.outcome.purchases.map((purchase) => {
    const price = purchase.priceMinor === undefined ? '' : ` · ${q.money(purchase.priceMinor)}`
    return `${purchaseWords(purchase, plan.fruitOf, q, words)}${price}`
  })
}

function purchaseWords(
  { what, fruitId, sweetenerId, strengthPctVol, massG = 0, volumeMl = 0, count = 0 }: Purchase,
  fruitOf: PlanToTell['fruitOf'],
  q: PaperQuantities,
  { plan: say, fruitName }: PaperWords,
): string {
  switch (what) {
    case 'fruit':
      return say.fruit(q.mass(massG), fruitName(fruitOf(fruitId ?? '')))
    case 'spirit':
      return say.spirit(q.volume(volumeMl), q.strength(strengthPctVol ?? 0))
    case 'sweetener':
      return say.sweetener(q.mass(massG), sweetenerId ?? 'sugar')
    case 'bottle':
      return say.bottles(count, q.volume(volumeMl))
  }
}

/** One line for all that is done alike on one day, in however many jars. */
export function deedLines(plan: PlanToTell, q: PaperQuantities, words: PaperWords): PlanLine[] {
  const lines: PlanLine[] = []
  let draws = 0
  for (const group of grouped(plan.outcome.moves)) {
    const [first] = group
    if (!first) continue
    const deed = deedWords(group, first, draws > 0, plan, q, words)
    if (!deed) continue
    if (first.kind === 'drawOff' || first.kind === 'press') draws += 1
    lines.push({ day: q.day(first.at), deed, result: resultWords(first, draws, plan, q) })
  }
  return lines
}

function grouped(moves: readonly Move[]): Move[][] {
  const groups = new Map<string, Move[]>()
  for (const [index, move] of moves.entries()) {
    const key = move.kind === 'filter' ? `filter ${index}` : `${move.at} ${move.kind}`
    groups.set(key, [...(groups.get(key) ?? []), move])
  }
  return [...groups.values()]
}

function sum(moves: readonly Move[], of: 'massG' | 'volumeMl'): number {
  return moves.reduce((total, move) => total + amountOf(move, of), 0)
}

function amountOf(move: Move, of: 'massG' | 'volumeMl'): number {
  if (of === 'massG') return 'massG' in move ? (move.massG ?? 0) : 0
  return 'volumeMl' in move ? (move.volumeMl ?? 0) : 0
}

function deedWords(
  group: readonly Move[],
  first: Move,
  isFinishing: boolean,
  { spec, fruitOf }: PlanToTell,
  q: PaperQuantities,
  { plan: say, fruitName }: PaperWords,
): string | undefined {
  const sweetener = () => say.sweetener(q.mass(sum(group, 'massG')), spec.sweetenerId)
  switch (first.kind) {
    case 'charge': {
      const fruits = spec.fruits.map(({ fruitId, massG, refuseShare, cut }) => {
        const prepared = q.mass(massG * (1 - refuseShare))
        return say.cutFruit(say.fruit(prepared, fruitName(fruitOf(fruitId))), cut)
      })
      return say.charge(fruits.join('; '))
    }
    case 'sugar':
      return isFinishing ? say.stirIn(sweetener()) : say.layer(sweetener())
    case 'pourSpirit': {
      const volume = q.volume(sum(group, 'volumeMl'))
      return isFinishing
        ? say.addSpirit(volume, strengths(spec, q))
        : say.pourOnSpirit(volume, strengths(spec, q))
    }
    case 'pourWater':
      return say.addWater(q.volume(sum(group, 'volumeMl')))
    case 'drawOff':
      return say.drawOff
    case 'coverWithSugar':
      return say.coverWithSugar(sweetener())
    case 'press':
      return say.press
    case 'marry':
      return say.marry
    case 'filter':
      return say.filter(first.medium)
    case 'bottle':
      return say.bottle(first.count, q.volume(first.bottleSizeMl))
    default:
      return undefined
  }
}

const strengths = ({ spirits }: DraftSpec, q: PaperQuantities): string =>
  spirits.map(({ strengthPctVol }) => q.strength(strengthPctVol)).join(', ')

function resultWords(
  move: Move,
  draws: number,
  { outcome }: PlanToTell,
  q: PaperQuantities,
): string {
  const stages = outcome.stages.filter(({ key, liquid }) => {
    if (!liquid) return false
    if (move.kind === 'drawOff' || move.kind === 'press')
      return key === 'steeping' || key === 'sugarDraw' || key === 'pressed'
    if (move.kind === 'marry') return key === 'married'
    return move.kind === 'bottle' && key === 'bottled'
  })
  const isPouring = move.kind === 'drawOff' || move.kind === 'press'
  const liquid = stages[isPouring ? draws - 1 : 0]?.liquid
  if (!liquid) return ''
  const { volumeMl, strengthPctVol, sugarGPerL } = liquid
  return `${q.volume(volumeMl)} · ${q.strength(strengthPctVol)} · ${q.sugar(sugarGPerL)}`
}
