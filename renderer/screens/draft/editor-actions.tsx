/** What can be done with a draft: start it, keep it, print it. Not drawn anew while numbers turn. */
import { memo, type RefObject } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Draft } from '../../../shared/schemas/drafts.ts'
import { Button } from '../../parts/button/button.tsx'
import { PaperButton } from './paper-button.tsx'

export interface EditorActionsProps {
  /** The draft as it stands when a button is pressed. */
  present: RefObject<Draft>
  canStart: boolean
  isNameMissing: boolean
  isKeeping: boolean
  isKeepingRecipe: boolean
  onStart: () => void
  onKeep: () => void
  onKeepRecipe: () => void
}

export const EditorActions = memo(function EditorActions(props: EditorActionsProps) {
  const t = useWords()
  return (
    <>
      <Button kind="primary" onPress={props.onStart} isDisabled={!props.canStart}>
        {t('draft.editor.start')}
      </Button>
      <Button isBusy={props.isKeeping} isDisabled={props.isNameMissing} onPress={props.onKeep}>
        {t('draft.editor.keep')}
      </Button>
      <Button
        isBusy={props.isKeepingRecipe}
        isDisabled={props.isNameMissing}
        onPress={props.onKeepRecipe}
      >
        {t('draft.editor.asRecipe')}
      </Button>
      <PaperButton draft={props.present} />
    </>
  )
})
