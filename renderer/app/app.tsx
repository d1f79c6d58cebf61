/** The whole window: the book's state first, then the first-run screen or the shell with a screen. */
import { I18nextProvider } from 'react-i18next'
import { RouterProvider } from 'react-aria-components'
import { Router, useLocation } from 'wouter'
import { navigate, useHashLocation } from 'wouter/use-hash-location'
import type { Bridge } from '../../shared/channels.ts'
import { ReadState } from '../parts/failure/read-state.tsx'
import { FirstRunScreen } from '../screens/first-run/first-run-screen.tsx'
import { RescueScreen } from '../screens/rescue/rescue-screen.tsx'
import { BridgeProvider } from './bridge-context.tsx'
import { ErrorBoundary } from './error-boundary.tsx'
import { useRead } from './queries.ts'
import { Routes } from './routes.tsx'
import { SettingsProvider } from './settings.tsx'
import { Shell } from './shell.tsx'
import { useTheme } from './theme/use-theme.ts'
import { useSpoken } from './use-spoken.ts'
import { i18n } from './words/i18n.ts'

export function App({ bridge }: { bridge: Bridge }) {
  return (
    <I18nextProvider i18n={i18n} defaultNS="words">
      <BridgeProvider bridge={bridge}>
        <RouterProvider navigate={(path) => navigate(path)} useHref={(path) => `#${path}`}>
          {/* oxlint-disable-next-line react/hooks -- wouter takes its location hook as a prop */}
          <Router hook={useHashLocation}>
            <OpenBook />
          </Router>
        </RouterProvider>
      </BridgeProvider>
    </I18nextProvider>
  )
}

/** Screens that an empty book can open: they put something in. */
const fillsBook = /^\/(?:bring-in|look-into)(?:\/|$)/

function OpenBook() {
  const status = useRead('cellar.status', {})
  const [location] = useLocation()
  const settings = status.data?.settings
  useTheme(settings?.theme)
  const isSpoken = useSpoken(settings)
  // Without a book there is but one thing to do.
  const isDamaged = status.error?.reply.code === 'bookDamaged'
  const rescue = useRead('rescue.state', {}, { isEnabled: isDamaged })
  if (isDamaged && rescue.data) return <RescueScreen state={rescue.data} />
  if (!isSpoken) return null
  return (
    <ReadState query={status}>
      {(cellar) => (
        <SettingsProvider settings={cellar.settings}>
          {cellar.isEmpty && !cellar.isDemo && !fillsBook.test(location) ? (
            <FirstRunScreen settings={cellar.settings} />
          ) : (
            <Shell cellar={cellar}>
              <ErrorBoundary resetKey={location}>
                <Routes />
              </ErrorBoundary>
            </Shell>
          )}
        </SettingsProvider>
      )}
    </ReadState>
  )
}
