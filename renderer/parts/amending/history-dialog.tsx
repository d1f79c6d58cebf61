/** Every version of a move: the book forgets none. */
import { useWords } from '../../app/words/use-words.ts'
import { useRead } from '../../app/queries.ts'
import { Button } from '../button/button.tsx'
import { DialogActions, SheetDialog } from '../dialog/sheet-dialog.tsx'
import { ReadState } from '../failure/read-state.tsx'
import { Table } from '../table/table.tsx'
import { useTimes } from '../time/use-times.ts'
import { useMoveWords } from '../moves/use-move-words.ts'

export function HistoryDialog({ moveId, onClose }: { moveId: string; onClose: () => void }) {
  const t = useWords()
  const times = useTimes()
  const moveWords = useMoveWords()
  const history = useRead('moves.history', { moveId })
  return (
    <SheetDialog title={t('batch.ledger.historyTitle')} isOpen onClose={onClose} size="wide">
      <ReadState query={history}>
        {(versions) => (
          <Table
            caption={t('batch.ledger.historyCaption')}
            rows={versions}
            rowKey={({ version }) => String(version)}
            columns={[
              {
                key: 'version',
                header: t('batch.ledger.version'),
                isRowHeader: true,
                cell: ({ version }) => version,
              },
              {
                key: 'recordedAt',
                header: t('batch.ledger.recorded'),
                cell: ({ recordedAt }) => times.moment(recordedAt),
              },
              {
                key: 'at',
                header: t('batch.ledger.when'),
                cell: ({ move }) => move && times.moment(move.at),
              },
              {
                key: 'what',
                header: t('batch.ledger.what'),
                cell: ({ move }) => (move ? moveWords(move) : t('batch.ledger.struck')),
              },
            ]}
          />
        )}
      </ReadState>
      <DialogActions>
        <Button onPress={onClose}>{t('parts.close')}</Button>
      </DialogActions>
    </SheetDialog>
  )
}
