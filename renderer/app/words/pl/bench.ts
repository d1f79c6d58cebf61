/** What `en/bench.ts` says, in Polish. */
const group = {
  spirit: 'Spirytus i woda',
  sweet: 'Słodkie płyny',
  density: 'Gęstość i cukier',
  jug: 'Dzbanek i kieliszek',
} as const

const tool = {
  reduce: {
    name: 'Rozcieńczanie spirytusu',
    what: 'Ile wody sprowadza spirytus do żądanej mocy i ile z tego będzie.',
  },
  alcoholometer: {
    name: 'Alkoholomierz',
    what: 'Ile wynosi odczyt w {{standard}}. Dla spirytusu bez cukru.',
  },
  'density-strength': {
    name: 'Gęstość i moc',
    what: 'Tablice spirytusowe w obie strony, w dowolnej temperaturze.',
  },
  proof: {
    name: 'Proof',
    what: 'Amerykański proof liczy się w 60 °F, moc objętościową gdzie indziej w {{standard}}.',
  },
  'boil-off': {
    name: 'Odparowanie',
    what: 'Prawdziwa moc i cukier nalewki za pomocą areometru i garnka.',
  },
  'two-instruments': {
    name: 'Areometr i refraktometr',
    what: 'Prawdziwa moc i cukier nalewki z dwóch szybkich odczytów.',
  },
  sweeten: {
    name: 'Dosładzanie',
    what: 'Ile cukru doprowadza płyn do żądanej słodyczy i jaką ma potem moc.',
  },
  apparent: {
    name: 'Alkoholomierz w nalewce',
    what: 'Co alkoholomierz pokazuje w słodkim płynie: dużo za mało albo nic.',
  },
  hydrometer: {
    name: 'Areometr',
    what: 'Odczyt z poprawką na temperaturę i co on znaczy, gdy wiadomo, co jest w płynie.',
  },
  refractometer: {
    name: 'Refraktometr',
    what: 'Odczyt z poprawką na temperaturę, dla cukru w wodzie lub soku.',
  },
  weighing: {
    name: 'Kolba na wadze',
    what: 'Waga kuchenna jako areometr: zważ znaną objętość.',
  },
  syrup: {
    name: 'Syrop',
    what: 'Stopnie Brixa, gęstość i gramy cukru w litrze, jedno z drugiego.',
  },
  volume: {
    name: 'Objętość i ciepło',
    what: 'Ile objętość zmierzona na ciepło lub zimno wynosi w {{standard}}, w których liczy się płyny.',
  },
  glass: {
    name: 'W kieliszku',
    what: 'Porcje standardowe, energia i nazwy, na które pozwalałoby prawo.',
  },
} as const

const mode = {
  reduceByVolume: 'Mam objętość',
  reduceByWeight: 'Mam masę',
  reduceToVolume: 'Chcę objętość',
  alcoholometer: 'Alkoholomierz',
  hydrometer: 'Areometr',
  refractometer: 'Refraktometr',
  volumeAt20: 'Objętość',
  proofToStrength: 'Z proof na % obj.',
  strengthToProof: 'Z % obj. na proof',
  proofHydrometer: 'Areometr w proof',
  densityToStrength: 'Z gęstości na moc',
  strengthToDensity: 'Z mocy na gęstość',
  syrupOfBrix: 'Z °Bx',
  syrupOfDensity: 'Z gęstości',
  syrupOfSugar: 'Z cukru w litrze',
  apparentStrength: 'W nalewce',
  boilOff: 'Odparowanie',
  hydrometerAndRefractometer: 'Oba',
  weighing: 'Kolba z kreską',
  weighingByWater: 'Dowolna butelka, najpierw napełniona wodą',
  sweeten: 'Dosładzanie',
  glass: 'Kieliszek',
} as const

