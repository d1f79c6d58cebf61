/** Shows the whole window, or one part, over a fake bridge, at a path. */
import { cleanup, configure, render } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import type { ReactNode } from 'react'
import { I18nextProvider } from 'react-i18next'
import { afterEach } from 'vitest'
import type { Settings } from '../../shared/channels.ts'
import { App } from '../../renderer/app/app.tsx'
import { BridgeProvider } from '../../renderer/app/bridge-context.tsx'
import { usualSettings } from '../../renderer/app/settings-context.ts'
import { SettingsProvider } from '../../renderer/app/settings.tsx'
import { i18n } from '../../renderer/app/words/i18n.ts'
import { cellar } from './cellar-fixture.ts'
import { fakeBridge, type Answers } from './fake-bridge.ts'

afterEach(cleanup)

// A screen is fetched when it is first opened: on a busy machine that takes its time.
configure({ asyncUtilTimeout: 10_000 })

export function showApp(path: string, answers: Answers = {}) {
  window.location.hash = path
  const bridge = fakeBridge({ ...cellar, ...answers })
  return { bridge, user: userEvent.setup(), ...render(<App bridge={bridge} />) }
}

export function showPart(
  part: ReactNode,
  { answers = {}, settings = {} }: { answers?: Answers; settings?: Partial<Settings> } = {},
) {
  const bridge = fakeBridge({ ...cellar, ...answers })
  const shown = render(
    <I18nextProvider i18n={i18n} defaultNS="words">
      <BridgeProvider bridge={bridge}>
        <SettingsProvider settings={{ ...usualSettings, ...settings }}>{part}</SettingsProvider>
      </BridgeProvider>
    </I18nextProvider>,
  )
  return { bridge, user: userEvent.setup(), ...shown }
}
