/** Notices on the desktop as this window may show them: by the browser, or not at all in Electron, which shows its own. */

export type NoticeRight = 'granted' | 'denied' | 'notAsked' | 'missing' | 'byHost'

export function noticeRight(): NoticeRight {
  if (window.ratafia) return 'byHost'
  if (!('Notification' in window)) return 'missing'
  return Notification.permission === 'default' ? 'notAsked' : Notification.permission
}

/** Must be called from a press: browsers ask nobody out of the blue. */
export async function askForNotices(): Promise<NoticeRight> {
  if (noticeRight() === 'notAsked') await Notification.requestPermission()
  return noticeRight()
}

export function showNotice(title: string, body: string, onClick: () => void): void {
  const notice = new Notification(title, { body, tag: 'ratafia-today' })
  notice.addEventListener('click', () => {
    window.focus()
    notice.close()
    onClick()
  })
}
