/** Shows the link in a window of its own where a browser can do that, else in the usual browser. */
import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

/** `onFailure` is called when no window could be opened. */
export function openWindow(link: string, onFailure: () => void): void {
  const [command, ...args] = windowCommand(link)
  if (command === undefined) return onFailure()
  const child = spawn(command, args, { stdio: 'ignore', detached: true })
  child.on('error', onFailure)
  child.unref()
}

function windowCommand(link: string): string[] {
  const { platform, env } = process
  if (platform === 'linux' && !env['DISPLAY'] && !env['WAYLAND_DISPLAY']) return []
  const browser = appBrowsers().find((file) => existsSync(file))
  if (browser) return [browser, `--app=${link}`, '--no-first-run', ...sandboxArguments()]
  switch (platform) {
    case 'win32':
      return ['rundll32', 'url.dll,FileProtocolHandler', link]
    case 'darwin':
      return ['open', link]
    default:
      return ['xdg-open', link]
  }
}

/** Chromium refuses to run as root with its sandbox. */
const sandboxArguments = () => (process.getuid?.() === 0 ? ['--no-sandbox'] : [])

/** Browsers that can open a window without tabs and address bar. */
function appBrowsers(): string[] {
  const { platform, env } = process
  switch (platform) {
    case 'win32':
      return [env['ProgramFiles'], env['ProgramFiles(x86)'], env['LOCALAPPDATA']]
        .filter((folder) => folder !== undefined)
        .flatMap((folder) => [
          join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
          join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
        ])
    case 'darwin':
      return ['Google Chrome', 'Chromium', 'Microsoft Edge'].map(
        (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
      )
    default:
      return (env['PATH'] ?? '')
        .split(delimiter)
        .flatMap((folder) =>
          [
            'chromium',
            'chromium-browser',
            'google-chrome',
            'google-chrome-stable',
            'microsoft-edge',
          ].map((name) => join(folder, name)),
        )
  }
}
