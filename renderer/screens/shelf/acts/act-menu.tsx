/** Everything else that can be done with a lot, in a menu. */
import { Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { classes } from '../../../parts/classes.ts'
import { isPossible, lotActs, type ActLot, type LotActKind } from './act.ts'
import styles from './acts.module.css'

export interface ActMenuProps {
  lot: ActLot
  onChoose: (kind: LotActKind) => void
  /** Acts that stand beside the menu already. */
  without?: readonly LotActKind[]
  kind?: 'plain' | 'quiet'
  excludeFromTabOrder?: boolean
}

export function ActMenu(props: ActMenuProps) {
  const { lot, onChoose, without = [], kind = 'quiet', excludeFromTabOrder = false } = props
  const t = useWords()
  const acts = lotActs.filter((act) => !without.includes(act))
  return (
    <MenuTrigger>
      <Button
        kind={kind}
        aria-label={t('shelf.lots.moreOf', { name: lot.name })}
        excludeFromTabOrder={excludeFromTabOrder}
      >
        {t('shelf.lots.more')}
      </Button>
      <Popover placement="bottom end">
        <Menu
          className={classes(styles.menu)}
          aria-label={t('shelf.lots.moreOf', { name: lot.name })}
          disabledKeys={acts.filter((act) => !isPossible(act, lot))}
        >
          {acts.map((act) => (
            <MenuItem
              key={act}
              id={act}
              className={classes(styles.item)}
              onAction={() => onChoose(act)}
            >
              {t(`shelf.act.${act}.name`)}
            </MenuItem>
          ))}
          <MenuItem
            id="label"
            className={classes(styles.item)}
            href={`/labels?lots=${encodeURIComponent(lot.id)}`}
          >
            {t('shelf.lots.label')}
          </MenuItem>
        </Menu>
      </Popover>
    </MenuTrigger>
  )
}
