/** What the source codes of the fruit library stand for, so that a number can be traced or doubted. */

/** What a code is about follows after a colon: the record of a table, as in `U:09063`, or a fruit. */
const meanings: Readonly<Record<string, string>> = {
  U: 'USDA Standard Reference food table: water, sugars, refuse share and cup weights (cup of 236.6 mL) as printed there',
  M: 'European food tables and handbooks, from memory: check before relying on it',
  P: 'common practice of the trade, no publication behind it',
  D: 'worked out here from the other fields',
  E: 'engineering estimate, right in order of magnitude only',
  own: 'from the maker of this cellar',
  like: 'taken over from a similar fruit',
  W: 'our convention: weighed after trimming, so all of the mass is used',
  CM1: 'eighteen Serbian genotypes of cornelian cherry, HortScience 46 (2011) 849, abstract',
  CM2: 'eleven Montenegrin genotypes of cornelian cherry, Sustainability 2020, abstract',
  CH2: 'nineteen genotypes of Japanese quince, Hellín et al. 2020, abstract',
  SC1: 'juices of three sour cherry varieties, 1935 data in an extension compilation',
  SB1: 'sea buckthorn juice, encyclopaedic summary of published compositions',
  SB2: 'oil in whole sea buckthorn berries, Yang and Kallio',
  SL1: 'encyclopaedia entry on the blackthorn',
  GW1: 'green walnuts of the Kuban at the milk-wax stage, public summary of a study',
  NO1: 'Norwegian food composition table, record 06.502',
  RH1: 'rosehip ecotypes, Horticulturae 9 (2023) 1292',
  ROW1: 'rowan cultivars, conference abstract in dry mass, converted at 25 to 30 % dry matter',
  S1: 'Polish market pages for strawberry and sour cherry',
  S2: 'Polish calendar of herbs and wild fruit',
  S3: 'general Nordic and British pages on wild fruit',
  T1: 'the custom of gathering green walnuts about 24 June, in Alamprese and Pompei 2005',
  H1: 'public health page on elder: about 3 mg of cyanide per 100 g of fresh berries',
}

export function isSourceCode(code: string): boolean {
  return Object.hasOwn(meanings, familyOf(code))
}

const familyOf = (code: string): string => code.split(':')[0] ?? ''

/** The meaning of a source code. Throws RangeError for a code the library does not know. */
export function explainSource(code: string): string {
  const record = code.split(':')[1]
  const meaning = isSourceCode(code) ? meanings[familyOf(code)] : undefined
  if (meaning === undefined) throw new RangeError(`source code is ${code}, not in the library`)
  if (record === undefined) return meaning
  return familyOf(code) === 'like' ? `${meaning}: ${record}` : `${meaning}; record ${record}`
}
