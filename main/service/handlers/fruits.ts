/** The fruit library as this cellar keeps it: reading, editing a copy, fruits of one's own. */
import { isFruitNamed, putFruit, removeFruit } from '../../cellar/fruit-store.ts'
import { explainSource, fruitLibrary, keptFruit } from '../../engine/index.ts'
import type { Fruit, FruitPage, Range } from '../../../shared/schemas/fruits.ts'
import { learnedOf } from '../learned-fruit.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { Session } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

function page(session: Session, fruitId: string): FruitPage {
  const fruit = session.fruits.find(fruitId)
  if (!fruit) throw notFound('fruit', fruitId)
  const library = fruitLibrary.get(fruitId)
  const learned = learnedOf(session, fruitId)
  const codes = [fruit, library].flatMap((told) => Object.values(told?.sources ?? {}))
  return {
    fruit,
    origin: session.fruits.originOf(fruitId),
    ...(library && { library }),
    ...(learned && { learned }),
    isUsed: isFruitNamed(session.book, fruitId),
    sourceMeanings: Object.fromEntries(codes.map((code) => [code, explainSource(code)])),
  }
}

/** What is reckoned with must lie within what is said to be possible. */
function mustLieWithin(quantity: string, value: number, range: Range | undefined): void {
  if (!range || (range.low <= value && value <= range.high)) return
  const { low, high } = range
  throw new ServiceError('outOfRange', `${quantity} is ${value}, not within ${low} to ${high}`, {
    quantity,
    value,
    low,
    high,
  })
}

function keep(session: Session, asked: Fruit): void {
  mustLieWithin('drainedLPerKg', asked.drainedLPerKg, asked.drainedRangeLPerKg)
  mustLieWithin('pressedLPerKg', asked.pressedLPerKg, asked.pressedRangeLPerKg)
  const library = fruitLibrary.get(asked.id)
  // A copy is compared with the library, so that a fact put back has its old source again.
  const fruit = keptFruit(asked, library ?? session.fruits.find(asked.id))
  const origin = library ? 'edited' : 'own'
  const changedAt = session.options.now().toISOString()
  session.book.transaction(() => putFruit(session.book, { fruit, origin, changedAt })).immediate()
  session.rereadFruits()
}

export const fruitHandlers: Handlers<ChannelsOf<'fruits'>> = {
  'fruits.list': ({ fruits }) => [...fruits.all],
  'fruits.origins': ({ fruits }) => [...fruits.origins],
  'fruits.page': (session, { fruitId }) => page(session, fruitId),
  'fruits.keep': (session, fruit) => {
    keep(session, fruit)
    return page(session, fruit.id)
  },
  'fruits.reset': (session, { fruitId }) => {
    const { book, fruits } = session
    if (!fruits.find(fruitId)) throw notFound('fruit', fruitId)
    if (fruits.originOf(fruitId) === 'own' && isFruitNamed(book, fruitId))
      throw new ServiceError('stillInUse', `fruit ${fruitId} is named in the book`, { id: fruitId })
    book.transaction(() => removeFruit(book, fruitId)).immediate()
    session.rereadFruits()
    return {}
  },
}
