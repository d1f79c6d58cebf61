import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { pageFile, thirdPartyPage } from './third-party.ts'

it('THIRD-PARTY.md is what `npm run licences` would write now', async () => {
  expect(readFileSync(pageFile, 'utf8')).toBe(await thirdPartyPage())
})
