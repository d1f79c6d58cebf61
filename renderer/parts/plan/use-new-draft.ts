/** Keeps a new draft and goes to it. */
import { useLocation } from 'wouter'
import type { Draft } from '../../../shared/schemas/drafts.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'

export function useNewDraft() {
  const [, navigate] = useLocation()
  const keep = useWrite('drafts.keep')
  const begin = (draft: Omit<Draft, 'id'>) =>
    keep.mutate(
      { id: newId(), ...draft },
      { onSuccess: (kept) => navigate(`/draft/${encodeURIComponent(kept.draft.id)}`) },
    )
  return { begin, error: keep.error, isPending: keep.isPending }
}
