import { screen } from '@testing-library/react'
import { afterAll, describe, expect, it } from 'vitest'
import { speak } from '../../../../renderer/app/words/i18n.ts'
import { useWords } from '../../../../renderer/app/words/use-words.ts'
import { showPart } from '../../show.tsx'

function Told() {
  const t = useWords()
  return (
    <>
      <p>{t('moves.lead', { count: 12_458 })}</p>
      <p>{t('cellarRoom.lead', { count: 1, all: 1200 })}</p>
    </>
  )
}

const said = () => screen.getAllByText(/\d/).map(({ textContent }) => textContent)

afterAll(() => speak('en'))

describe('useWords', () => {
  it.each([
    ['en', 'en-GB', ['12,458 moves', '1 of 1,200 vessels stands empty.']],
    ['en', 'de-DE', ['12.458 moves', '1 of 1.200 vessels stands empty.']],
    ['pl', 'pl-PL', ['12\u00a0458 wpisów', '1 naczynie z 1200 stoi puste.']],
  ] as const)('writes counts in %s as %s does', async (language, locale, told) => {
    await speak(language)
    showPart(<Told />, { settings: { locale } })
    expect(said()).toEqual(told)
  })
})
