/** The drafts kept, the one changed last first. */
import { useWords } from '../../app/words/use-words.ts'
import type { KeptDraft } from '../../../shared/schemas/drafts.ts'
import { useWrite } from '../../app/queries.ts'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { Table, type Column } from '../../parts/table/table.tsx'
import { useTimes } from '../../parts/time/use-times.ts'

export function DraftTable({ drafts }: { drafts: readonly KeptDraft[] }) {
  const t = useWords()
  const q = useQuantities()
  const times = useTimes()
  const remove = useWrite('drafts.remove')
  const columns: Column<KeptDraft>[] = [
    {
      key: 'name',
      header: t('draft.kept.name'),
      isRowHeader: true,
      cell: ({ draft }) => (
        <ButtonLink kind="quiet" href={`/draft/${encodeURIComponent(draft.id)}`}>
          {draft.name}
        </ButtonLink>
      ),
    },
    {
      key: 'for',
      header: t('draft.kept.comes'),
      cell: ({ draft: { wishes, spec } }) =>
        wishes?.bottles !== undefined
          ? t('draft.kept.wishes', {
              bottles: t('parts.bottles', { count: wishes.bottles }),
              strength: q.text(wishes.strengthPctVol ?? 0, 'strength'),
              sugar: q.text(wishes.sugarGPerL ?? 0, 'sugar'),
            })
          : t('draft.kept.amounts', {
              fruit: q.text(sumOf(spec.fruits, 'massG'), 'mass'),
              spirit: q.text(sumOf(spec.spirits, 'volumeMl'), 'volume'),
            }),
    },
    {
      key: 'changed',
      header: t('draft.kept.changed'),
      isMinor: true,
      cell: ({ changedAt }) => times.day(changedAt),
    },
    {
      key: 'remove',
      header: <span className="visually-hidden">{t('draft.kept.remove')}</span>,
      align: 'end',
      cell: ({ draft }) => (
        <Button
          kind="quiet"
          aria-label={t('draft.kept.removeOne', { name: draft.name })}
          onPress={() => remove.mutate({ draftId: draft.id })}
        >
          {t('draft.kept.remove')}
        </Button>
      ),
    },
  ]
  return (
    <>
      <FailureNote error={remove.error} />
      <Table
        caption={t('draft.kept.title')}
        columns={columns}
        rows={drafts}
        rowKey={({ draft }) => draft.id}
      />
    </>
  )
}

const sumOf = <Key extends string>(rows: readonly { [K in Key]: number }[], key: Key): number =>
  rows.reduce((sum, row) => sum + row[key], 0)
