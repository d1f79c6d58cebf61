/** What `en/marry.ts` says, in Polish. */
const wish = {
  strengthPctVol: 'Moc',
  sugarGPerL: 'Cukier',
  acidGPerL: 'Kwas',
  volumeMl: 'Objętość',
} as const

const sense = {
  any: 'jak wyjdzie',
  exactly: 'dokładnie',
  atLeast: 'co najmniej',
  atMost: 'najwyżej',
} as const

const amountKind = {
  most: 'Jak najwięcej',
  volume: 'Objętość',
  bottles: 'Całe butelki',
} as const

const prefer = {
  useUp: 'zużyć nalewy',
  cheapest: 'najtaniej',
  even: 'po równym udziale z każdego',
} as const

const holds = {
  composition: 'Zachowaj skład, zrób mniej',
  volume: 'Zachowaj ilość, jak najbliżej składu',
} as const

const why = {
  beyondParts: '{{wish}}: {{asked}} nie wyjdzie, te składniki dają od {{low}} do {{high}}.',
  conflict:
    '{{wish}}: {{asked}} nie wyjdzie razem z resztą, te składniki dają wtedy od {{low}} do {{high}}.',
  conflictAlone: '{{wish}}: {{asked}} nie wyjdzie razem z resztą.',
  saturation:
    '{{wish}}: {{asked}} nie wyjdzie, przy tej mocy rozpuszcza się około {{high}}, a reszta leżałaby na dnie.',
  stock: '{{wish}}: wychodzi {{reached}} zamiast {{asked}}, więcej już nie ma ({{places}}).',
  stockNone:
    '{{wish}}: wychodzi {{reached}} zamiast {{asked}}, z wybranych nic nie zostało do użycia.',
  leastUse: '{{wish}}: wychodzi {{reached}} zamiast {{asked}}, bo tyle trzeba zużyć ({{places}}).',
  noEnd: 'Nic tu nie ogranicza ilości. Podaj objętość albo moc.',
} as const

const trouble = {
  tooSweet: 'Za słodka',
  tooWeak: 'Za słaba',
  tooStrong: 'Za mocna',
  tooSour: 'Za kwaśna',
  tooFlat: 'Za mdła',
  hazy: 'Mętna',
} as const

