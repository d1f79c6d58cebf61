/** `npm run licences`: writes THIRD-PARTY.md anew. */
import { writeFileSync } from 'node:fs'
import { pageFile, thirdPartyPage } from './third-party.ts'

writeFileSync(pageFile, await thirdPartyPage())
