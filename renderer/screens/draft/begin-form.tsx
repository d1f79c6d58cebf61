/** A fruit and what is at hand: from there the trade's usual numbers are a draft already. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useBridge } from '../../app/bridge-context.tsx'
import { call } from '../../app/calls.ts'
import { useSettings } from '../../app/settings.tsx'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import { useFruitName, useFruits } from '../../parts/names/use-names.ts'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import type { Way } from './draft-state.ts'
import { useNewDraft } from '../../parts/plan/use-new-draft.ts'
import styles from './begin-form.module.css'

export function BeginForm() {
  const t = useWords()
  const bridge = useBridge()
  const { units } = useSettings()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const { begin, error, isPending } = useNewDraft()
  const [fruitId, setFruitId] = useState('')
  const [massG, setMassG] = useState<number | undefined>(2000)
  const [spiritPctVol, setSpirit] = useState<number | undefined>(96)
  const [way, setWay] = useState<Way>('want')
  const [wasTried, setTried] = useState(false)
  const [failure, setFailure] = useState<Error | null>(null)

  async function submit() {
    setTried(true)
    const fruit = fruits.get(fruitId)
    if (!fruit || massG === undefined || spiritPctVol === undefined || isPending) return
    try {
      const { spec, wishes } = await call(bridge, 'drafts.usual', { fruitId, massG, spiritPctVol })
      begin({
        name: fruitName(fruit),
        note: '',
        spec,
        pins: [],
        ...(way === 'want' && { wishes }),
      })
    } catch (caught) {
      setFailure(caught instanceof Error ? caught : new Error(String(caught)))
    }
  }

  return (
    <Form onSubmit={() => void submit()} aria-label={t('draft.begin.title')}>
      <div className={styles.fields}>
        <ChoiceField
          label={t('draft.begin.fruit')}
          value={fruitId}
          onChange={setFruitId}
          placeholder={t('draft.begin.chooseFruit')}
          problem={wasTried && fruitId === '' ? t('draft.begin.fruitMissing') : undefined}
          choices={[...fruits.values()].map((fruit) => ({
            value: fruit.id,
            label: fruitName(fruit),
          }))}
        />
        <QuantityField
          label={t('draft.begin.mass')}
          dimension="mass"
          unit={units === 'us' ? 'lb' : 'kg'}
          value={massG}
          range={{ min: 1, max: 10_000_000 }}
          onChange={setMassG}
          isRequired
          showsProblem={wasTried}
        />
        <QuantityField
          label={t('draft.begin.spirit')}
          dimension="strength"
          value={spiritPctVol}
          range={{ min: 5, max: 97.2 }}
          onChange={setSpirit}
          isRequired
          showsProblem={wasTried}
        />
        <Segments
          label={t('draft.begin.way')}
          value={way}
          onChange={setWay}
          choices={[
            { value: 'want', label: t('draft.begin.want') },
            { value: 'have', label: t('draft.begin.have') },
          ]}
        />
      </div>
      <FailureNote error={failure ?? error} />
      <div>
        <Button kind="primary" type="submit" isBusy={isPending}>
          {t('draft.begin.go')}
        </Button>
      </div>
    </Form>
  )
}
