/** What stands round every screen: the way between screens, the demo's banner, the settings. */
import { useState, type ReactNode } from 'react'
import { useWords } from './words/use-words.ts'
import { useLocation } from 'wouter'
import type { CellarStatus } from '../../shared/channels.ts'
import { Button, ButtonLink } from '../parts/button/button.tsx'
import { Vessel } from '../parts/vessel/vessel.tsx'
import { DemoBanner } from './demo-banner.tsx'
import { Finder } from './finder/finder.tsx'
import { KeysDialog } from './keys-dialog.tsx'
import { screens } from './screens.ts'
import { SettingsDialog } from './settings-dialog.tsx'
import { useShortcuts, type ShortcutId } from './shortcuts.ts'
import { UndoNotice } from './undo/undo-notice.tsx'
import { useUndo } from './undo/use-undo.ts'
import { useDailyReminder } from './use-daily-reminder.ts'
import { Tour } from './tour/tour.tsx'
import styles from './shell.module.css'

export function Shell({ cellar, children }: { cellar: CellarStatus; children: ReactNode }) {
  const t = useWords()
  const [sheet, setSheet] = useState<ShortcutId>()
  const [tour, setTour] = useState<number>()
  const close = () => setSheet(undefined)
  const undoing = useUndo()
  useShortcuts((id) => {
    if (id === 'undo') undoing.undo?.()
    else if (id === 'redo') undoing.redo?.()
    else setSheet(id)
  })
  useDailyReminder(cellar.settings.reminders)
  return (
    <div className={styles.shell}>
      <a
        className={styles.skip}
        href="#content"
        onClick={(event) => {
          // The fragment is the screen's path: move the focus without touching it.
          event.preventDefault()
          document.getElementById('content')?.focus()
        }}
      >
        {t('shell.skip')}
      </a>
      <header className={styles.rail}>
        <Brand />
        <Navigation />
        <div className={styles.foot}>
          <Button kind="quiet" onPress={() => setSheet('find')}>
            {t('finder.open')}
          </Button>
          <ButtonLink kind="quiet" href="/handbook">
            {t('handbook.open')}
          </ButtonLink>
          <Button kind="quiet" onPress={() => setSheet('settings')}>
            {t('shell.settings.open')}
          </Button>
        </div>
      </header>
      <div className={styles.main}>
        {cellar.isDemo && <DemoBanner onTour={() => setTour(0)} />}
        <main className={styles.content} id="content" tabIndex={-1}>
          {children}
        </main>
        {cellar.isDemo && tour !== undefined && (
          <Tour at={tour} onGo={setTour} onEnd={() => setTour(undefined)} />
        )}
      </div>
      <UndoNotice undoing={undoing} />
      <SettingsDialog settings={cellar.settings} isOpen={sheet === 'settings'} onClose={close} />
      <KeysDialog isOpen={sheet === 'keys'} onClose={close} />
      <Finder isOpen={sheet === 'find'} onClose={close} onOpen={setSheet} />
    </div>
  )
}

function Brand() {
  const t = useWords()
  return (
    <p className={styles.brand}>
      <Vessel
        shape="demijohn"
        capacityMl={5000}
        heightPx={34}
        fillMl={3100}
        liquidMl={3100}
        colour="#7a1f3d"
        isDecorative
      />
      {t('shell.name')}
    </p>
  )
}

function Navigation() {
  const t = useWords()
  const [location] = useLocation()
  return (
    <nav className={styles.navigation} aria-label={t('shell.navigation')}>
      <ul>
        {screens.map((screen) => {
          const isHere = location === screen.path || location.startsWith(`${screen.path}/`)
          return (
            <li key={screen.path}>
              <a href={`#${screen.path}`} aria-current={isHere ? 'page' : undefined}>
                {t(`shell.screens.${screen.name}`)}
              </a>
            </li>
          )
        })}
      </ul>
    </nav>
  )
}
