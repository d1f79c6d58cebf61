/** Who may import whom, why not, and what to do instead. */

export interface Rule {
  /** Folders or files, from the project's root. */
  from: readonly string[]
  /** Within those, who is free of the rule. */
  except?: readonly string[]
  /** Everything else is forbidden. */
  only?: readonly string[]
  never?: readonly string[]
  reason: string
  remedy: string
}

const http = ['node:http', 'node:https', 'node:http2', 'node:net', 'http', 'https', 'net']
const everything = ['shared/', 'main/', 'renderer/']

export const rules: readonly Rule[] = [
  {
    from: ['shared/'],
    only: ['shared/', 'zod'],
    reason: 'shared/ is what both processes speak, and stands on nothing of either',
    remedy: 'move what it needs into shared/, or this code into main/ or renderer/',
  },
  {
    from: ['main/engine/'],
    only: ['main/engine/', 'shared/', 'ml-matrix'],
    reason: 'the engine is pure calculation: same input, same answer, to the bit',
    remedy: 'pass what is needed as an argument, from the service',
  },
  {
    from: ['main/'],
    except: ['main/engine/', 'main/cellar/', 'main/demo/'],
    never: ['main/engine/'],
    reason: 'the engine has one face, so that its inside can change',
    remedy: 'import from main/engine/index.ts; export it there if it is missing',
  },
  {
    from: ['main/cellar/'],
    only: ['main/cellar/', 'main/engine/index.ts', 'shared/', 'better-sqlite3', 'node:', 'zod'],
    reason: 'the cellar keeps rows and knows nothing of who asks',
    remedy: 'hand it what it needs, from the service',
  },
  {
    from: ['main/papers/'],
    never: ['main/cellar/', 'main/service/', 'main/demo/', 'main/hosts/', 'electron'],
    reason: 'a paper is made from what it is given',
    remedy: 'let the service read, and pass the result in',
  },
  {
    from: ['main/service/'],
    never: ['main/demo/', 'main/hosts/', 'main/start.ts'],
    reason: 'the service does not know its host, nor who fills the demo',
    remedy: 'take it as an option of createService',
  },
  {
    from: ['main/demo/'],
    only: ['main/demo/', 'main/service/service.ts', 'main/engine/index.ts', 'shared/'],
    reason: 'the demo is made through the same moves as a maker makes, never by writing tables',
    remedy: 'call dispatch',
  },
  {
    from: ['main/hosts/browser/'],
    never: ['main/hosts/electron/'],
    reason: 'each host stands alone',
    remedy: 'move what both need to main/hosts/',
  },
  {
    from: ['main/hosts/electron/'],
    never: ['main/hosts/browser/'],
    reason: 'each host stands alone',
    remedy: 'move what both need to main/hosts/',
  },
  {
    from: everything,
    except: ['main/hosts/electron/'],
    never: ['electron'],
    reason: 'only the Electron host runs in Electron; requiring it elsewhere starts a download',
    remedy: 'put it behind the Bridge or a host option',
  },
  {
    from: everything,
    except: ['main/hosts/browser/'],
    never: http,
    reason: 'one place listens, and only on 127.0.0.1; nothing calls out',
    remedy: 'serve it from main/hosts/browser/',
  },
  {
    from: everything,
    except: ['main/cellar/'],
    never: ['better-sqlite3'],
    reason: 'SQL is written in one place',
    remedy: 'add a function to the store of that table in main/cellar/',
  },
  {
    from: ['renderer/'],
    never: ['main/', 'node:', 'better-sqlite3', 'electron'],
    reason: 'a page runs in a sandbox and sees shared/ only',
    remedy: 'ask the service by a channel',
  },
  {
    from: ['renderer/'],
    except: ['renderer/charts/'],
    never: ['recharts'],
    reason: 'charts take finished series; their library can be changed in one place',
    remedy: 'add a composition to renderer/charts/',
  },
  {
    from: ['renderer/parts/', 'renderer/charts/'],
    never: ['renderer/screens/'],
    reason: 'what screens share cannot know them',
    remedy: 'pass it in as a property',
  },
  {
    from: everything,
    never: ['test/', 'out/', 'typescript', 'vitest', '@playwright/test'],
    reason: 'the product does not stand on its tests or tools',
    remedy: 'move what is needed into the product',
  },
]
