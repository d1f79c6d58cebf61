/** The native menu: the roles that every desktop program has, and the way to the book's file. */
import type { MenuItemConstructorOptions } from 'electron'
import { hostWords } from '../words/host-words.ts'

export function menuTemplate(options: {
  isMac: boolean
  showBook: () => void
}): MenuItemConstructorOptions[] {
  return [
    ...(options.isMac ? [{ role: 'appMenu' } as const] : []),
    { role: 'fileMenu' },
    { role: 'editMenu' },
    { role: 'viewMenu' },
    { role: 'windowMenu' },
    {
      role: 'help',
      submenu: [
        { id: 'show-book', label: hostWords().showBook, click: options.showBook },
        ...(options.isMac ? [] : [{ role: 'about' } as const]),
      ],
    },
  ]
}
