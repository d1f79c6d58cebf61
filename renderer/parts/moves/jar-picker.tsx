/** A choice of one or several vessels, each drawn as it stands, with a way to add a new one. */
import { useId, useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useBatches } from '../names/use-names.ts'
import { Button } from '../button/button.tsx'
import { classes } from '../classes.ts'
import field from '../fields/field.module.css'
import { useQuantities } from '../quantity/use-quantities.ts'
import { JarVessel } from '../vessel/jar-vessel.tsx'
import type { StandingJar } from './drafts/log-context.ts'
import { NewVessel } from './new-vessel.tsx'
import styles from './jar-picker.module.css'

export interface JarPickerProps {
  label: string
  jars: readonly StandingJar[]
  /** Shown on request. */
  moreJars: readonly StandingJar[]
  /** One or several ids; several are allowed only with `isMultiple`. */
  value: readonly string[]
  onChange: (jarIds: string[]) => void
  isMultiple?: boolean
  batchId: string
  problem?: string | undefined
  /** Offers a vessel that the cellar does not have yet. */
  takesNew?: boolean
}

export function JarPicker(props: JarPickerProps) {
  const { label, moreJars, value, onChange, isMultiple = false, problem, takesNew = false } = props
  const t = useWords()
  const name = useId()
  const [isAdding, setIsAdding] = useState(false)
  const [showsMore, setShowsMore] = useState(false)
  const jars = showsMore ? [...props.jars, ...moreJars] : props.jars
  const choose = (id: string, isChosen: boolean) => {
    if (!isMultiple) onChange([id])
    else onChange(isChosen ? [...value, id] : value.filter((other) => other !== id))
  }
  return (
    <fieldset className={styles.picker} aria-describedby={problem && `${name}-problem`}>
      <legend className={field.label}>{label}</legend>
      <div className={styles.row}>
        {jars.map((standing) => (
          <JarChoice
            key={standing.jar.id}
            standing={standing}
            name={name}
            batchId={props.batchId}
            isMultiple={isMultiple}
            isChosen={value.includes(standing.jar.id)}
            onChoose={(isChosen) => choose(standing.jar.id, isChosen)}
          />
        ))}
        {jars.length === 0 && !isAdding && (
          <p className={field.description}>{t('batch.form.noVessel')}</p>
        )}
        {moreJars.length > 0 && !showsMore && (
          <Button kind="quiet" onPress={() => setShowsMore(true)}>
            {t('batch.form.showAll')}
          </Button>
        )}
        {takesNew && !isAdding && (
          <Button kind="quiet" onPress={() => setIsAdding(true)}>
            {t('batch.form.newVessel')}
          </Button>
        )}
      </div>
      {isAdding && (
        <NewVessel
          onLeave={() => setIsAdding(false)}
          onAdded={(id) => {
            setIsAdding(false)
            choose(id, true)
          }}
        />
      )}
      <p className={field.problem} id={`${name}-problem`} aria-live="polite">
        {problem}
      </p>
    </fieldset>
  )
}

interface JarChoiceProps {
  standing: StandingJar
  name: string
  batchId: string
  isMultiple: boolean
  isChosen: boolean
  onChoose: (isChosen: boolean) => void
}

function JarChoice({ standing, name, batchId, isMultiple, isChosen, onChoose }: JarChoiceProps) {
  const { jar, contents } = standing
  const t = useWords()
  const { text, size } = useQuantities()
  const batches = useBatches()
  const batch = batches.get(contents?.batchId ?? '')?.batch
  const capacity = size(jar.capacityMl, 'volume').text
  return (
    <label className={styles.choice}>
      <input
        className="visually-hidden"
        type={isMultiple ? 'checkbox' : 'radio'}
        name={name}
        checked={isChosen}
        onChange={(event) => onChoose(event.target.checked)}
      />
      <JarVessel
        jar={jar}
        contents={contents}
        colour={batch?.colour}
        mmPerPixel={4.6}
        isDecorative
      />
      <span className={styles.words}>
        <span className={styles.name}>{jar.name}</span>
        <span className={styles.holds}>
          {contents
            ? t('batch.form.ofCapacity', { fill: text(contents.fillMl, 'volume'), capacity })
            : `${capacity}, ${t('batch.form.emptyVessels')}`}
        </span>
        {contents && contents.batchId !== batchId && (
          <span className={styles.holds}>
            {t('batch.form.otherBatch', { batch: batch?.name ?? t('parts.batchUnknown') })}
          </span>
        )}
      </span>
      <span className={classes(styles.mark, isMultiple && styles.square)} aria-hidden />
    </label>
  )
}
