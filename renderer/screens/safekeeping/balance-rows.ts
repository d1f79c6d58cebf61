/** The cellar's balance as rows to read downwards: what came in, where it is, what went out. */
import type { Balance } from '../../../shared/schemas/cellar.ts'
import { matterKinds, sumMatter, type Matter } from '../../../shared/matter.ts'

export type BalancePart = 'cameIn' | 'isIn' | 'wentOut'

export interface BalanceRow {
  readonly key: keyof Balance
  readonly part: BalancePart | 'missing'
  readonly matter: Matter
}

const parts = {
  cameIn: ['bought', 'tap', 'broughtIn', 'corrected'],
  isIn: ['inPantry', 'inJars', 'inBottles'],
  wentOut: ['drunk', 'given', 'wasted'],
} as const satisfies Record<BalancePart, readonly (keyof Balance)[]>

export const balanceParts = Object.keys(parts) as BalancePart[]

export const balanceRows = (balance: Balance): BalanceRow[] => [
  ...balanceParts.flatMap((part) =>
    parts[part].map((key): BalanceRow => ({ key, part, matter: balance[key] })),
  ),
  { key: 'missing', part: 'missing', matter: balance.missing },
]

export interface Verdict {
  readonly cameInG: number
  /** The largest amount by which any kind of matter fails to add up. */
  readonly missingG: number
  readonly isBalanced: boolean
}

/** Rounding of floating point leaves a trace; a real hole is far larger. */
const roundingShare = 1e-9

export function verdictOn(balance: Balance): Verdict {
  const cameIn = sumMatter(parts.cameIn.map((key) => balance[key]))
  const cameInG = matterKinds.reduce((sum, kind) => sum + cameIn[kind], 0)
  const missingG = Math.max(...matterKinds.map((kind) => Math.abs(balance.missing[kind])))
  return { cameInG, missingG, isBalanced: missingG <= Math.max(1e-6, cameInG * roundingShare) }
}
