/** A paper that the service made, handed to the maker as a download: the page's policy lets no foreign frame show it. */
import type { Answer } from '../../../shared/channels.ts'

export function handPaper({ fileName, pdfBase64 }: Answer<'labels.paper'>) {
  const bytes = Uint8Array.from(atob(pdfBase64), (letter) => letter.charCodeAt(0))
  const url = URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' }))
  const link = document.createElement('a')
  link.href = url
  link.download = fileName
  link.click()
  // The browser has taken it by the next turn of the loop.
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}
