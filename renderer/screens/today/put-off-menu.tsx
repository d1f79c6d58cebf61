/** Until when to put a task off: a few usual days, or another. */
import { useState, type FormEvent } from 'react'
import { Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { classes } from '../../parts/classes.ts'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { Field } from '../../parts/fields/field.tsx'
import field from '../../parts/fields/field.module.css'
import { localInputOf } from '../../parts/time/local-time.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import styles from './put-off-menu.module.css'

interface PutOffMenuProps {
  /** The task in words, to tell this menu from the others. */
  what: string
  isOpen: boolean
  onOpen: (isOpen: boolean) => void
  /** Called with a day, `2026-12-03`. */
  onPutOff: (until: string) => void
}

const usual = { tomorrow: 1, threeDays: 3, week: 7, month: 30 } as const
const usualNames = ['tomorrow', 'threeDays', 'week', 'month'] as const

/** The maker's own day, so many days from now. */
function dayAfter(now: Date, days: number): string {
  const noon = new Date(now.getFullYear(), now.getMonth(), now.getDate() + days, 12)
  return localInputOf(noon.toISOString()).slice(0, 10)
}

export function PutOffMenu({ what, isOpen, onOpen, onPutOff }: PutOffMenuProps) {
  const t = useWords()
  const times = useTimes()
  const [isAsking, setIsAsking] = useState(false)
  return (
    <>
      <MenuTrigger isOpen={isOpen} onOpenChange={onOpen}>
        <Button kind="quiet" aria-label={t('today.putOff.openOf', { what })}>
          {t('today.putOff.open')}
        </Button>
        <Popover placement="bottom end">
          <Menu
            className={classes(styles.menu)}
            aria-label={t('today.putOff.openOf', { what })}
            autoFocus="first"
          >
            {usualNames.map((name) => {
              const day = dayAfter(times.now, usual[name])
              return (
                <MenuItem
                  key={name}
                  className={classes(styles.item)}
                  onAction={() => onPutOff(day)}
                >
                  {t(`today.putOff.${name}`, { day: times.day(`${day}T12:00:00`) })}
                </MenuItem>
              )
            })}
            <MenuItem className={classes(styles.item)} onAction={() => setIsAsking(true)}>
              {t('today.putOff.other')}
            </MenuItem>
          </Menu>
        </Popover>
      </MenuTrigger>
      {isAsking && (
        <DayDialog
          what={what}
          first={dayAfter(times.now, 1)}
          onClose={() => setIsAsking(false)}
          onDay={(day) => {
            setIsAsking(false)
            onPutOff(day)
          }}
        />
      )}
    </>
  )
}

interface DayDialogProps {
  what: string
  /** The first day that can be chosen. */
  first: string
  onClose: () => void
  onDay: (day: string) => void
}

function DayDialog({ what, first, onClose, onDay }: DayDialogProps) {
  const t = useWords()
  const [day, setDay] = useState('')
  const [isTried, setIsTried] = useState(false)
  const isGood = day >= first
  function submit(event: FormEvent) {
    event.preventDefault()
    setIsTried(true)
    if (isGood) onDay(day)
  }
  return (
    <SheetDialog title={t('today.putOff.dialog')} isOpen onClose={onClose}>
      <form noValidate onSubmit={submit} className={styles.form}>
        <p>{what}</p>
        <Field
          label={t('today.putOff.day')}
          isRequired
          problem={isTried && !isGood ? t('today.putOff.dayMissing') : undefined}
        >
          {(control) => (
            <input
              {...control}
              className={field.input}
              type="date"
              min={first}
              value={day}
              onChange={(event) => setDay(event.target.value)}
            />
          )}
        </Field>
        <DialogActions>
          <Button kind="primary" type="submit">
            {t('today.putOff.go')}
          </Button>
        </DialogActions>
      </form>
    </SheetDialog>
  )
}