const input = {
  spiritVolume: 'Spirytus, w {{standard}}',
  spiritMass: 'Spirytus, zważony',
  resultVolume: 'Potrzeba, w {{standard}}',
  spiritStrength: 'Jego moc',
  targetStrength: 'Żądana moc',
  reading: 'Pokazuje',
  sampleTemperature: 'Temperatura próbki',
  graduation: 'Wyskalowany na, jak pisze na skali',
  volume: 'Zmierzona objętość',
  strength: 'Moc',
  sugar: 'Cukier',
  sugarNow: 'Cukier teraz',
  targetSugar: 'Żądany cukier',
  keepingTemperature: 'Przechowywane w',
  density: 'Areometr pokazuje',
  densityBefore: 'Areometr przed odparowaniem',
  densityAfter: 'Areometr po, po dopełnieniu do tej samej objętości',
  brix: 'Refraktometr pokazuje',
  proof: 'Proof',
  netMass: 'Masa samego płynu',
  flask: 'Objętość kolby',
  waterMass: 'Masa wody, która ją wypełnia',
  waterTemperature: 'Temperatura tej wody',
  liquidVolume: 'Płyn, w {{standard}}',
  glass: 'Nalano',
} as const

const taken = {
  volumeMl: 'Objętość',
  resultMl: 'Żądana objętość',
  massG: 'Masa',
  waterG: 'Masa wody',
  scaleStepG: 'Ostatnia cyfra wagi',
  strengthPctVol: 'Moc',
  targetPctVol: 'Żądana moc',
  readingPctVol: 'Alkoholomierz',
  sugarGPerL: 'Cukier',
  targetSugarGPerL: 'Żądany cukier',
  densityKgPerM3: 'Areometr',
  densityBeforeKgPerM3: 'Areometr przed',
  densityAfterKgPerM3: 'Areometr po',
  brix: 'Refraktometr',
  proof: 'Proof',
  temperatureC: 'Temperatura',
  graduatedAtC: 'Wyskalowany na',
  waterTemperatureC: 'Temperatura wody',
} as const

const fine = {
  jug: 'Dzbanek',
  scale: 'Waga',
  label: 'Moc, jak wiadomo',
  alcoholometer: 'Jego skala',
  hydrometer: 'Areometr',
  refractometer: 'Refraktometr',
  thermometer: 'Termometr',
  waterThermometer: 'Termometr w wodzie',
  flask: 'Kreska kolby',
  scaleStep: 'Ostatnia cyfra wagi',
  sugar: 'Cukier, jak wiadomo',
} as const

const quantity = {
  water: 'Dodać wody',
  waterMass: 'albo wagowo',
  spirit: 'Wziąć spirytusu',
  result: 'Będzie',
  resultMass: 'Będzie, wagowo',
  contraction: 'Ubytek przez kontrakcję',
  strengthReached: 'Osiągnięta moc',
  strength: 'Moc',
  shownStrength: 'Pokazuje',
  density: 'Gęstość w jego temperaturze',
  densityAt20: 'Gęstość w {{standard}}',
  offScale: 'Poza końcem skali',
  massShare: 'Etanol wagowo',
  brix: 'Stopnie Brixa',
  sugar: 'Cukier',
  volumeAt20: 'W {{standard}}',
  volumeAt60F: 'W 60 °F',
  volumeChange: 'Różnica',
  proof: 'Proof',
  flask: 'Objętość kolby',
  sugarToAdd: 'Dodać cukru',
  sugarRoom: 'Miejsce, które zajmie cukier',
  strengthAfter: 'Moc potem',
  ethanolMass: 'Czysty alkohol',
  energyKj: 'Energia',
  energyKcal: 'albo w kilokaloriach',
  drinksUnitedKingdom: 'Jednostki brytyjskie',
  drinksUnitedStates: 'Porcje standardowe w USA',
  drinksAustralia: 'Porcje po 10 g (Australia, WHO)',
} as const

