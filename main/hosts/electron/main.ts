/** The Electron host from start to end: one window on the app:// scheme, the service behind IPC. */
import { join } from 'node:path'
import {
  app,
  BrowserWindow,
  dialog,
  ipcMain,
  Menu,
  Notification,
  protocol,
  screen,
  session,
  shell,
} from 'electron'
import { asset } from '../assets.ts'
import { kindOfFile, lookIntoPath } from '../file-to-open.ts'
import { openService } from '../open-service.ts'
import { hostWords } from '../words/host-words.ts'
import { remindDaily } from './daily-reminder.ts'
import { readHandedArguments } from './handed-arguments.ts'
import { denyPermissions, lockDown } from './lock-down.ts'
import { menuTemplate } from './menu.ts'
import { serveCalls } from './serve-calls.ts'
import { readWindowState, writeWindowState } from './window-state.ts'

const home = 'app://ratafia/'
const rendererFolder = join(import.meta.dirname, '..', 'renderer')
const preload = join(import.meta.dirname, '..', 'preload', 'preload.cjs')
let window: BrowserWindow | undefined
/** Kept in sight: one that nothing holds may be gone before it is clicked. */
let notice: Notification | undefined
/** A Mac hands over what was opened before Electron is ready. */
let fileFromMac: string | undefined
let bookFile: string | undefined

protocol.registerSchemesAsPrivileged([
  { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
])
lockDown(app)

// Never await readiness at the top level: Electron gets ready only once this module has run through.
if (app.requestSingleInstanceLock()) {
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit()
  })
  app.on('open-file', (event, file) => {
    event.preventDefault()
    if (bookFile === undefined) fileFromMac = file
    else comeForward(file)
  })
  app.whenReady().then(start).catch(giveUp)
} else {
  app.quit()
}

async function start(): Promise<void> {
  const { isPackaged } = app
  const handed = readHandedArguments(process.argv, { isPackaged, folder: process.cwd() })
  const { service, ownFile, firstPath } = await openService({
    host: 'electron',
    version: app.getVersion(),
    ...handed,
    ...(fileFromMac !== undefined && { fileToOpen: fileFromMac, cellarFile: undefined }),
  })
  bookFile = ownFile
  app.on('will-quit', () => service.close())

  denyPermissions(session.defaultSession)
  protocol.handle('app', async (request) => {
    const { host, pathname } = new URL(request.url)
    if (host !== 'ratafia') return new Response(null, { status: 404 })
    const { status, headers, body } = await asset(rendererFolder, pathname)
    return new Response(body, { status, headers })
  })
  serveCalls(ipcMain, service, home)
  service.onChange(() => {
    for (const { webContents } of BrowserWindow.getAllWindows()) webContents.send('ratafia:changed')
  })

  const showBook = () => shell.showItemInFolder(ownFile)
  const isMac = process.platform === 'darwin'
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate({ isMac, showBook })))
  app.on('second-instance', (_event, argv, folder) =>
    comeForward(readHandedArguments(argv, { isPackaged, folder }).fileToOpen),
  )
  app.on('activate', () => showWindow())
  showWindow(firstPath)
  if (Notification.isSupported())
    app.on(
      'will-quit',
      remindDaily(service, (text) => {
        notice = new Notification(text)
        notice.on('click', () => showWindow())
        notice.show()
      }),
    )
}

/** One book at a time: another has to wait for the end of this one; an archive can be looked into. */
function comeForward(file: string | undefined): void {
  if (file === undefined || file === bookFile) return showWindow()
  let why = hostWords().waits(file)
  try {
    if (kindOfFile(file) === 'archive') return showWindow(lookIntoPath(file))
  } catch (error) {
    why = error instanceof Error ? error.message : String(error)
  }
  showWindow()
  dialog.showErrorBox(hostWords().title.otherBookOpen, why)
}

/** With a path that screen; without one a window that is open keeps its own. */
function showWindow(path?: string): void {
  if (!window) {
    window = openMainWindow(path)
    return
  }
  if (path !== undefined) load(window, path)
  if (window.isMinimized()) window.restore()
  window.focus()
}

function load(into: BrowserWindow, path = '/'): void {
  into.loadURL(path === '/' ? home : `${home}#${path}`).catch(giveUp)
}

function openMainWindow(path?: string): BrowserWindow {
  const stateFile = join(app.getPath('userData'), 'window.json')
  const screens = screen.getAllDisplays().map((display) => display.workArea)
  const kept = readWindowState(stateFile, screens)
  const opened = new BrowserWindow({
    ...(kept?.bounds ?? { width: 1200, height: 800 }),
    minWidth: 480,
    minHeight: 360,
    show: false,
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      // Its dictionaries would be fetched from the network.
      spellcheck: false,
    },
  })
  if (kept?.isMaximised) opened.maximize()
  opened.once('ready-to-show', () => opened.show())
  opened.on('close', () =>
    writeWindowState(stateFile, {
      bounds: opened.getNormalBounds(),
      isMaximised: opened.isMaximized(),
    }),
  )
  opened.on('closed', () => {
    window = undefined
  })
  load(opened, path)
  return opened
}

function giveUp(error: unknown): void {
  dialog.showErrorBox(
    hostWords().title.cannotStart,
    error instanceof Error ? error.message : String(error),
  )
  app.exit(1)
}
