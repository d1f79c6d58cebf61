import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import './theme/fonts.css'
import './theme/tokens.css'
import './theme/base.css'
import './theme/print.css'
import { App } from './app.tsx'
import { bridge } from './bridge.ts'
import { guessedLanguage, speak } from './words/i18n.ts'

const root = document.getElementById('root')
if (!root) throw new Error('index.html has no #root')
await speak(guessedLanguage()).catch(() => undefined)
createRoot(root).render(
  <StrictMode>
    <App bridge={bridge} />
  </StrictMode>,
)
