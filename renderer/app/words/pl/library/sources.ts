/** What the source codes of the fruit library stand for, by what it says in English. */
export const sources: Readonly<Record<string, string>> = {
  'USDA Standard Reference food table: water, sugars, refuse share and cup weights (cup of 236.6 mL) as printed there':
    'tablica żywności USDA Standard Reference: woda, cukry, część odpadu i masa szklanki (po 236,6 ml), jak tam wydrukowano',
  'European food tables and handbooks, from memory: check before relying on it':
    'europejskie tablice żywności i poradniki, z pamięci: sprawdź, zanim na tym polegasz',
  'common practice of the trade, no publication behind it': 'zwyczaj rzemiosła, bez publikacji',
  'worked out here from the other fields': 'wyliczone tutaj z innych pól',
  'engineering estimate, right in order of magnitude only':
    'oszacowanie inżynierskie, dobre tylko co do rzędu wielkości',
  'from the maker of this cellar': 'od gospodarza tej piwniczki',
  'taken over from a similar fruit': 'przejęte od podobnego owocu',
  'our convention: weighed after trimming, so all of the mass is used':
    'nasza umowa: ważone po obraniu, więc używa się całej masy',
  'eighteen Serbian genotypes of cornelian cherry, HortScience 46 (2011) 849, abstract':
    'osiemnaście serbskich genotypów derenia, HortScience 46 (2011) 849, streszczenie',
  'eleven Montenegrin genotypes of cornelian cherry, Sustainability 2020, abstract':
    'jedenaście czarnogórskich genotypów derenia, Sustainability 2020, streszczenie',
  'nineteen genotypes of Japanese quince, Hellín et al. 2020, abstract':
    'dziewiętnaście genotypów pigwowca, Hellín i in. 2020, streszczenie',
  'juices of three sour cherry varieties, 1935 data in an extension compilation':
    'soki trzech odmian wiśni, dane z 1935 w zestawieniu doradczym',
  'sea buckthorn juice, encyclopaedic summary of published compositions':
    'sok z rokitnika, encyklopedyczne zestawienie opublikowanych składów',
  'oil in whole sea buckthorn berries, Yang and Kallio':
    'olej w całych owocach rokitnika, Yang i Kallio',
  'encyclopaedia entry on the blackthorn': 'hasło encyklopedyczne o tarninie',
  'green walnuts of the Kuban at the milk-wax stage, public summary of a study':
    'zielone orzechy włoskie z Kubania w stadium mleczno-woskowym, publiczne streszczenie badania',
  'Norwegian food composition table, record 06.502':
    'norweska tablica składu żywności, rekord 06.502',
  'rosehip ecotypes, Horticulturae 9 (2023) 1292':
    'ekotypy dzikiej róży, Horticulturae 9 (2023) 1292',
  'rowan cultivars, conference abstract in dry mass, converted at 25 to 30 % dry matter':
    'odmiany jarzębiny, streszczenie konferencyjne w suchej masie, przeliczone przy 25 do 30 % suchej masy',
  'Polish market pages for strawberry and sour cherry':
    'polskie strony targowe o truskawkach i wiśniach',
  'Polish calendar of herbs and wild fruit': 'polski kalendarz ziół i dzikich owoców',
  'general Nordic and British pages on wild fruit':
    'ogólne strony skandynawskie i brytyjskie o dzikich owocach',
  'the custom of gathering green walnuts about 24 June, in Alamprese and Pompei 2005':
    'zwyczaj zbierania zielonych orzechów około 24 czerwca, w: Alamprese i Pompei 2005',
  'public health page on elder: about 3 mg of cyanide per 100 g of fresh berries':
    'strona zdrowia publicznego o bzie czarnym: około 3 mg cyjanku na 100 g świeżych owoców',
}
