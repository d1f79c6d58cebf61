/** The refusal that a failed recording carries, when it was the ledger that said no. */
import { Refusal } from '../../../../shared/schemas/errors.ts'

export function refusalOf(error: Error | null): Refusal | undefined {
  if (!error || !('reply' in error)) return undefined
  const { code, details } = error.reply as { code: string; details: Record<string, unknown> }
  // Which of several moves was meant is no part of the refusal.
  const { index: _index, ...own } = details
  const parsed = Refusal.safeParse({ ...own, code })
  return parsed.success ? parsed.data : undefined
}
