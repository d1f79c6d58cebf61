/**
 * A fingerprint of all that the moves come to: two books with the same one hold the same cellar, to
 * the last bit of every number. It compares a copy with its original at once; between versions of
 * the program it may differ, since what is reckoned gets better.
 */
import { createHash } from 'node:crypto'
import type { CellarState } from '../engine/index.ts'

export const ledgerDigest = (cellar: CellarState): string =>
  createHash('sha256')
    .update(JSON.stringify(inOrder(cellar)))
    .digest('hex')

/** The same value with keys sorted: the order in which things came to be is not part of it. */
function inOrder(value: unknown): unknown {
  if (isMap(value))
    return [...value]
      .map(([key, each]) => [String(key), inOrder(each)] as const)
      .sort(([a], [b]) => (a < b ? -1 : 1))
  if (Array.isArray(value)) return value.map(inOrder)
  // What JSON has no number for must not pass for nothing.
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value)
  if (typeof value !== 'object' || value === null) return value
  return Object.entries(value)
    .filter(([, each]) => each !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, each]) => [key, inOrder(each)])
}

/** The state's maps need not be those of the language. */
const isMap = (value: unknown): value is ReadonlyMap<unknown, unknown> =>
  typeof value === 'object' &&
  value !== null &&
  'get' in value &&
  Symbol.iterator in value &&
  'size' in value
