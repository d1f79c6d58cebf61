/** What no page may do, whatever it holds: leave, open windows, ask for the machine. */
import type { App, Session, WebContents } from 'electron'

export function lockDown(app: App): void {
  app.on('web-contents-created', (_event, contents: WebContents) => {
    contents.on('will-navigate', (event) => event.preventDefault())
    contents.on('will-redirect', (event) => event.preventDefault())
    contents.on('will-attach-webview', (event) => event.preventDefault())
    // No page has a link that leads out, so nothing is handed to the system either.
    contents.setWindowOpenHandler(() => ({ action: 'deny' }))
  })
}

export function denyPermissions(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
}