const note = {
  strongSpirit: {
    title: 'Z dala od ognia',
    text: 'Powyżej około {{value}} spirytus wydziela opary, które palą się w temperaturze pokojowej. Żadnego ognia, iskier ani gorącej płyty obok; wietrz pomieszczenie.',
  },
  boilOffCare: {
    title: 'Opary się palą',
    text: 'Otwórz okno i użyj płyty elektrycznej: nigdy ognia, nigdy zamkniętego pomieszczenia. Gotuj łagodnie, nie odchodź i skończ przy jednej trzeciej objętości: nigdy do sucha. Co odparuje, przepada; chwytanie tego byłoby destylacją, która w domu jest w wielu krajach niezgodna z prawem.',
  },
  notLegalAdvice: {
    title: 'Fakty, nie porada prawna',
    text: 'Porównano tylko moc i cukier. Sprzedaż prawie wszędzie wymaga zezwolenia i akcyzy: przestrzegaj prawa, gdzie mieszkasz.',
  },
  straightRule: {
    title: 'Czemu nie po prostu podzielić?',
    text: 'Objętość razy moc, podzielona przez żądaną moc, pomija kontrakcję: ten spirytus miałby wtedy {{value}}.',
  },
  sugarMisleads: {
    title: 'Tylko bez cukru',
    text: 'Już {{little}} cukru sprawia, że pokazuje o {{value}} za mało. Dla nalewki użyj odparowania albo dwóch przyrządów.',
  },
  spiritMisleads: {
    title: 'Tylko bez spirytusu',
    text: 'Spirytus też załamuje światło: przy {{little}} i bez cukru pokazuje {{value}}. Dla nalewki użyj go razem z areometrem.',
  },
  floatsOffScale: {
    title: 'Nic nie pokazuje',
    text: 'Płyn jest za gęsty: alkoholomierz pływa z całą skalą nad powierzchnią, {{value}} poza zerem.',
  },
  sinksOffScale: {
    title: 'Nic nie pokazuje',
    text: 'Płyn jest lżejszy niż czysty spirytus w {{standard}}: alkoholomierz tonie, {{value}} poza końcem skali.',
  },
  shortcutErrs: {
    title: 'Stara reguła powiedziałaby {{value}}',
    text: 'Odjąć drugą gęstość od pierwszej jest szybko, ale dla mocnych, słodkich nalewek źle. Moc powyżej liczy jedno i drugie razem.',
  },
  atTheEdge: {
    title: 'Na granicy możliwego',
    text: 'Żadna mieszanina nie pokazuje dokładnie tych dwóch liczb; od najbliższej dzieli je {{value}}, co tłumaczy dokładność samych przyrządów.',
  },
  undissolved: {
    title: 'Nie wszystko się rozpuści',
    text: 'W tej temperaturze około {{value}} cukru zostanie zapewne na dnie. Trzymaj cieplej, weź mniej albo zmniejsz moc. To wskazówka, nie tablica.',
  },
  glassOnly: {
    title: 'Tylko szkło',
    text: 'Ile to będzie w {{standard}}, zależy od tego, co jest w płynie: wybierz spirytus albo syrop, jeśli to jedno z nich.',
  },
} as const

const liquid = {
  spirit: 'Spirytus, bez cukru',
  syrup: 'Cukier i woda',
  other: 'Coś innego',
} as const

const category = {
  liqueur: 'Likier (UE)',
  cherryLiqueurOfCherrySpirit: 'Likier wiśniowy ze spirytusu wiśniowego (UE)',
  gentianLiqueur: 'Likier goryczkowy (UE)',
  cremeDe: 'Crème de … (UE)',
  cremeDeCassis: 'Crème de cassis (UE)',
  sloeGin: 'Sloe gin (UE)',
  sloeAromatisedSpirit: 'Napój spirytusowy aromatyzowany tarniną (UE)',
  maraschino: 'Maraschino (UE)',
  nocino: 'Nocino (UE)',
  americanLiqueur: 'Liqueur lub cordial (USA)',
} as const

const standing = {
  read: 'przeczytane w przepisie',
  secondHand: 'z drugiej ręki',
  remembered: 'z pamięci: sprawdź',
} as const

