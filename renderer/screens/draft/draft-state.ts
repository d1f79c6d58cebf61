/** A draft while it is being turned: its numbers, what is held, what is wanted. */
import type { Draft, DraftPin, DraftSpec, DraftWishes } from '../../../shared/schemas/drafts.ts'

export type Way = 'want' | 'have'

export interface DraftState {
  readonly name: string
  readonly note: string
  readonly way: Way
  readonly spec: DraftSpec
  readonly pins: readonly DraftPin[]
  readonly wishes: DraftWishes
}

export const stateOf = (
  { name, note, spec, pins, wishes }: Draft,
  usual: DraftWishes,
): DraftState => ({
  name,
  note,
  way: wishes ? 'want' : 'have',
  spec,
  pins,
  wishes: wishes ?? usual,
})

export const draftOf = (
  id: string,
  { name, note, way, spec, pins, wishes }: DraftState,
): Draft => ({
  id,
  name: name.trim(),
  note,
  spec,
  pins: [...pins],
  ...(way === 'want' && { wishes }),
})

export type Change = (change: Partial<DraftState>) => void

/** An amount that the maker sets by hand is held from then on, so that the others follow. */
export const setByHand = (
  state: Pick<DraftState, 'way' | 'pins'>,
  pin: DraftPin,
  spec: Partial<DraftSpec>,
  solved: DraftSpec,
): Partial<DraftState> => ({
  spec: { ...solved, ...spec },
  ...(state.way === 'want' && !state.pins.includes(pin) && { pins: [...state.pins, pin] }),
})

export const withPin = (pins: readonly DraftPin[], pin: DraftPin, isHeld: boolean): DraftPin[] =>
  isHeld ? [...pins.filter((one) => one !== pin), pin] : pins.filter((one) => one !== pin)

/**
 * The maker's own numbers with what a solve found for those that nobody holds. What is being typed
 * is never overwritten by an answer to what stood there before.
 */
export function followed(
  own: DraftSpec,
  solved: DraftSpec | undefined,
  pins: readonly DraftPin[],
): DraftSpec {
  if (!solved) return own
  const found = <Value>(pin: DraftPin, mine: Value, theirs: Value | undefined): Value =>
    pins.includes(pin) ? mine : (theirs ?? mine)
  return {
    ...own,
    fruits: own.fruits.map((fruit, at) => ({
      ...fruit,
      massG: found('fruit', fruit.massG, solved.fruits[at]?.massG),
    })),
    spirits: own.spirits.map((spirit, at) => ({
      ...spirit,
      volumeMl: found('spirit', spirit.volumeMl, solved.spirits[at]?.volumeMl),
    })),
    steepWaterMl: found('steepWater', own.steepWaterMl, solved.steepWaterMl),
    layeringSugarG: found('layeringSugar', own.layeringSugarG, solved.layeringSugarG),
    sugarDraws: own.sugarDraws.map((draw, at) => ({
      ...draw,
      sugarG: found('drawSugar', draw.sugarG, solved.sugarDraws[at]?.sugarG),
    })),
    finishWaterMl: found('finishWater', own.finishWaterMl, solved.finishWaterMl),
    finishSugarG: found('finishSugar', own.finishSugarG, solved.finishSugarG),
    finishSpiritMl: found('finishSpirit', own.finishSpiritMl, solved.finishSpiritMl),
  }
}
