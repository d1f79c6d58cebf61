// The mistake that only real Electron, or a faithful double, shows: this never gets any further.
import { app } from 'electron'

await app.whenReady()
