/** A question to the book on its way to the screen: reading, failed, or here. */
import type { ReactNode } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { UseQueryResult } from '@tanstack/react-query'
import { Button } from '../button/button.tsx'
import { FailureNote } from './failure-note.tsx'
import styles from './read-state.module.css'

export interface ReadStateProps<Value> {
  query: UseQueryResult<Value, Error>
  children: (value: Value) => ReactNode
}

export function ReadState<Value>({ query, children }: ReadStateProps<Value>) {
  const t = useWords()
  if (query.isPending) return <output className={styles.loading}>{t('parts.loading')}</output>
  if (query.isError)
    return (
      <FailureNote
        error={query.error}
        action={<Button onPress={() => void query.refetch()}>{t('parts.tryAgain')}</Button>}
      />
    )
  return children(query.data)
}
