/** Leads to whatever is typed: everything in the cellar, every screen, and a few actions, by keyboard. */
import { memo, useDeferredValue, useMemo, useState } from 'react'
import {
  Autocomplete,
  Input,
  Label,
  Menu,
  MenuItem,
  SearchField,
  Text,
} from 'react-aria-components'
import { useLocation } from 'wouter'
import { classes } from '../../parts/classes.ts'
import { SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { useWords } from '../words/use-words.ts'
import type { ShortcutId } from '../shortcuts.ts'
import { rankFindings } from './rank-findings.ts'
import { useActions } from './use-actions.ts'
import { useFindings } from './use-findings.ts'
import styles from './finder.module.css'

/** What fits without scrolling on a small window; more letters find the rest. */
const limit = 24

export interface FinderProps {
  isOpen: boolean
  onClose: () => void
  /** Opens another sheet in its place. */
  onOpen: (sheet: ShortcutId) => void
}

export function Finder({ isOpen, onClose, onOpen }: FinderProps) {
  const t = useWords()
  return (
    <SheetDialog title={t('finder.title')} isOpen={isOpen} onClose={onClose}>
      <Search onClose={onClose} onOpen={onOpen} />
    </SheetDialog>
  )
}

/** Mounted while the finder is open only, so that nothing is read for it before. */
function Search({ onClose, onOpen }: Omit<FinderProps, 'isOpen'>) {
  const t = useWords()
  const [typed, setTyped] = useState('')
  const settled = useDeferredValue(typed)
  // The field at once, what can be found a moment later: a whole cellar is named for it.
  const isShown = useDeferredValue(true, false)
  return (
    <Autocomplete inputValue={typed} onInputChange={setTyped}>
      <SearchField autoFocus>
        <Label className="visually-hidden">{t('finder.label')}</Label>
        <Input className={classes(styles.input)} placeholder={t('finder.label')} />
      </SearchField>
      {isShown && <Found typed={settled} onClose={onClose} onOpen={onOpen} />}
    </Autocomplete>
  )
}

interface FoundProps extends Omit<FinderProps, 'isOpen'> {
  typed: string
}

const Found = memo(function Found({ typed, onClose, onOpen }: FoundProps) {
  const t = useWords()
  const [, navigate] = useLocation()
  const findings = useFindings(useActions(onOpen))
  const found = useMemo(() => rankFindings(findings, typed, limit), [findings, typed])
  const go = (id: string) => {
    const finding = found.find((one) => one.id === id)
    onClose()
    if (finding?.path !== undefined) navigate(finding.path)
    finding?.act?.()
  }
  return (
    <Menu
      aria-label={t('finder.title')}
      className={classes(styles.found)}
      items={found}
      onAction={(key) => go(String(key))}
      renderEmptyState={() => <p className={styles.nothing}>{t('finder.nothing')}</p>}
    >
      {(finding) => (
        <MenuItem className={classes(styles.finding)} textValue={finding.name}>
          <Text slot="label">{finding.name}</Text>
          <Text slot="description">
            {finding.kind === 'screen' && finding.also !== undefined
              ? finding.also
              : [t(`finder.kind.${finding.kind}`), finding.kind !== 'fruit' && finding.also]
                  .filter(Boolean)
                  .join(' · ')}
          </Text>
        </MenuItem>
      )}
    </Menu>
  )
})
