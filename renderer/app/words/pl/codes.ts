/** What `en/codes.ts` says, in Polish. */
const stage = {
  empty: 'nierozpoczęty',
  layered: 'pod cukrem',
  steeping: 'macerowanie',
  drawnOff: 'zlany',
  sugarDraw: 'zasyp cukrem',
  pressed: 'wyciśnięty',
  married: 'skupażowany',
  filtered: 'przefiltrowany',
  resting: 'dojrzewa',
  finished: 'zakończony',
} as const

const move = {
  buy: 'Kup',
  charge: 'Wsyp owoce',
  sugar: 'Dodaj cukru',
  addAcid: 'Zakwaś',
  pourSpirit: 'Wlej spirytus',
  pourWater: 'Wlej wodę',
  keep: 'Przechowanie',
  stir: 'Zamieszaj',
  read: 'Zapisz odczyt',
  drawOff: 'Zlej',
  press: 'Wyciśnij',
  crush: 'Rozgnieć',
  coverWithSugar: 'Zasyp cukrem',
  marry: 'Kupażuj',
  filter: 'Filtruj',
  bottle: 'Butelkuj',
  bringIn: 'Wniesienie butelek',
  unbottle: 'Otwórz z powrotem do naczynia',
  drawBottle: 'Weź butelkę',
  give: 'Podaruj',
  breakBottle: 'Stłuczona lub cieknąca',
  shelve: 'Przenieś na inne miejsce',
  openBottle: 'Otwórz butelkę',
  pourGlass: 'Nalej kieliszek',
  topUp: 'Dolej do pełna',
  taste: 'Skosztuj',
  discard: 'Wyrzuć',
  correct: 'Sprostuj',
  remark: 'Notatka',
} as const

const cut = {
  whole: 'całe',
  pricked: 'nakłute',
  cut: 'pokrojone',
  crushed: 'rozgniecione',
  frozen: 'najpierw przemrożone',
} as const

const turned = {
  daily: 'obracane codziennie',
  weekly: 'obracane co tydzień',
  never: 'nigdy nie obracane',
} as const

const medium = {
  sieve: 'sito',
  cloth: 'płótno',
  paper: 'papier',
  racking: 'ściąganie znad osadu',
} as const

const instrument = {
  alcoholometer: 'Alkoholomierz',
  hydrometer: 'Areometr',
  refractometer: 'Refraktometr',
  hydrometerAndRefractometer: 'Areometr i refraktometr',
  boilOff: 'Odparowanie',
  measuringJug: 'Dzbanek z miarką',
} as const

const doubt = {
  outOfRange: 'Tego przyrząd nie może pokazać: to poza jego skalą.',
  strongerThanAnythingPoured: 'To mocniejsze niż jakikolwiek spirytus wlany do naczynia.',
  instrumentMisledBySugar: 'Cukier myli ten przyrząd: pokazuje za małą moc.',
  noSuchMixture: 'Żadna mieszanina spirytusu, wody i cukru nie pokazuje naraz tych liczb.',
} as const

const shape = {
  jar: 'Słój',
  demijohn: 'Gąsior',
  crock: 'Kamionka',
  flask: 'Butla',
} as const

const matter = {
  ethanolG: 'Etanol',
  waterG: 'Woda',
  sugarG: 'Cukier',
  acidG: 'Kwas',
  solublesG: 'Inne rozpuszczalne',
  pulpG: 'Miąższ',
} as const

