/** All that a page in Electron can reach of the main process. */
import { contextBridge, ipcRenderer } from 'electron'
import type { Bridge } from '../../../shared/channels.ts'

const bridge: Bridge = {
  call: (name, request) => ipcRenderer.invoke('ratafia:call', name, request),
  onChange: (listener) => {
    // The event object would hand the page a way to the raw channel.
    const tell = () => listener()
    ipcRenderer.on('ratafia:changed', tell)
    return () => void ipcRenderer.removeListener('ratafia:changed', tell)
  },
}

contextBridge.exposeInMainWorld('ratafia', bridge)
