/** What can hurt, and how not to be hurt. */
import { useWords } from '../../app/words/use-words.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { dangers } from './chapters.ts'
import { Told } from './told.tsx'

/** Flash points: the lower of a table and a vapour model; spirit-safety reference. */
const flash = { strongPctVol: 96, strongC: 13, weakPctVol: 40, weakC: 26 } as const

export function Dangers() {
  const t = useWords()
  const quantities = useQuantities()
  const degrees = (celsius: number) => quantities.text(celsius, 'temperature')
  const values = {
    strong: quantities.text(flash.strongPctVol, 'strength'),
    strongFlash: degrees(flash.strongC),
    weak: quantities.text(flash.weakPctVol, 'strength'),
    weakFlash: degrees(flash.weakC),
  }
  return (
    <Told
      entries={dangers.map((id) => ({
        id,
        name: t(`handbook.danger.${id}.name`),
        text: t(`handbook.danger.${id}.text`, values),
      }))}
    />
  )
}