export const bench = {
  title: 'Pracownia',
  lead: 'Małe przyrządy, które nie potrzebują nastawu. Każdy odpowiada w trakcie pisania i mówi, na ile jest pewny.',
  list: 'Przyrządy',
  choose: 'Przyrząd',
  group,
  tool,
  mode,
  modes: 'W którą stronę',
  input,
  liquids: 'Co w nim jest',
  liquid,
  category,
  standing,
  compensated: 'Temperatura',
  compensation: { yes: 'Poprawia sam', no: 'Nie poprawia' },
  fineness: {
    title: 'Jak dokładnie odczytuje?',
    text: 'Jedna niepewność standardowa, plus lub minus. Zmień ją, jeśli twój przyrząd jest dokładniejszy lub grubszy.',
    plusMinus: '{{what}} ±',
    tooSmall: 'Musi być więcej niż nic.',
  },
  fine,
  taken,
  steps: {
    boilOff: [
      'Odmierz objętość, na przykład {{sample}}, i odczytaj w niej areometr i termometr.',
      'Gotuj łagodnie w garnku do mniej więcej jednej trzeciej. Cały alkohol jest wtedy odparowany.',
      'Ostudź. Spłucz z powrotem każdą kroplę i dopełnij wodą do dokładnie tej samej objętości, w tej samej temperaturze.',
      'Odczytaj areometr jeszcze raz.',
    ],
    weighing: [
      'Postaw czystą, suchą kolbę na wadze i wyzeruj ją.',
      'Napełnij dokładnie do kreski albo, jeśli jej nie ma, po brzegi, za każdym razem tak samo. Wytrzyj do sucha i odczytaj masę.',
    ],
  },
  answer: 'Odpowiedź',
  waiting: 'Wpisz liczby, a odpowiedź stanie tutaj.',
  quantity,
  ofMass: '% wag.',
  note,
  how: {
    title: 'Jak to policzono?',
    source: 'Według',
    limits: 'Ważne dla',
    uncertainty: 'Na ile pewne',
    plusMinus:
      '± to jedna niepewność standardowa: prawda leży w niej dwa razy na trzy, a w dwukrotnej dziewiętnaście razy na dwadzieścia.',
  },
  dilution: {
    label: '{{spirit}} spirytusu i {{water}} wody dają {{result}}: o {{gap}} mniej niż oba razem.',
    labelSwells:
      '{{spirit}} spirytusu i {{water}} wody dają {{result}}: o {{gap}} więcej niż oba razem.',
    spirit: 'spirytus',
    water: 'woda',
    together: 'razem',
    gap: 'o {{gap}} mniej: kurczą się',
    gapMore: 'o {{gap}} więcej: słaby spirytus pęcznieje',
  },
  crossing: {
    title: 'Gdzie oba odczyty się zgadzają',
    description:
      'Dwie linie nad mocą. Wszystkie płyny, które może znaczyć areometr, są z mocą słodsze, wszystkie, które może znaczyć refraktometr, mniej słodkie; spotykają się przy {{strength}} i {{sugar}}.',
    density: 'areometr',
    refraction: 'refraktometr',
    strengthAxis: 'Moc, {{unit}}',
    sugarAxis: 'Cukier, {{unit}}',
    strength: 'Przy mocy',
    densitySugar: 'Cukier z areometru',
    refractionSugar: 'Cukier z refraktometru',
    asTable: 'Pokaż tabelę',
    asChart: 'Pokaż wykres',
    bands: 'Zacieniowane: jak dokładnie odczytuje każdy przyrząd.',
  },
  categories: {
    title: 'Nazwy, które zna prawo',
    caption: 'Nazwy, na które pozwalałyby moc i cukier',
    name: 'Nazwa',
    verdict: 'Moc i cukier',
    standing: 'Przepis',
    isMet: 'wystarcza',
    missingStrength: 'brakuje {{amount}}',
    missingSugar: 'brakuje cukru {{amount}}',
    excessSugar: 'cukru za dużo o {{amount}}',
  },
  record: {
    open: 'Zapisz w nastawie…',
    title: 'Zapisz ten odczyt w nastawie',
    batch: 'Nastaw',
    choose: 'wybierz…',
    jar: 'Odczytano w',
    at: 'Kiedy',
    note: 'Notatka',
    none: 'Żaden nastaw nie ma naczynia, w którym coś stoi. Otwórz najpierw jakiś w Nastawach.',
    doubtful: 'Zostanie zachowany, ale nieużyty, dopóki nie potwierdzisz go na stronie nastawu.',
    means: 'W tym nastawie znaczy to {{what}}.',
    go: 'Zapisz odczyt',
    done: 'Zapisano w nastawie {{batch}}.',
    toBatch: 'Przejdź do nastawu',
    missing: 'Wybierz jedno.',
  },
} as const
