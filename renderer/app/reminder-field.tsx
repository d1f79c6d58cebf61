/** Whether a notice a day is wished; the browser is asked by the press that switches it on. */
import { useState } from 'react'
import { Button } from '../parts/button/button.tsx'
import { Segments } from '../parts/fields/segments.tsx'
import { askForNotices, noticeRight } from './notices.ts'
import { useWords } from './words/use-words.ts'

export interface ReminderFieldProps {
  isOn: boolean
  onChange: (isOn: boolean) => void
}

export function ReminderField({ isOn, onChange }: ReminderFieldProps) {
  const t = useWords()
  const [right, setRight] = useState(noticeRight)
  const mayAsk = right === 'notAsked' && isOn
  async function switchOn() {
    const given = await askForNotices()
    setRight(given)
    if (given === 'granted' || given === 'byHost') onChange(true)
  }
  return (
    <div>
      <Segments
        label={t('today.reminders.label')}
        value={isOn ? 'on' : 'off'}
        onChange={(value) => (value === 'on' ? void switchOn() : onChange(false))}
        choices={(['off', 'on'] as const).map((value) => ({
          value,
          label: t(`today.reminders.${value}`),
        }))}
      />
      <output>
        {right === 'denied' && t('today.reminders.blocked')}
        {right === 'missing' && t('today.reminders.missing')}
        {mayAsk && t('today.reminders.askHint')}
      </output>
      {mayAsk && <Button onPress={() => void switchOn()}>{t('today.reminders.ask')}</Button>}
    </div>
  )
}
