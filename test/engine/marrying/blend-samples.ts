/** Lots to marry in tests, and the solver that the service uses. */
import { composeSolution, type BlendPart } from '../../../main/engine/index.ts'
import { matterOf } from '../../../shared/matter.ts'

interface Told {
  readonly volumeMl: number
  readonly strengthPctVol: number
  readonly sugarGPerL?: number
  readonly acidGPerL?: number
}

export const extract = (
  id: string,
  { sugarGPerL = 0, ...told }: Told,
  more: Partial<BlendPart> = {},
): BlendPart => ({
  place: `jar:${id}`,
  kind: 'extract',
  unit: 'ml',
  matter: matterOf(composeSolution({ ...told, sugarGPerL })),
  isEndless: false,
  cost: { minor: 1000, isComplete: true },
  ...more,
})

export const spirit = (
  volumeMl: number,
  strengthPctVol = 96,
  more: Partial<BlendPart> = {},
): BlendPart => ({
  ...extract('x', { volumeMl, strengthPctVol }),
  place: 'lot:spirit',
  kind: 'spirit',
  cost: { minor: 4000, isComplete: true },
  ...more,
})

export const sugar = (massG: number, more: Partial<BlendPart> = {}): BlendPart => ({
  place: 'lot:sugar',
  kind: 'sweetener',
  unit: 'g',
  matter: matterOf({ sugarG: massG }),
  isEndless: false,
  cost: { minor: 600, isComplete: true },
  ...more,
})

export const vintage = (
  id: string,
  { count, sugarGPerL = 0, ...told }: Told & { count: number },
  more: Partial<BlendPart> = {},
): BlendPart => ({
  place: `bottles:${id}`,
  kind: 'extract',
  unit: 'bottles',
  count,
  matter: matterOf(composeSolution({ ...told, sugarGPerL, volumeMl: told.volumeMl * count })),
  isEndless: false,
  cost: { minor: 1500, isComplete: true },
  ...more,
})

export const exactly = (value: number) => ({ low: value, high: value })
