/** What can be done to a line of the ledger. */
import { useWords } from '../../app/words/use-words.ts'
import { Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components'
import { Button } from '../button/button.tsx'
import { classes } from '../classes.ts'
import styles from './step-menu.module.css'

export type StepChange = 'amend' | 'strike' | 'history' | 'takeBack' | 'putBack'

const usual: readonly StepChange[] = ['amend', 'strike', 'history']

interface StepMenuProps {
  /** The move in words, to tell this menu from the others. */
  what: string
  /** Left out: those of any move that counts. */
  changes?: readonly StepChange[]
  onChoose: (change: StepChange) => void
}

export function StepMenu({ what, changes = usual, onChoose }: StepMenuProps) {
  const t = useWords()
  return (
    <MenuTrigger>
      <Button kind="quiet" aria-label={t('batch.ledger.changeOf', { what })}>
        {t('batch.ledger.change')}
      </Button>
      <Popover placement="bottom end">
        <Menu className={classes(styles.menu)} aria-label={t('batch.ledger.changeOf', { what })}>
          {changes.map((change) => (
            <MenuItem
              key={change}
              className={classes(styles.item)}
              onAction={() => onChoose(change)}
            >
              {change === 'takeBack' || change === 'putBack'
                ? t(`moves.menu.${change}`)
                : t(`batch.ledger.${change}`)}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  )
}
