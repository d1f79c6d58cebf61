/** Drafts made from a seed: any fruit, spirit, amounts and ways that a maker might choose. */
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { fruitLibrary, fruitOf, usualDraft } from '../../../main/engine/index.ts'

export const facts = { fruitOf }

/** Numbers between 0 and 1, the same for the same seed (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

/** Spices go in by the gram: they are not what a batch is sized by. */
const fruits: Fruit[] = [...fruitLibrary.values()].filter(
  ({ fruitKgPerLSpirit }) => (fruitKgPerLSpirit?.typical ?? 1) >= 0.1,
)

export const plainDraft = (fruitId: string, massG = 2000): DraftSpec =>
  usualDraft({
    fruit: fruitOf(fruitId),
    fruitG: massG,
    spiritPctVol: 96,
    startAt: '2026-07-01T08:00:00.000Z',
  })

export function seededDraft(seed: number): { begun: DraftSpec; turned: DraftSpec } {
  const random = seeded(seed)
  const between = (low: number, high: number) => low + (high - low) * random()
  const fruit = fruits[Math.floor(random() * fruits.length)] as Fruit
  const begun = {
    ...plainDraft(fruit.id, between(500, 8000)),
    isPressed: random() < 0.5,
    filters: random() < 0.5 ? (['cloth', 'paper'] as const).slice() : [],
    spirits: [{ strengthPctVol: 96, volumeMl: 1 }],
  }
  const usual = plainDraft(fruit.id, begun.fruits[0]?.massG)
  begun.spirits = usual.spirits
  // What was turned is reachable from what it began with: the same ways, other amounts.
  const scale = between(0.5, 2)
  const ratio = between(0.75, 1.3)
  const spiritMl = (usual.spirits[0]?.volumeMl ?? 0) * scale * ratio
  const turned = {
    ...begun,
    fruits: begun.fruits.map((part) => ({ ...part, massG: part.massG * scale })),
    spirits: [{ strengthPctVol: 96, volumeMl: spiritMl }],
    steepWaterMl: usual.steepWaterMl * scale * ratio * between(0.5, 1),
    layeringSugarG: usual.layeringSugarG * scale * between(0.4, 1),
    sugarDraws: usual.sugarDraws.map((draw) => ({
      ...draw,
      sugarG: draw.sugarG * scale * between(0.4, 1),
    })),
    finishWaterMl: spiritMl * between(0, 0.6),
    finishSugarG: spiritMl * between(0, 0.3),
  }
  return { begun, turned }
}