const caution = {
  sugarOnlyTooLong: {
    title: 'Owoce z cukrem bez spirytusu',
    text: 'Stoi bez spirytusu już {{value}}; po czasie {{limit}} zaczyna fermentować. Wlej spirytus.',
  },
  mayFerment: {
    title: 'Może fermentować',
    text: 'Moc i cukier razem są za małe, by powstrzymać drożdże. Dodaj spirytusu lub cukru i nie zostawiaj żadnej zamkniętej butelki.',
  },
  weakForFruit: {
    title: 'Za słabe na owoce',
    text: 'Z owocami to naczynie dojdzie do {{value}}; poniżej {{limit}} owoce mogą się zepsuć. Wlej mocniejszy spirytus.',
  },
  jarOverfull: {
    title: 'Przepełnione',
    text: 'Wypełnione w {{value}}; powyżej {{limit}} brakuje miejsca na obracanie i ciepło. Odlej trochę.',
  },
  uncovered: {
    title: 'Owoce nad płynem',
    text: 'Wolnego płynu jest {{value}}, a owoce potrzebują około {{limit}}, by były zakryte. Niezakryte owoce pleśnieją: dolej albo dociśnij je.',
  },
  strongSpirit: {
    title: 'Mocny spirytus',
    text: 'Spirytus {{value}} wydziela opary, które palą się w temperaturze pokojowej. Trzymaj go z dala od ognia, iskier i kuchenki; wietrz pomieszczenie.',
  },
  openedSpirit: {
    title: 'Czy jest zamknięty?',
    text: 'Otwarto go {{since}} i zostało {{value}}. Spirytus, który stoi otwarty, traci moc, a jego opary palą się w temperaturze pokojowej: zamknij go szczelnie, z dala od ognia i ciepła. Jeśli stał otwarty, zmierz go i wpisz na nowo to, co zostało, z mocą, jaką ma.',
  },
  stonesTooLong: {
    title: 'Pestki za długo w naczyniu',
    text: 'Całe pestki leżą już {{value}}; po czasie {{limit}} jądra oddają gorzkie, trujące związki. Zlej.',
  },
  fruitHazard: {
    title: 'Uwaga: {{fruit}}',
    text: '{{hazards}}',
  },
  sugarUndissolved: {
    title: 'Cukier na dnie',
    text: 'Jeszcze się nie rozpuściło: {{value}} cukru. Zamieszaj albo obróć naczynie.',
  },
} as const

const severity = { note: 'Wskazówka', warning: 'Ostrzeżenie' } as const

const refusal = {
  notEnough:
    'Za mało ({{place}}): jest {{available}}, a trzeba {{asked}}. Najwięcej można {{nearest}}.',
  nothingThere:
    'O tej porze nic tam nie ma ({{place}}). Wybierz inne miejsce albo późniejszą chwilę.',
  beforeItExisted:
    'Tego jeszcze wtedy nie było ({{place}}): jest dopiero od {{from}}. Wybierz tę chwilę albo późniejszą.',
  inTheFuture:
    'Ta chwila jeszcze nie nadeszła. Księga trzyma tylko to, co zrobiono: wybierz chwilę do teraz.',
  jarTaken:
    'Zajęte ({{place}}): stoi tam inny nastaw ({{batch}}). Wybierz puste naczynie albo naczynie tego nastawu.',
  noFruit: 'Tu nie ma owoców ({{place}}). Wybierz naczynie z owocami.',
  unknownPlace: 'Tego nie ma w księdze ({{place}}). Może to usunięto: wybierz co innego.',
  wrongGoods: 'To nie jest to, czego trzeba ({{place}}). Wybierz inny zapas ze spiżarni.',
  sameJar: 'Wskazano dwa razy to samo ({{place}}). Wybierz dwa różne naczynia.',
  alreadyThere: 'To już jest w księdze ({{place}}). Niczego nie zapisano ponownie.',
  noSuchMixture:
    'Płyn o takiej objętości, mocy i cukrze nie może tam stać ({{place}}). Sprawdź te trzy liczby względem siebie.',
  noRoom: 'Brak miejsca ({{place}}): zmieści się {{available}}, a trzeba {{asked}}.',
  neverFilled:
    'Napełniono tylko {{available}} ({{place}}), a policzono {{asked}}. Najwięcej może być {{nearest}}.',
} as const

