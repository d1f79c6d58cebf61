/**
 * Chromium does not know app://: a page of app://ratafia/ is shown as https://ratafia.app.test/,
 * answered by the app's own protocol handler. Nothing else reaches any network.
 */
import type { BrowserContext, Route } from '@playwright/test'
import { cancellable, type Control } from './control.ts'

export const toWeb = (url: string): string =>
  url.replace(/^app:\/\/([^/]+)/, (_all, host: string) => `https://${host}.app.test`)

export const toApp = (url: string): string =>
  url.replace(/^https:\/\/([^/]+)\.app\.test/, (_all, host: string) => `app://${host}`)

export async function serveSchemes(context: BrowserContext, control: Control): Promise<void> {
  await context.route(/.*/, async (route) => {
    try {
      await answer(route, control)
    } catch (error) {
      control.errors.push(error)
      await route.abort()
    }
  })
}

async function answer(route: Route, control: Control): Promise<void> {
  const request = route.request()
  const url = toApp(request.url())
  const handler = control.schemes.get(url.split(':')[0] ?? '')
  // "No content" leaves a page where it is; a failed request would show Chromium's error page.
  if (request.isNavigationRequest() && leaves(control, url)) return route.fulfill({ status: 204 })
  if (!handler) throw new Error(`electron double: a page asked the network for ${url}`)
  const response = await handler(new Request(url, { headers: await request.allHeaders() }))
  await route.fulfill({
    status: response.status,
    headers: Object.fromEntries(response.headers),
    body: Buffer.from(await response.arrayBuffer()),
  })
}

/** True when a page tried to go somewhere by itself, and the app, asked as Electron asks, forbade it. */
function leaves(control: Control, url: string): boolean {
  const [window] = control.windows
  if (!window || window.expects(url)) return false
  const event = { ...cancellable(), url }
  window.webContents.emit('will-navigate', event)
  control.calls.push({ api: 'will-navigate', args: [url, event.defaultPrevented] })
  return event.defaultPrevented
}
