/** Hands a text to the maker as a file: a download, since the page's policy lets no foreign frame show it. */
export function handText(fileName: string, text: string, type: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }))
  const link = document.createElement('a')
  link.href = url
  link.download = fileName
  link.click()
  // The browser has taken it by then.
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}
