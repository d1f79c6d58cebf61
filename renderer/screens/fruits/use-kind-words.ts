/** A fruit's kind in words; a kind that the library does not know stands as the maker wrote it. */
import { useWords } from '../../app/words/use-words.ts'
import { isKnownKind } from './kinds.ts'

export function useKindWords(): (kind: string) => string {
  const t = useWords()
  return (kind) => (isKnownKind(kind) ? t(`fruits.kind.${kind}`) : kind)
}
