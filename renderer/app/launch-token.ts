/** This launch's secret, and the screen to begin with: it comes in the link's fragment and must not stay in sight. */
const fragment = /^#([\w-]{43})(\/.*)?$/
const storageKey = 'ratafia.token'

/** The secret from the link, or the one this tab was opened with; empty when there is neither. */
export function launchToken({ location, history, sessionStorage }: Window): string {
  const [, fromLink, path = '/'] = fragment.exec(location.hash) ?? []
  if (fromLink === undefined) return sessionStorage.getItem(storageKey) ?? ''
  sessionStorage.setItem(storageKey, fromLink)
  history.replaceState(null, '', `#${path}`)
  return fromLink
}
