/** All kinds of moves, likely ones first: chosen by a press, by arrows, or by their letter. */
import { useRef, useState, type KeyboardEvent, type Ref } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { classes } from '../../../parts/classes.ts'
import type { KindGroups, LoggedKind } from '../../../parts/moves/kinds.ts'
import styles from './kind-picker.module.css'

interface KindPickerProps {
  groups: KindGroups
  chosen: LoggedKind | undefined
  onChoose: (kind: LoggedKind) => void
  /** Put on the first kind, which `l` goes to. */
  firstRef: Ref<HTMLButtonElement>
}

export function KindPicker({ groups, chosen, onChoose, firstRef }: KindPickerProps) {
  const t = useWords()
  const [showsAll, setShowsAll] = useState(false)
  const toolbar = useRef<HTMLDivElement>(null)
  const letters = new Map<string, LoggedKind>(
    [...groups.likely, ...groups.work, ...groups.book].map((kind) => [
      t(`batch.log.letter.${kind}`),
      kind,
    ]),
  )

  function onKeyDown(event: KeyboardEvent) {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    const buttons = [...(toolbar.current?.querySelectorAll<HTMLElement>('[data-kind]') ?? [])]
    const at = buttons.indexOf(document.activeElement as HTMLElement)
    const to = nextFocus(event.key, at, buttons.length)
    if (to !== undefined) {
      event.preventDefault()
      buttons[to]?.focus()
      return
    }
    const kind = letters.get(event.key.toLowerCase())
    if (!kind) return
    // The letter must not also be typed into the field that is about to get the focus.
    event.preventDefault()
    onChoose(kind)
  }

  const group = (name: 'likely' | 'work' | 'book', kinds: readonly LoggedKind[]) => (
    <fieldset className={styles.group} aria-label={t(`batch.log.${name}`)}>
      {name !== 'likely' && <span className={styles.groupName}>{t(`batch.log.${name}`)}</span>}
      <div className={styles.kinds}>
        {kinds.map((kind, index) => (
          <button
            key={kind}
            type="button"
            data-kind={kind}
            {...(name === 'likely' && index === 0 && { ref: firstRef })}
            className={classes(styles.kind, name === 'likely' && styles.likely)}
            aria-pressed={kind === chosen}
            aria-keyshortcuts={t(`batch.log.letter.${kind}`)}
            onClick={() => onChoose(kind)}
          >
            <Underlined text={t(`codes.move.${kind}`)} letter={t(`batch.log.letter.${kind}`)} />
          </button>
        ))}
        {name === 'likely' && (
          <Button kind="quiet" onPress={() => setShowsAll(!showsAll)}>
            {t(showsAll ? 'batch.log.fewer' : 'batch.log.more')}
          </Button>
        )}
      </div>
    </fieldset>
  )

  return (
    // oxlint-disable-next-line jsx-a11y/interactive-supports-focus -- its buttons take the focus
    <div
      ref={toolbar}
      className={styles.toolbar}
      role="toolbar"
      aria-label={t('batch.log.title')}
      onKeyDown={onKeyDown}
    >
      {group('likely', groups.likely)}
      {showsAll && group('work', groups.work)}
      {showsAll && group('book', groups.book)}
    </div>
  )
}

function nextFocus(key: string, at: number, count: number): number | undefined {
  if (count === 0) return undefined
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return (at + 1) % count
    case 'ArrowLeft':
    case 'ArrowUp':
      return (at - 1 + count) % count
    case 'Home':
      return 0
    case 'End':
      return count - 1
    default:
      return undefined
  }
}

function Underlined({ text, letter }: { text: string; letter: string }) {
  const at = text.toLowerCase().indexOf(letter)
  if (at < 0) return text
  return (
    <>
      {text.slice(0, at)}
      <u>{text.charAt(at)}</u>
      {text.slice(at + 1)}
    </>
  )
}
