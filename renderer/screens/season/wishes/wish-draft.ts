/** A wish while it is written: it may lack what the book wants of it. */
import { SeasonWish } from '../../../../shared/schemas/season.ts'

export interface WishDraft {
  readonly id: string
  readonly kindId: string
  readonly purpose: SeasonWish['purpose']
  readonly priority: SeasonWish['priority']
  readonly atLeastMl: number | undefined
  readonly atMostMl: number | undefined
  readonly bottleSizeMl: number | undefined
  readonly note: string
}

export const newWish = (id: string, kindId: string): WishDraft => ({
  id,
  kindId,
  purpose: 'drink',
  priority: 'should',
  atLeastMl: undefined,
  atMostMl: undefined,
  bottleSizeMl: undefined,
  note: '',
})

export const draftOfWish = (wish: SeasonWish): WishDraft => ({
  atLeastMl: undefined,
  atMostMl: undefined,
  bottleSizeMl: undefined,
  ...wish,
})

export type WishReading =
  | { readonly ok: true; readonly wish: SeasonWish }
  | { readonly ok: false; readonly problem: 'oneNeeded' | 'crossed' }

export function readWish(draft: WishDraft): WishReading {
  const { atLeastMl, atMostMl } = draft
  if (atLeastMl === undefined && atMostMl === undefined) return { ok: false, problem: 'oneNeeded' }
  const parsed = SeasonWish.safeParse(draft)
  return parsed.success ? { ok: true, wish: parsed.data } : { ok: false, problem: 'crossed' }
}
