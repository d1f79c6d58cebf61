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
  costMinor: 1000,
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
  costMinor: 4000,
  ...more,
})

export const sugar = (massG: number, more: Partial<BlendPart> = {}): BlendPart => ({
  place: 'lot:sugar',
  kind: 'sweetener',
  unit: 'g',
  matter: matterOf({ sugarG: massG }),
  isEndless: false,
  costMinor: 600,
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
  costMinor: 1500,
  ...more,
})

export const exactly = (value: number) => ({ low: value, high: value })
