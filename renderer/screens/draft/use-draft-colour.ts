/** The colour a draft is drawn in until its batch has one of its own: that of its first fruit. */
import { useFruitColour } from '../../parts/names/use-fruit-colour.ts'

export const useDraftColour = (fruitId: string | undefined): string => useFruitColour()(fruitId)