const error = {
  unknownChannel:
    'To okno i program za nim są z różnych wersji. Zamknij Ratafię i uruchom ją ponownie.',
  badInput: 'Coś z tego, co wpisano, nie jest możliwe. Sprawdź pola i spróbuj ponownie.',
  breaksLater:
    'To uniemożliwiłoby późniejsze wpisy. Niczego nie zmieniono; najpierw zmień tamte wpisy.',
  outOfRange: '{{quantity}}: {{value}}. Musi być od {{low}} do {{high}}.',
  ambiguous:
    'W takim zimnie wiele mocy ma tę samą gęstość. Ogrzej próbkę do temperatury pokojowej i zmierz ponownie.',
  notFound: 'Tego już nie ma w księdze. Wróć do listy i otwórz ponownie.',
  staleEdit: 'Tymczasem zmieniono to w innym oknie. Zobacz, jak jest teraz, i zmień ponownie.',
  nothingToUndo: 'Nie ma już czego cofnąć.',
  stillInUse: 'To jest jeszcze w użyciu. Najpierw opróżnij, potem spróbuj ponownie.',
  bookNewer: 'Tę księgę otwierała ostatnio nowsza Ratafia. Niczego nie ruszono: użyj tej nowszej.',
  bookDamaged:
    'Plik księgi jest uszkodzony. Niczego nie zapisano. Zamknij Ratafię i uruchom ją ponownie: zaproponuje wtedy powrót do kopii.',
  bookForeign: 'Ten plik nie jest księgą piwniczki. Niczego nie ruszono.',
  backupFailed:
    'Kopii nie dało się zrobić albo użyć. Otwórz „Kopie i księga”, aby zobaczyć dlaczego.',
  demoOpen: 'To jest pokaz, którego się nie kopiuje. Wróć najpierw do swojej piwniczki.',
  bookReadOnly:
    'W księdze nie można pisać: plik albo jego folder jest tylko do odczytu. Zmień to i spróbuj ponownie.',
  bookBusy: 'Księgę ma otwartą inny program. Zamknij ją tam i spróbuj ponownie.',
  demoBusy:
    'Pokaz jest otwarty w innym oknie Ratafii, której księga leży w tym samym folderze. Zamknij go tam i spróbuj ponownie.',
  demoSpoilt:
    'Plik pokazu jest uszkodzony albo z innej wersji; twojej księgi nie ruszono. Usuń „alder-end-demo.ratafia” obok swojej księgi: pokaz powstanie wtedy od nowa.',
  diskFull: 'Dysk jest pełny. Niczego nie zapisano: zwolnij miejsce i spróbuj ponownie.',
  internal:
    'Coś poszło źle w samej Ratafii. Niczego nie zapisano. Spróbuj ponownie; jeśli to zostanie, uruchom Ratafię jeszcze raz.',
} as const

const limited = {
  temperature: 'Temperatura',
  waterTemperature: 'Temperatura wody',
  graduation: 'Temperatura na przyrządzie',
  strength: 'Moc',
  targetStrength: 'Żądana moc',
  sugar: 'Cukier',
  targetSugar: 'Żądany cukier',
  acid: 'Kwas',
  volume: 'Objętość',
  mass: 'Masa',
  proof: 'Proof',
  density: 'Gęstość',
  densityBefore: 'Gęstość przed odparowaniem',
  densityAfter: 'Gęstość po odparowaniu',
  densityOfSpirit: 'Gęstość spirytusu bez cukru',
  densityOfSyrup: 'Gęstość syropu',
  hydrometer: 'Odczyt areometru',
  alcoholometer: 'Odczyt alkoholomierza',
  refractometer: 'Odczyt refraktometru',
} as const

const mixture = {
  densities:
    'Żadna nalewka nie ma tych dwóch gęstości: od najbliższych możliwych dzieli je {{by}}. Zmierz obie ponownie, w tej samej temperaturze i objętości.',
  refraction:
    'Żadna mieszanina spirytusu, wody i cukru nie pokazuje tych dwóch liczb: najbliższa pokazuje {{nearest}}, różnica to {{by}}. Zmierz obie ponownie.',
  overflow:
    'Żaden płyn nie ma takiej mocy przy takim cukrze: oba razem przepełniają litr o {{by}}.',
  other: 'Żadna mieszanina spirytusu, wody i cukru nie ma naraz tych liczb.',
} as const

const crashed =
  'Ten ekran przestał działać. W księdze niczego nie zmieniono. Otwórz okno ponownie, aby pracować dalej.'

const lost =
  'Ratafia nie odpowiada. Może ją zamknięto: uruchom ją ponownie i użyj nowego odnośnika.'

export const codes = {
  stage,
  move,
  cut,
  turned,
  medium,
  instrument,
  doubt,
  shape,
  matter,
  caution,
  severity,
  refusal,
  error,
  limited,
  mixture,
  lost,
  crashed,
} as const
