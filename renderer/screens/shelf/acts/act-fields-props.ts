/** What the fields of any act are given. */
import type { Act } from './act.ts'
import type { ActDraft, ActField } from './act-draft.ts'

export interface ActFieldsProps<Of extends Act = Act> {
  act: Of
  draft: ActDraft
  onChange: (draft: ActDraft) => void
  problems: Partial<Record<ActField, string>>
  /** Says at once what is missing, as after trying to send the form. */
  showsMissing: boolean
}
