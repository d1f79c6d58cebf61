/** The folder of this machine whose backups or exports are listed. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { Form } from '../dialog/form.tsx'
import { TextInput } from '../fields/text-input.tsx'
import styles from './restore.module.css'

export interface FolderToLookInProps {
  folder: string
  onLook: (folder: string) => void
}

export function FolderToLookIn({ folder, onLook }: FolderToLookInProps) {
  const t = useWords()
  const [typed, setTyped] = useState(folder)
  return (
    <Form
      aria-label={t('safekeeping.restore.folder')}
      onSubmit={() => {
        if (typed.trim() !== '') onLook(typed.trim())
      }}
    >
      <div className={styles.folder}>
        <TextInput
          label={t('safekeeping.restore.folder')}
          value={typed}
          onChange={setTyped}
          maxLength={1000}
          isRequired
        />
        <Button type="submit">{t('safekeeping.restore.look')}</Button>
      </div>
    </Form>
  )
}
