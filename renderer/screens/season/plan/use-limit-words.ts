/** Limits in words: which is reached, in which weeks, and what easing it would take. */
import { msPerDay } from '../../../../shared/spans-of-time.ts'
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { listFormat } from '../../../parts/formatters/formatters.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { SeasonBinding, SeasonPlan, SeasonRelief } from '../../../../shared/schemas/season.ts'
import { weekRanges } from './week-ranges.ts'

export function useLimitWords({ startAt, jars }: Pick<SeasonPlan, 'startAt' | 'jars'>) {
  const t = useWords()
  const { locale } = useSettings()
  const { text, size } = useQuantities()
  const kindName = useKindName()
  const times = useTimes()
  const list = listFormat(locale, { type: 'conjunction' })
  const day = (week: number) =>
    times.day(new Date(Date.parse(startAt) + 7 * week * msPerDay).toISOString())
  const weeks = (all: readonly number[]) =>
    list.format(
      weekRanges(all).map(({ from, to }) => t('season.span', { from: day(from), to: day(to) })),
    )
  const amount = (value: number, unit: SeasonBinding['unit']) => {
    switch (unit) {
      case 'minor':
        return text(Math.round(value), 'money')
      case 'ml':
        return text(value, 'volume')
      case 'jars':
      case 'bottles':
      case 'weeks':
        return text(value, 'count')
    }
  }

  const bound = ({ limit, used, of, unit, capacityMl, weeks: all, kindIds }: SeasonBinding) => {
    // Wide and narrow jars of a size are told apart by the plan, as fruit goes in by the mouth.
    const alike = jars.filter((jar) => jar.capacityMl === capacityMl).length
    const ofJars =
      capacityMl === undefined ? 'jarsPair' : of < alike ? 'jarsAlike' : ('jars' as const)
    const key = limit === 'jars' ? ofJars : limit
    return t(`season.bound.${key}`, {
      used: amount(used, unit),
      of: amount(of, unit),
      all: text(alike, 'count'),
      size: size(capacityMl ?? 0, 'volume').text,
      weeks: weeks(all),
      kinds: list.format(kindIds.map(kindName)),
    })
  }

  const eased = ({ eases, by, unit }: SeasonRelief) => {
    if (eases === 'shelf' || eases === 'fruitWeeks')
      return t(`season.eased.${eases}`, { count: by })
    const told =
      unit === 'jarMl'
        ? size(by, 'volume').text
        : unit === 'minor'
          ? text(Math.round(by), 'money')
          : text(by, 'volume')
    return t(`season.eased.${eases}`, { by: told })
  }

  return { bound, eased }
}
