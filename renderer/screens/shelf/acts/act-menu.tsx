/** Everything else that can be done with a lot, in a menu. */
import { Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { classes } from '../../../parts/classes.ts'
import { isPossible, lotActs, type ActLot, type LotActKind } from './act.ts'
import styles from './acts.module.css'

interface ActListProps {
  lot: ActLot
  onChoose: (kind: LotActKind) => void
  /** Acts that stand beside the menu already. */
  without?: readonly LotActKind[]
}

/** The acts as the menu's lines; those that cannot be just now stay in their place, quieter. */
export function ActList({ lot, onChoose, without = [] }: ActListProps) {
  const t = useWords()
  const acts = lotActs.filter((act) => !without.includes(act))
  return (
    <Menu
      className={classes(styles.menu)}
      aria-label={t('shelf.lots.moreOf', { name: lot.name })}
      disabledKeys={acts.filter((act) => !isPossible(act, lot))}
      autoFocus="first"
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
  )
}

export function ActMenu(props: ActListProps) {
  const t = useWords()
  return (
    <MenuTrigger>
      <Button aria-label={t('shelf.lots.moreOf', { name: props.lot.name })}>
        {t('shelf.lots.more')}
      </Button>
      <Popover placement="bottom end">
        <ActList {...props} />
      </Popover>
    </MenuTrigger>
  )
}
