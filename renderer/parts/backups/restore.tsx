/** Going back to a backup. */
import { useState } from 'react'
import { useRead, useWrite } from '../../app/queries.ts'
import { FoundBackups } from './found-backups.tsx'
import { PutInPlace, type LookedAt } from './put-in-place.tsx'
import { useLookJob } from './use-job.ts'

export interface RestoreProps {
  /** Called when the book has been put in place, while this may be on its way out. */
  onRestored?: () => void
}

export function Restore({ onRestored }: RestoreProps) {
  const [folder, setFolder] = useState<string>()
  return (
    <PutInPlace
      at={useBackup()}
      found={useRead('backups.list', folder === undefined ? {} : { folder })}
      onFolder={setFolder}
      list={(found, onLook) => <FoundBackups found={found} onLook={onLook} />}
      onDone={onRestored}
    />
  )
}

export function useBackup(): LookedAt {
  const look = useLookJob()
  return { of: 'backup', look, preview: look.job?.preview, put: useWrite('backups.restore') }
}
