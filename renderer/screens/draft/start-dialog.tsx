/** From paper to the cellar: a name, a colour, and which jars; how full each gets follows at once. */
import { useId, useMemo, useState } from 'react'
import { useLocation } from 'wouter'
import { useWords } from '../../app/words/use-words.ts'
import type { DraftOutcome, DraftSpec, PlannedVessel } from '../../../shared/schemas/drafts.ts'
import { safeFillFraction } from '../../../shared/safe-fill.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { useJars } from '../../parts/names/use-names.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { fillsChosen, suggestedJars, vesselsChosen } from './start-vessels.ts'
import { useLatest } from '../../app/use-latest.ts'
import { WarningList } from './warning-list.tsx'
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
  const { vessels } = outcome
  const choice = useMemo(() => {
    const all = [...suggestedJars(vessels, jars), ...byHand]
    return new Map(all.filter(([, jarId]) => jarId !== noJar))
  }, [vessels, jars, byHand])
  const started = { ...spec, vessels: vesselsChosen(vessels, choice, jars) }
  const reckoned = useLatest('drafts.reckon', { spec: started }, true)
  const fills = fillsChosen(vessels, choice, reckoned.data?.vessels ?? [])
  const isNameMissing = name.trim() === ''

  function submit() {
    setTried(true)
    if (isNameMissing || start.isPending) return
    start.mutate(
      { batchId: newId(), name, colour, spec: started },
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
      {vessels.map((planned, at) => {
        const jarId = choice.get(planned.jarId) ?? noJar
        const fillMl = fills.get(planned.jarId) ?? planned.peakFillMl
        const fill = q.text(fillMl, 'volume')
        const over = overfull(fillMl, jars.get(jarId)?.jar.capacityMl)
        return (
          <ChoiceField
            key={planned.jarId}
            label={label(planned, at)}
            value={jarId}
            onChange={(chosen) => setByHand(new Map([...byHand, [planned.jarId, chosen]]))}
            problem={over && t(`draft.start.${over}`, { fill })}
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
      {reckoned.data && <WarningList outcome={reckoned.data} unmet={noWishes} />}
      <FailureNote error={start.error ?? reckoned.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={start.isPending}>
          {t('draft.start.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}

const noWishes = [] as const

/** Whether a jar runs over, or only stands above its safe line. */
function overfull(fillMl: number, capacityMl: number | undefined) {
  if (capacityMl === undefined || fillMl <= safeFillFraction * capacityMl) return undefined
  return fillMl > capacityMl ? 'needsTooMuch' : 'needsOverSafe'
}
