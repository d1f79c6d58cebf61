/** What every form of the log gets, and how it says what is still missing. */
import { useWords } from '../../../app/words/use-words.ts'
import type { DraftHead, Problem } from '../drafts/draft-basics.ts'
import type { LogContext } from '../drafts/log-context.ts'

export interface DraftFormProps<Draft extends DraftHead> {
  draft: Draft
  onChange: (draft: Draft) => void
  context: LogContext
  /** Empty until the maker has tried to record. */
  problems: readonly Problem[]
  /** A recorded move is being amended: it stays one move. */
  isAmending: boolean
}

type ProblemWords = (
  field: string,
  wordsForMissing?: 'missing' | 'chooseJar' | 'chooseLot',
) => string | undefined

export function useProblemWords(problems: readonly Problem[]): ProblemWords {
  const t = useWords()
  return (field, wordsForMissing = 'missing') => {
    const problem = problems.find((one) => one.field === field)
    if (!problem) return undefined
    return t(`batch.form.${problem.code === 'missing' ? wordsForMissing : problem.code}`)
  }
}
