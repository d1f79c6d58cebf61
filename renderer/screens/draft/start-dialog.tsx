/** From paper to the cellar: a name, a colour, and which jars; what would overflow is marked. */
import { useId, useState } from 'react'
import { useLocation } from 'wouter'
import { useWords } from '../../app/words/use-words.ts'
import type {
  DraftOutcome,
  DraftSpec,
  DraftVessel,
  PlannedVessel,
} from '../../../shared/schemas/drafts.ts'
import type { Jar } from '../../../shared/schemas/cellar.ts'
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { useJars, type JarInPlace } from '../../parts/names/use-names.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import styles from './start-dialog.module.css'

export interface StartDialogProps {
  isOpen: boolean
  onClose: () => void
  name: string
  colour: string
  spec: DraftSpec
  outcome: DraftOutcome
}

export function StartDialog({ isOpen, onClose, ...draft }: StartDialogProps) {
  const t = useWords()
  return (
    <SheetDialog title={t('draft.start.title')} isOpen={isOpen} onClose={onClose}>
      <StartForm onClose={onClose} {...draft} />
    </SheetDialog>
  )
}

const noJar = 'none'

function StartForm({
  onClose,
  name: given,
  colour: usual,
  spec,
  outcome,
}: Omit<StartDialogProps, 'isOpen'>) {
  const t = useWords()
  const q = useQuantities()
  const colourId = useId()
  const [, navigate] = useLocation()
  const start = useWrite('drafts.start')
  const jars = useJars()
  const [name, setName] = useState(given)
  const [colour, setColour] = useState(usual)
  const [byHand, setByHand] = useState<ReadonlyMap<string, string>>(new Map())
  const [wasTried, setTried] = useState(false)
  const suggested = suggestions(outcome.vessels, jars)
  const jarOf = ({ jarId }: PlannedVessel) => byHand.get(jarId) ?? suggested.get(jarId) ?? noJar
  const isNameMissing = name.trim() === ''

  function submit() {
    setTried(true)
    if (isNameMissing || start.isPending) return
    const chosen = outcome.vessels.map((planned) => ({
      role: planned.role,
      vessel: draftVessel(planned, jars.get(jarOf(planned))?.jar),
    }))
    const married = withRole(chosen, 'married')[0]
    const vessels = {
      steep: withRole(chosen, 'steep'),
      extracts: withRole(chosen, 'extract'),
      ...(married && { married }),
    }
    const batchId = newId()
    start.mutate(
      { batchId, name, colour, spec: { ...spec, vessels } },
      { onSuccess: ({ id }) => navigate(`/batches/${encodeURIComponent(id)}`) },
    )
  }

  const label = (planned: PlannedVessel, at: number) => {
    const alike = outcome.vessels.filter(({ role }) => role === planned.role)
    const count = alike.indexOf(planned) + 1
    if (planned.role === 'married') return t('draft.start.married')
    if (planned.role === 'extract') return t('draft.start.extract', { count })
    return alike.length > 1
      ? t('draft.start.steepNumbered', { count: at + 1 })
      : t('draft.start.steep')
  }

  return (
    <Form onSubmit={submit}>
      <TextInput
        label={t('draft.start.name')}
        value={name}
        onChange={setName}
        isRequired
        autoFocus
        problem={wasTried && isNameMissing ? t('draft.start.nameMissing') : undefined}
      />
      <span className={styles.colour}>
        <label htmlFor={colourId}>{t('draft.start.colour')}</label>
        <input
          id={colourId}
          type="color"
          value={colour}
          onChange={(event) => setColour(event.target.value)}
        />
      </span>
      {outcome.vessels.map((planned, at) => {
        const chosen = jars.get(jarOf(planned))?.jar
        const fill = q.text(planned.peakFillMl, 'volume')
        const isOver = chosen && planned.peakFillMl > safeFillFraction * chosen.capacityMl
        return (
          <ChoiceField
            key={planned.jarId}
            label={label(planned, at)}
            value={jarOf(planned)}
            onChange={(jarId) => setByHand(new Map([...byHand, [planned.jarId, jarId]]))}
            problem={isOver ? t('draft.start.needsTooMuch', { fill }) : undefined}
            description={t('draft.start.needs', { fill })}
            choices={[
              {
                value: noJar,
                label: t('draft.start.usual', { size: q.size(planned.capacityMl, 'volume').text }),
              },
              ...[...jars.values()]
                .filter(({ jar }) => !jar.isRetired)
                .map(({ jar, contents }) => ({
                  value: jar.id,
                  label: t(contents ? 'draft.start.jarTaken' : 'draft.start.jar', {
                    name: jar.name,
                    size: q.size(jar.capacityMl, 'volume').text,
                  }),
                })),
            ]}
          />
        )
      })}
      <FailureNote error={start.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={start.isPending}>
          {t('draft.start.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}

interface Chosen {
  role: PlannedVessel['role']
  vessel: DraftVessel
}

const withRole = (chosen: readonly Chosen[], wanted: Chosen['role']): DraftVessel[] =>
  chosen.filter(({ role }) => role === wanted).map(({ vessel }) => vessel)

const draftVessel = (planned: PlannedVessel, jar: Jar | undefined): DraftVessel =>
  jar
    ? { jarId: jar.id, name: jar.name, shape: jar.shape, capacityMl: jar.capacityMl }
    : { shape: planned.shape, capacityMl: planned.capacityMl }

/** For each vessel the smallest jar that is free and holds it; the largest need chooses first. */
function suggestions(
  vessels: readonly PlannedVessel[],
  jars: ReadonlyMap<string, JarInPlace>,
): Map<string, string> {
  const free = [...jars.values()]
    .filter(({ jar, contents }) => !contents && !jar.isRetired)
    .map(({ jar }) => jar)
    .sort((a, b) => a.capacityMl - b.capacityMl)
  const found = new Map<string, string>()
  for (const { jarId, peakFillMl, isUsualSize } of [...vessels].sort(
    (a, b) => b.peakFillMl - a.peakFillMl,
  )) {
    if (!isUsualSize && jars.has(jarId)) {
      found.set(jarId, jarId)
      continue
    }
    const at = free.findIndex(({ capacityMl }) => peakFillMl <= safeFillFraction * capacityMl)
    const [jar] = at < 0 ? [] : free.splice(at, 1)
    if (jar) found.set(jarId, jar.id)
  }
  return found
}
