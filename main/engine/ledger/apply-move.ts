/** One move against the cellar: its effect, or why it cannot be. Pure; nothing is written. */
import type { Move } from '../../../shared/schemas/moves.ts'
import type { CellarState } from './cellar-state.ts'
import { bottle, breakBottle, drawBottle, give, shelve, unbottle } from './moves/bottle-moves.ts'
import { bringIn } from './moves/bringing-in.ts'
import type { MoveContext } from './moves/context.ts'
import { crush, keep, read, remark, stir, taste } from './moves/jar-moves.ts'
import { drawOff, filter, marry, press } from './moves/liquid-moves.ts'
import { correct, discard } from './moves/mending-moves.ts'
import { openBottle, pourGlass, topUp } from './moves/opened-moves.ts'
import {
  addAcid,
  buy,
  charge,
  coverWithSugar,
  pourSpirit,
  pourWater,
  sugar,
} from './moves/pantry-moves.ts'
import type { Outcome } from './refusal.ts'

export function applyMove(cellar: CellarState, move: Move, context: MoveContext): Outcome {
  switch (move.kind) {
    case 'buy':
      return buy(cellar, move, context)
    case 'charge':
      return charge(cellar, move, context)
    case 'sugar':
      return sugar(cellar, move, context)
    case 'addAcid':
      return addAcid(cellar, move, context)
    case 'pourSpirit':
      return pourSpirit(cellar, move, context)
    case 'pourWater':
      return pourWater(cellar, move, context)
    case 'keep':
      return keep(cellar, move, context)
    case 'stir':
      return stir(cellar, move, context)
    case 'read':
      return read(cellar, move, context)
    case 'drawOff':
      return drawOff(cellar, move, context)
    case 'press':
      return press(cellar, move, context)
    case 'crush':
      return crush(cellar, move, context)
    case 'coverWithSugar':
      return coverWithSugar(cellar, move, context)
    case 'marry':
      return marry(cellar, move, context)
    case 'filter':
      return filter(cellar, move, context)
    case 'bottle':
      return bottle(cellar, move, context)
    case 'bringIn':
      return bringIn(cellar, move, context)
    case 'unbottle':
      return unbottle(cellar, move, context)
    case 'drawBottle':
      return drawBottle(cellar, move)
    case 'give':
      return give(cellar, move)
    case 'breakBottle':
      return breakBottle(cellar, move)
    case 'shelve':
      return shelve(cellar, move)
    case 'openBottle':
      return openBottle(cellar, move, context)
    case 'pourGlass':
      return pourGlass(cellar, move)
    case 'topUp':
      return topUp(cellar, move)
    case 'taste':
      return taste(cellar, move, context)
    case 'discard':
      return discard(cellar, move, context)
    case 'correct':
      return correct(cellar, move, context)
    case 'remark':
      return remark()
  }
}
