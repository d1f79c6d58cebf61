/** `npm run icons`: the package's pictures, drawn from the emblem; the packager makes the rest of them. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { chromiumLaunch } from './e2e/chromium.ts'

const root = join(import.meta.dirname, '..')
const emblem = readFileSync(join(root, 'renderer', 'app', 'emblem.svg'), 'utf8')
const target = join(root, 'main', 'hosts', 'electron', 'icon')

const browser = await chromium.launch(chromiumLaunch())
try {
  for (const sizePx of [512, 1024]) {
    const page = await browser.newPage({ viewport: { width: sizePx, height: sizePx } })
    await page.setContent(`<style>body { margin: 0 } svg { display: block }</style>${emblem}`)
    const name = `${sizePx}x${sizePx}.png`
    await page.screenshot({ path: join(target, name), omitBackground: true })
    await page.close()
    console.log(name)
  }
} finally {
  await browser.close()
}
