/** Which screen a path leads to; each is fetched when it is first opened. */
import { lazy, Suspense } from 'react'
import { Redirect, Route, Switch } from 'wouter'
import { chapterOf } from '../screens/handbook/chapters.ts'
import { viewOf as seasonViewOf } from '../screens/season/views.ts'
import { viewOf } from '../screens/shelf/views.ts'
import { NotFoundScreen } from '../screens/later/not-found-screen.tsx'

const TodayScreen = lazy(async () => ({
  default: (await import('../screens/today/today-screen.tsx')).TodayScreen,
}))
const BatchesScreen = lazy(async () => ({
  default: (await import('../screens/batches/batches-screen.tsx')).BatchesScreen,
}))
const BatchScreen = lazy(async () => ({
  default: (await import('../screens/batch/batch-screen.tsx')).BatchScreen,
}))
const CompareScreen = lazy(async () => ({
  default: (await import('../screens/batches/compare/compare-screen.tsx')).CompareScreen,
}))
const DraftsScreen = lazy(async () => ({
  default: (await import('../screens/draft/drafts-screen.tsx')).DraftsScreen,
}))
const DraftScreen = lazy(async () => ({
  default: (await import('../screens/draft/draft-screen.tsx')).DraftScreen,
}))
const BenchScreen = lazy(async () => ({
  default: (await import('../screens/bench/bench-screen.tsx')).BenchScreen,
}))
const MarryScreen = lazy(async () => ({
  default: (await import('../screens/marry/marry-screen.tsx')).MarryScreen,
}))
const MendScreen = lazy(async () => ({
  default: (await import('../screens/marry/mend/mend-screen.tsx')).MendScreen,
}))
const ShelfScreen = lazy(async () => ({
  default: (await import('../screens/shelf/shelf-screen.tsx')).ShelfScreen,
}))
const LotScreen = lazy(async () => ({
  default: (await import('../screens/shelf/lot/lot-screen.tsx')).LotScreen,
}))
const StocktakeScreen = lazy(async () => ({
  default: (await import('../screens/shelf/stocktake/stocktake-screen.tsx')).StocktakeScreen,
}))
const LineageScreen = lazy(async () => ({
  default: (await import('../screens/lineage/lineage-screen.tsx')).LineageScreen,
}))
const LabelsScreen = lazy(async () => ({
  default: (await import('../screens/labels/labels-screen.tsx')).LabelsScreen,
}))
const SeasonScreen = lazy(async () => ({
  default: (await import('../screens/season/season-screen.tsx')).SeasonScreen,
}))
const CellarRoomScreen = lazy(async () => ({
  default: (await import('../screens/cellar-room/cellar-room-screen.tsx')).CellarRoomScreen,
}))
const MovesScreen = lazy(async () => ({
  default: (await import('../screens/moves/moves-screen.tsx')).MovesScreen,
}))
const FruitsScreen = lazy(async () => ({
  default: (await import('../screens/fruits/fruits-screen.tsx')).FruitsScreen,
}))
const FruitScreen = lazy(async () => ({
  default: (await import('../screens/fruits/fruit-screen.tsx')).FruitScreen,
}))
const HandbookScreen = lazy(async () => ({
  default: (await import('../screens/handbook/handbook-screen.tsx')).HandbookScreen,
}))
const BringInScreen = lazy(async () => ({
  default: (await import('../screens/bring-in/bring-in-screen.tsx')).BringInScreen,
}))
const LookIntoScreen = lazy(async () => ({
  default: (await import('../screens/safekeeping/look-into/look-into-screen.tsx')).LookIntoScreen,
}))
const SafekeepingScreen = lazy(async () => ({
  default: (await import('../screens/safekeeping/safekeeping-screen.tsx')).SafekeepingScreen,
}))

export const Routes = () => (
  <Suspense fallback={null}>
    <Switch>
      <Route path="/">
        <Redirect to="/today" replace />
      </Route>
      <Route path={/^\/today(?:\/(?<part>calendar))?$/}>
        {({ part }) => <TodayScreen isCalendarOpen={part === 'calendar'} />}
      </Route>
      <Route path="/batches" component={BatchesScreen} />
      {/* One route, so that what was recorded last can still be undone once its task is done. */}
      <Route path={/^\/batches\/(?<id>[^/]+)(?:\/do\/(?<task>[^/]+))?$/}>
        {({ id, task }) => (
          <BatchScreen
            key={id}
            batchId={decodeURIComponent(id ?? '')}
            taskId={task && decodeURIComponent(task)}
          />
        )}
      </Route>
      <Route path="/compare/:ids?">
        {({ ids }) => <CompareScreen ids={decodeURIComponent(ids ?? '').split(',')} />}
      </Route>
      <Route path="/draft" component={DraftsScreen} />
      <Route path="/draft/:id">
        {({ id }) => <DraftScreen key={id} draftId={decodeURIComponent(id)} />}
      </Route>
      <Route path="/marry" component={MarryScreen} />
      <Route path="/marry/mend/:jarId?">
        {({ jarId }) => <MendScreen jarId={jarId && decodeURIComponent(jarId)} />}
      </Route>
      {/* One route, so that wishes being written stay while another view is looked at. */}
      <Route path={/^\/season(?:\/(?<view>[^/]+))?$/}>
        {({ view }) => <SeasonScreen view={seasonViewOf(view)} />}
      </Route>
      <Route path="/bench/:tool?">{({ tool }) => <BenchScreen toolId={tool} />}</Route>
      {/* One route, so that what was done last can still be undone on another view. */}
      <Route path={/^\/shelf(?:\/view\/(?<view>[^/]+))?$/}>
        {({ view }) => <ShelfScreen view={viewOf(view)} />}
      </Route>
      <Route path="/shelf/stocktake/:shelfId?">
        {({ shelfId }) => {
          const id = shelfId === undefined ? null : decodeURIComponent(shelfId)
          return <StocktakeScreen key={id} shelfId={id} />
        }}
      </Route>
      <Route path="/shelf/:id">
        {({ id }) => <LotScreen key={id} bottleLotId={decodeURIComponent(id)} />}
      </Route>
      <Route path="/lineage/lot/:lotId">
        {({ lotId }) => <LineageScreen key={lotId} lotId={decodeURIComponent(lotId)} />}
      </Route>
      <Route path={/^\/labels(?:\?(?<query>.*))?$/}>
        {({ query }) => <LabelsScreen query={query} />}
      </Route>
      <Route path="/cellar-room" component={CellarRoomScreen} />
      <Route path="/fruits" component={FruitsScreen} />
      <Route path="/fruits/:id">
        {({ id }) => <FruitScreen key={id} fruitId={decodeURIComponent(id)} />}
      </Route>
      <Route path="/moves" component={MovesScreen} />
      <Route path="/bring-in/:kind?">
        {({ kind }) => <BringInScreen kind={kind === 'stock' ? 'stock' : 'bottles'} />}
      </Route>
      <Route path="/look-into/:file">
        {({ file }) => <LookIntoScreen key={file} file={decodeURIComponent(file)} />}
      </Route>
      <Route path="/safekeeping" component={SafekeepingScreen} />
      <Route path="/handbook/:chapter?">
        {({ chapter }) => <HandbookScreen chapter={chapterOf(chapter)} />}
      </Route>
      <Route component={NotFoundScreen} />
    </Switch>
  </Suspense>
)
