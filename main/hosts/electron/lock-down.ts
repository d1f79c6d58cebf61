/** What no page may do, whatever it holds: leave, open windows, ask for the machine. */
import { shell, type App, type Session, type WebContents } from 'electron'

export function lockDown(app: App): void {
  app.on('web-contents-created', (_event, contents: WebContents) => {
    contents.on('will-navigate', (event) => event.preventDefault())
    contents.on('will-redirect', (event) => event.preventDefault())
    contents.on('will-attach-webview', (event) => event.preventDefault())
    contents.setWindowOpenHandler(({ url }) => {
      // Such as a source of a figure: it opens in the maker's own browser.
      if (URL.parse(url)?.protocol === 'https:') void shell.openExternal(url)
      return { action: 'deny' }
    })
  })
}

export function denyPermissions(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
}
