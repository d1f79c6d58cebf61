/**
 * What is asked for may come to more than the contract has room for, such as a recipe scaled to a
 * thousand tonnes of fruit: that is refused with its number, as the engine refuses one.
 */
import type * as z from 'zod'
import { ServiceError } from './service-error.ts'

/** The value as it is; anything else that is wrong with it is a mistake of ours, and throws. */
export function withinContract<T>(schema: z.ZodType<T>, value: T): T {
  const { error } = schema.safeParse(value)
  if (!error) return value
  const [issue] = error.issues
  if (issue?.code !== 'too_big' && issue?.code !== 'too_small') throw error
  const isTooBig = issue.code === 'too_big'
  const found = at(value, issue.path)
  const limit = Number(isTooBig ? issue.maximum : issue.minimum)
  const { quantity, unit } = named(String(issue.path.at(-1)))
  throw new ServiceError('outOfRange', `${quantity} is ${String(found)}: ${issue.message}`, {
    quantity,
    unit,
    value: found,
    low: isTooBig ? 0 : limit,
    ...(isTooBig && { high: limit }),
  })
}

const at = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce((within, key) => (within as Record<PropertyKey, unknown>)[key], value)

/** As the engine names what it refuses. */
function named(key: string): { quantity: string; unit: string } {
  if (key.endsWith('G')) return { quantity: 'mass', unit: 'g' }
  if (key.endsWith('Ml')) return { quantity: 'volume', unit: 'mL' }
  return { quantity: key, unit: '' }
}
