/** A process that asks for a long plan and says when the planner is at it: made to be killed. */
import { startPlanning } from '../../main/service/planning-process.ts'
import { wholeYear } from '../engine/season/season-cellar.ts'

const kindIds = ['strawberry', 'raspberry', 'blackcurrant', 'sour_cherry', 'plum', 'quince', 'sloe']
const toPlan = { facts: wholeYear(kindIds, 60), isExplained: true, timeLimitSeconds: 3600 }

startPlanning(toPlan, {
  onMessage: ({ kind }) => console.log(kind),
  onEnded: () => console.log('ended'),
})
// The planner alone keeps nobody alive.
setInterval(() => undefined, 1000)
