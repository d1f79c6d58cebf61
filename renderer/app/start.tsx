import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import './theme/fonts.css'
import './theme/tokens.css'
import './theme/base.css'
import './words/i18n.ts'
import { App } from './app.tsx'
import { bridge } from './bridge.ts'

const root = document.getElementById('root')
if (!root) throw new Error('index.html has no #root')
createRoot(root).render(
  <StrictMode>
    <App bridge={bridge} />
  </StrictMode>,
)