export const marry = {
  title: 'Kupaż',
  lead: 'Wybierz, co wchodzi, i powiedz, jaka ma być: ilości wynikną same.',
  tabs: { label: 'Kupażuj albo popraw', marry: 'Kupażuj', mend: 'Popraw jedno naczynie' },
  parts: {
    title: 'Co wchodzi',
    jars: 'Nalewy w naczyniach',
    bottles: 'Starsze roczniki, całymi butelkami',
    pantry: 'Ze spiżarni',
    there: 'jest {{amount}}',
    limits: 'Granice: {{name}}',
    least: 'Zużyj co najmniej',
    most: 'Zużyj najwyżej',
    keepBack: 'Zostaw',
    all: 'Zużyj wszystko',
    none: 'W żadnym naczyniu nie ma płynu, a w spiżarni ani spirytusu, ani cukru.',
    goBatches: 'Przejdź do Nastawów',
    water: 'Woda z kranu',
    acid: 'Kwas cytrynowy, kupiony do tego',
    takes: 'wchodzi {{amount}}',
    vintage: '{{name}}, {{size}}',
    ofBatch: 'nastaw {{batch}}',
    more: '{{group}} ({{count}})',
  },
  wishes: {
    title: 'Jaka ma być',
    sense: '{{wish}}: jak',
    value: '{{wish}}, życzenie',
    amount: 'Ile',
    volume: 'Objętość',
    bottleSize: 'Wielkość butelki',
    bottleCount: 'Ile butelek',
    bottleCountHint: 'Puste: ile da się napełnić.',
    addSize: 'Inna wielkość',
    removeSize: 'Usuń tę wielkość',
    prefer: 'Ze wszystkich dróg do celu',
  },
  wish,
  sense,
  senseValue: {
    any: '{{value}}',
    exactly: '{{value}}',
    atLeast: '{{value}} lub więcej',
    atMost: '{{value}} lub mniej',
  },
  amountKind,
  preferOne: prefer,
  holds,
  answer: {
    title: 'Co z tego wychodzi',
    label: 'Kupaż',
    choose: 'Wybierz przynajmniej jedno, co wchodzi.',
    nothing: 'Z tego nic się nie da zrobić.',
    cost: 'Koszt',
    perBottle: '{{cost}} za butelkę {{size}}',
    perGlass: '{{cost}} za kieliszek {{size}}',
    unknownCost: 'Część tego, co wchodzi, nie ma ceny w księdze.',
    acid: '{{acid}} kwasu',
    contraction: 'o {{less}} mniej, niż wlano, przez kontrakcję',
    undissolved: 'Około {{sugar}} cukru zostałoby na dnie.',
    broken: 'Nie da się wszystkiego. Najbliżej jest tak:',
    cutShort: 'Jest mniej, niż trzeba zużyć ({{places}}).',
    filled: '{{bottles}} po {{size}}',
    rest: 'i zostaje {{rest}}',
  },
  why,
  picture: {
    label: 'W skali: {{parts}} spływają razem do {{target}}',
    part: '{{name}}, {{amount}}',
    noTarget: '{{volume}}, nie wybrano naczynia',
  },
  amounts: {
    title: 'Wlewaj w tej kolejności',
    caption: 'Ilości w kolejności wlewania',
    order:
      'Najpierw suche, potem najlżejszy płyn, a po nim każdy cięższy: opada przez to, co już jest, i po drodze miesza. To zwyczaj rzemiosła, nie niczyja reguła.',
    part: 'Składnik',
    measure: 'Odmierz',
    weigh: 'Odważ',
    cost: 'Koszt',
    usedUp: 'wszystko',
    sum: 'Razem',
  },
  target: {
    label: 'Wlej do',
    choose: 'Wybierz naczynie',
    empty: '{{jar}}, {{size}}, puste',
    holds: '{{jar}}, {{size}}, jest w nim {{volume}}',
    overBrim: '{{jar}} mieści {{size}} po brzegi: przelałoby się {{over}}.',
    overSafe: '{{jar}}: byłoby powyżej bezpiecznej kreski, o {{over}} za dużo.',
  },
  pour: {
    title: 'Równo w każdej butelce',
    caption: 'Co wchodzi do każdej butelki',
    bottle: 'Butelka',
    makes: 'Będzie',
    remainder: 'Zostaje',
    total: 'Trzeba',
    hint: 'Zaokrąglone, tak samo w każdej butelce tej wielkości. Co zostaje z zaokrąglenia, stoi w ostatnim wierszu, więc wszystko się zgadza.',
    print: 'Drukuj tabelę',
    each: '{{count}} × {{size}}',
  },
  record: {
    open: 'Zapisz…',
    title: 'Zapisz, co wlano',
    needsTarget: 'Wybierz najpierw naczynie, do którego wlewasz.',
    overflows: 'To naczynie jest za małe.',
    batch: 'Do nastawu',
    newBatch: 'Nowy nastaw…',
    name: 'Nazwa nowego nastawu',
    nameMissing: 'Podaj nazwę.',
    at: 'Kiedy',
    note: 'Notatka',
    go: 'Zapisz',
    done: 'Zapisano w nastawie {{batch}}.',
    toBatch: 'Przejdź do nastawu',
    after: 'Po tym, {{jar}}',
    breaks:
      'Późniejszy wpis nie byłby już możliwy. Nic nie zostanie zapisane, dopóki go nie zmienisz.',
    acidBought: 'Kwas cytrynowy kupiony przy tym',
    acidMass: 'Kupiono',
    acidMassHint: 'Puste: dokładnie tyle, ile wchodzi. Reszta zostaje w spiżarni.',
    acidPrice: 'Cena',
  },
  mend: {
    title: 'Popraw jedno naczynie',
    lead: 'Powiedz, co jest nie tak: co dodać, najpierw do {{sample}}, potem do całości.',
    jar: 'Naczynie',
    choose: 'Wybierz naczynie',
    none: 'W żadnym naczyniu nie ma płynu.',
    trouble: 'Co jest nie tak',
    target: '{{wish}} ma być',
    holdLabel: 'Zachowaj, jak jest',
    with: 'Co wolno dodać',
    now: 'Teraz {{value}}',
    add: 'Dodaj do naczynia',
    trialAdd: 'Najpierw spróbuj na {{sample}}',
    trialHint:
      'Odlej próbkę, dodaj małą ilość, skosztuj po dniu i dopiero wtedy popraw całość: co raz dodano, już nie wyjdzie.',
    after: 'Potem w naczyniu jest',
    costs: 'Kosztuje {{cost}}',
    costsAtLeast: 'Kosztuje {{cost}} i to, co w księdze nie ma ceny',
    noneNeeded: 'Niczego nie trzeba dodawać: już tak jest.',
    chooseMeans: 'Wybierz przynajmniej jedno, co wolno dodać.',
    ratio: '{{ratio}} części cukru na jedną część kwasu',
    ratioHint: 'Większość nalewek owocowych ma od 12 do 45, około 25.',
    wrongWay: 'To w drugą stronę: w naczyniu jest teraz {{value}}.',
  },
  trouble,
  haze: {
    title: 'Zmętnienia nie da się policzyć, ale są stopnie: najłagodniejszy najpierw',
    test: {
      title: 'Sprawdź, jakie to zmętnienie',
      text: 'Zmieszaj {{sample}} nalewki z {{spirit}} mocnego spirytusu ({{strong}} lub więcej). Galaretka albo nitki: pektyna. Od razu klarowne: olejki. Ani to, ani to: drobny osad, który potrzebuje czasu.',
    },
    chill: {
      title: 'Schłodź i czekaj',
      text: 'Dwa tygodnie tak zimno, jak się da w domu, bez ruszania. Wiele zmętnień opada samo.',
    },
    rack: {
      title: 'Ściągnij znad osadu',
      text: 'Zlej klarowny płyn znad tego, co opadło; kosztuje to około 3 % objętości, tutaj {{loss}}.',
    },
    bentonite: {
      title: 'Bentonit',
      text: 'Na to naczynie od {{low}} do {{high}} (od 0,5 do 1 g na litr), namoczone przez dzień w {{waterLow}} do {{waterHigh}} gorącej wody, wmieszane; po tygodniu ściągnij znad osadu. Najpierw spróbuj na {{trial}}.',
    },
    louche: {
      title: 'Jeśli to olejki',
      text: 'Olejki ze skórek i pestek mętnieją, gdy moc spada. Podnieś moc albo pogódź się z tym: są nieszkodliwe.',
      action: 'Podnieś moc',
    },
    pectin: {
      title: 'Jeśli to pektyna',
      text: 'Enzym rozkłada pektynę, zanim spirytus trafi na owoce; powyżej około {{limit}} prawie nie działa. Teraz zostają tylko zimno, ściąganie i czas; w przyszłym roku najpierw enzym.',
    },
    source: 'Zwyczaj rzemiosła; dawki są z pracowni, nie z etykiety: trzymaj się opakowania.',
  },
} as const
