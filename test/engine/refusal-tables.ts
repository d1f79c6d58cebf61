/** What the engine refuses must name itself: screens put the quantity and its unit into words. */
import { expect, it } from 'vitest'
import { DomainError } from '../../main/engine/domain-error.ts'

/** What is asked, the quantity that is out of its range, its value, and its unit. */
export type Refusal = readonly [ask: () => unknown, quantity: string, value: number, unit: string]

export function namesWhatItRefuses(refusals: Readonly<Record<string, readonly Refusal[]>>): void {
  it.each(Object.entries(refusals))('%s names what it refuses, and its unit', (_, asked) => {
    for (const [ask, quantity, value, unit] of asked) {
      const { code, details, message } = refusalOf(ask)
      expect({ code, ...details }).toMatchObject({ code: 'outOfRange', quantity, value, unit })
      expect(message).toContain(quantity)
    }
  })
}

function refusalOf(ask: () => unknown): DomainError {
  try {
    ask()
  } catch (error) {
    if (error instanceof DomainError) return error
    throw error
  }
  throw new Error('was not refused')
}
