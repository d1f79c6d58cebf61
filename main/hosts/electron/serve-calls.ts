/** The one IPC door: calls from our own page, and from nothing else, reach the service. */
import type { IpcMain, IpcMainInvokeEvent } from 'electron'
import type { Service } from '../../service/service.ts'
import { answerCall } from '../answer-call.ts'

/** `home` is where our page lives; a frame in it, or any other page, is refused. */
export function serveCalls(
  ipcMain: Pick<IpcMain, 'handle'>,
  service: Pick<Service, 'dispatch'>,
  home: string,
): void {
  ipcMain.handle('ratafia:call', ({ senderFrame }, name: unknown, request: unknown) => {
    if (!isOurPage(senderFrame, home)) throw new Error('not for this page')
    return answerCall(service, name, request)
  })
}

const isOurPage = (frame: IpcMainInvokeEvent['senderFrame'], home: string) =>
  frame !== null && frame.parent === null && frame.url.startsWith(home)
