/** What the service made, handed to the maker as a download: the page's policy lets no foreign frame show it. */
import type { Answer } from '../../../shared/channels.ts'

export function handPaper({ fileName, pdfBase64 }: Answer<'labels.paper'>) {
  const bytes = Uint8Array.from(atob(pdfBase64), (letter) => letter.charCodeAt(0))
  hand(fileName, new Blob([bytes], { type: 'application/pdf' }))
}

export const handText = (fileName: string, text: string, type: string) =>
  hand(fileName, new Blob([text], { type }))

function hand(fileName: string, file: Blob) {
  const url = URL.createObjectURL(file)
  const link = document.createElement('a')
  link.href = url
  link.download = fileName
  link.click()
  // The browser has taken it by the next turn of the loop.
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}
