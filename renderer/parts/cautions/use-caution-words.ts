/** A caution in words: what it is, and what to do, with the numbers that raised it. */
import { useLibraryWords, useWords } from '../../app/words/use-words.ts'
import type { Caution } from '../../../shared/schemas/cellar.ts'
import { useSettings } from '../../app/settings.tsx'
import { useFruitName, useFruits } from '../names/use-names.ts'
import { useQuantities } from '../quantity/use-quantities.ts'
import { formatUnits } from '../time/format-time.ts'
import { useTimes } from '../time/use-times.ts'

export function useCautionWords(): (caution: Caution) => { title: string; text: string } {
  const t = useWords()
  const say = useLibraryWords()
  const { locale } = useSettings()
  const quantities = useQuantities()
  const times = useTimes()
  const fruits = useFruits()
  const fruitName = useFruitName()

  function amount(code: Caution['code'], value: number): string {
    switch (code) {
      case 'sugarOnlyTooLong':
        return value < 72
          ? formatUnits(value, 'hour', locale)
          : formatUnits(value / 24, 'day', locale)
      case 'stonesTooLong':
        return formatUnits(value, 'day', locale)
      case 'weakForFruit':
      case 'strongSpirit':
        return quantities.text(value, 'strength')
      case 'jarOverfull':
      case 'uncovered':
      case 'openedSpirit':
        return quantities.text(value, 'volume')
      case 'sugarUndissolved':
        return quantities.text(value, 'mass')
      case 'mayFerment':
      case 'fruitHazard':
        return ''
    }
  }

  return ({ code, value, limit, fruitId, since }) => {
    const fruit = fruits.get(fruitId ?? '')
    return {
      title: t(`codes.caution.${code}.title`, { fruit: fruit ? fruitName(fruit) : '' }),
      text: t(`codes.caution.${code}.text`, {
        value: value === undefined ? '' : amount(code, value),
        limit: limit === undefined ? '' : amount(code, limit),
        since: since === undefined ? '' : times.day(since),
        // The library's own words: they are facts about one fruit, not phrases of the screen.
        hazards: fruit?.hazards.map(say).join(' ') ?? '',
      }),
    }
  }
}
