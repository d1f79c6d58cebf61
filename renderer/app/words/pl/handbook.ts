/** What `en/handbook.ts` says, in Polish. */
const chapter = {
  stages: 'Droga naczynia',
  instruments: 'Przyrządy',
  cautions: 'Ostrzeżenia',
  numbers: 'Jak to się liczy',
  terms: 'Pojęcia',
} as const

const step = {
  layer: {
    name: 'Przełóż cukrem',
    text: 'Czyste, zdrowe owoce przekłada się cukrem na noc. Cukier wyciąga sok z żywych owoców; wystarczy dzień, dłużej zaczyna fermentować.',
    log: '„Wsyp owoce”, z masą i sposobem pokrojenia, oraz „Dodaj cukru”.',
  },
  cover: {
    name: 'Zalej spirytusem',
    text: 'Najpierw woda, potem mocny spirytus, aż owoce są zakryte na szerokość palca. Soczyste owoce zalewa się spirytusem od {{low}} do {{high}}, skórki mocniejszym, zioła słabszym.',
    log: '„Wlej spirytus” i „Wlej wodę”. Ratafia mówi, jaką moc będzie miało naczynie, gdy wyjdzie sok z owoców.',
  },
  steep: {
    name: 'Maceruj w ciemności',
    text: 'Tygodnie dla owoców miękkich lub pokrojonych, miesiące dla całych pestkowych. Obracane z początku codziennie, naczynie idzie dużo szybciej: cukier i sok leżą ciężkie na dnie.',
    log: '„Zapisz odczyt” od czasu do czasu: każdy przesuwa prognozę tego naczynia i uczy księgę o twoich owocach.',
  },
  drawOff: {
    name: 'Zlej',
    text: 'Gdy to, co ma jeszcze wyjść, jest mniej warte niż czekanie, płyn się zlewa. Owoce zatrzymują sporą jego część.',
    log: '„Zlej”, z objętością, która spłynęła: mówi, ile owoce jeszcze trzymają.',
  },
  sugarDraw: {
    name: 'Zasyp cukrem',
    text: 'Owoce się rozgniata i znów zasypuje cukrem. Rozpuszcza się on w spirytusie, który w nich został, i po kilku dniach można zlać słodki nalew, raz lub więcej.',
    log: '„Rozgnieć”, „Zasyp cukrem”, potem „Zlej”.',
  },
  press: {
    name: 'Wyciśnij',
    text: 'Co jeszcze trzyma się owoców, można wycisnąć. Wtedy owoce oddały, co miały.',
    log: '„Wyciśnij”, z objętością, która wyszła, potem „Wyrzuć” owoce.',
  },
  marry: {
    name: 'Skupażuj',
    text: 'Nalewy zlewa się razem w równych częściach, aby wszystkie butelki były jednakowe. Woda, spirytus, cukier lub kwas doprowadzają kupaż do tego, czego chcesz.',
    log: 'Ekran Kupaż wylicza części i dodatki; jedno naciśnięcie zapisuje wpisy.',
  },
  filter: {
    name: 'Przefiltruj',
    text: 'Sito, płótno, kilka dni stania, ściągnięcie znad osadu, potem papier. Każdy krok trochę zatrzymuje.',
    log: '„Filtruj”, z tym, przez co, i ile przeszło.',
  },
  bottle: {
    name: 'Rozlej do butelek',
    text: 'Czyste butelki, trochę miejsca pod korkiem, na każdej etykieta z nazwą, rocznikiem, mocą i cukrem.',
    log: '„Butelkuj”, z wielkościami i liczbami; Etykiety drukują, co na nich będzie.',
  },
  rest: {
    name: 'Odłóż i pij',
    text: 'Ostrość zaokrągla się przez miesiące, barwa i świeży aromat słabną przez lata, tym wolniej, im chłodniej i ciemniej.',
    log: '„Skosztuj”: twoje degustacje przesuwają okno, w którym partia jest najlepsza.',
  },
} as const

const tool = {
  hydrometer: {
    name: 'Areometr',
    text: 'Pływa w płynie i pokazuje jego gęstość: wyżej w ciężkim, głębiej w lekkim. Cukier obciąża, alkohol odciąża, więc jeden odczyt nie mówi ani o jednym, ani o drugim.',
  },
  alcoholometer: {
    name: 'Alkoholomierz',
    text: 'Areometr ze skalą w % obj. Ma rację w samym spirytusie z wodą, w temperaturze zapisanej na szyjce; myli się, gdy tylko jest cukier.',
  },
  refractometer: {
    name: 'Refraktometr',
    text: 'Kropla na szkle, odczyt w °Bx. Ma rację w soku i syropie; w nalewce alkohol też załamuje światło. Razem z gęstością daje moc i cukier.',
  },
  boilOff: {
    name: 'Areometr i garnek',
    text: 'Zmierz gęstość, odgotuj odmierzoną próbkę do jednej trzeciej, aby cały alkohol odszedł, dopełnij wodą do tego, co było, i zmierz ponownie w tej samej temperaturze. Dwie gęstości dają moc i cukier. Wietrz pomieszczenie i nie używaj otwartego ognia: to, co odchodzi, pali się.',
  },
  scale: {
    name: 'Waga',
    text: 'Najbardziej godna zaufania ze wszystkich. Masy się sumują tam, gdzie objętości nie; odmierzona kolba na wadze to dobry areometr.',
  },
  thermometer: {
    name: 'Termometr',
    text: 'Potrzebuje go każdy odczyt: od chłodnej piwnicy do ciepłej kuchni ten sam spirytus przesuwa alkoholomierz o kilka kresek.',
  },
} as const

const danger = {
  flame: {
    name: 'Mocny spirytus się pali',
    text: 'Spirytus {{strong}} wydziela opary, które płomień lub iskra zapala w {{strongFlash}}, spirytus {{weak}} w {{weakFlash}}. Żadnego ognia, kuchenki ani palenia, wietrz pomieszczenie, otwieraj po trochu. Nigdy nie podgrzewaj spirytusu; grzej tylko wodę lub syrop i daj im ostygnąć, zanim je połączysz.',
  },
  pouring: {
    name: 'Mieszanie grzeje',
    text: 'Spirytus i woda grzeją się wzajemnie i kurczą. Daj im ostygnąć, zanim zamkniesz naczynie, i zostaw w nim miejsce.',
  },
  stones: {
    name: 'Pestki i liście',
    text: 'Pestki wiśni, śliwek, moreli i brzoskwiń, ich liście i gorzkie migdały mają związki, które zmieniają się w cyjanek. Mało pestek, całych, nie na długo; nigdy rozbitych pestek w naczyniu; trzymaj w ciemności.',
  },
  rawFruit: {
    name: 'Owoce, których nie je się na surowo',
    text: 'Czarny bez, jarzębina i niektóre inne są na surowo trujące lub szkodzą i najpierw się je podgrzewa. Zbieraj tylko to, co znasz na pewno. Strona każdego owocu mówi, na co uważać.',
  },
  mould: {
    name: 'Owoce nad płynem',
    text: 'Brązowieją i pleśnieją. Obciąż je, zakryj, obracaj naczynie. Naczynie z włochatą pleśnią wyrzuca się w całości.',
  },
  gas: {
    name: 'Gaz w butelce',
    text: 'Słaba, słodka nalewka może fermentować, a zamknięta butelka wybuchnąć. Bąbelki, wypchnięty korek lub syk: otwórz ją przez ścierkę, schłodź, dodaj spirytusu. Ratafia ostrzega według liczby Dellego; twoich drożdży nie zna.',
  },
  vessels: {
    name: 'Naczynia',
    text: 'Szkło, kamionka ze szkliwem bez ołowiu albo stal nierdzewna. Żadnej miedzi, aluminium, cynku, miękkiej gumy ani cienkiego plastiku przy mocnym spirytusie.',
  },
  drinking: {
    name: 'Picie',
    text: 'Alkohol szkodzi. Trzymaj go z dala od dzieci, nie prowadź, nie pij w ciąży ani z lekami, które tego zabraniają. Kieliszek nalewki może mieć tyle alkoholu co kieliszek wina.',
  },
  law: {
    name: 'Prawo',
    text: 'Macerowanie owoców w spirytusie, od którego zapłacono akcyzę, jest w domu dozwolone prawie wszędzie, destylacja nie, a sprzedaż prawie wszędzie wymaga zezwolenia. To, co obowiązuje tam, gdzie mieszkasz, ma pierwszeństwo przed wszystkim, co tu napisano; zapytaj tych, którzy mają uprawnienia.',
  },
} as const

const reckoning = {
  ledger: {
    name: 'Księga',
    text: 'Każdy wpis przenosi alkohol, wodę, cukier, kwas, inne rozpuszczalne i miąższ z miejsca na miejsce, w gramach. Nic nie powstaje ani nie ginie: sumę pokazuje ekran Kopie i księga. Moc i cukier wylicza się z tego, co jest w miejscu; nigdy się ich nie przechowuje.',
    source: 'Zachowanie masy; skład owoców i jego źródła są na stronie każdego owocu.',
  },
  strength: {
    name: 'Spirytus i woda',
    text: 'Gęstość z mocy i temperatury według wzoru międzynarodowego, moc z gęstości przez jego rozwiązanie. Przyrządy szklane mają poprawkę na własne ciepło.',
    source:
      'Międzynarodowe tablice alkoholometryczne OIML, R 22 (1975). Sprawdzone z Farmakopeą Europejską i amerykańskimi tablicami mierniczymi.',
  },
  sugar: {
    name: 'Cukier i woda',
    text: 'Gęstość z cukru i temperatury i odwrotnie; °Bx to udział cukru w masie.',
    source: 'ICUMSA SPS-4, gęstość roztworów sacharozy.',
  },
  mixture: {
    name: 'Spirytus, woda i cukier razem',
    text: 'Objętość samego spirytusu z wodą plus miejsce, które cukier zajmuje w tej ilości wody. Dokładne, gdy jednego z nich nie ma; pomiędzy z dokładnością około 1 kg/m³.',
    source:
      'Nasze złożenie obu powyższych tablic; publicznej tablicy wszystkich trzech nie znaleziono.',
  },
  readings: {
    name: 'Odczyty',
    text: 'Jeden odczyt i to, co wiadomo o naczyniu, albo dwa odczyty razem dają moc i cukier oraz to, o ile mogą się mylić: liczy się dokładność przyrządów i metody.',
    source:
      'Rozwiązane z powyższych gęstości; refrakcja według Lorentza i Lorenza, dopasowana do wartości z poradników (z pamięci).',
  },
  steeping: {
    name: 'Maceracja',
    text: 'Gdzie się skończy, wiadomo z bilansu materii. Jak szybko, mówi czas połowiczny według rodzaju owoców, pokrojenia i obracania, dobry z dokładnością do dwóch lub trzech razy; twoje odczyty zawężają go dla naczynia i dla owoców.',
    source:
      'Dyfuzja do ograniczonej objętości (Crank 1975, z pamięci, sprawdzone niezależnym rozwiązaniem); czasy połowiczne to oszacowania inżynierskie.',
  },
  yields: {
    name: 'Co owoce trzymają i dają',
    text: 'Litry zatrzymane przez kilogram po odcieknięciu i wyciśnięciu, od zwykłych ku twoim własnym z każdym zakończonym nastawem.',
    source: 'Oszacowania w granicach opublikowanych wydajności soku; twoje własne pomiary.',
  },
  keeping: {
    name: 'Trwałość',
    text: 'Liczba Dellego mówi, czy mogą w płynie żyć drożdże. Kwasowość jest pominięta, co tylko w kwaśnych owocach myli w bezpieczną stronę.',
    source: 'Kunkee i Amerine 1968, za notatką laboratorium winiarskiego.',
  },
  ageing: {
    name: 'Dojrzewanie',
    text: 'Barwa ubywa połowami, szybciej w cieple; okna zaczynają od zwyczaju dla owoców i przesuwają się z mocą, cukrem, kwasem, ciepłem, światłem i twoimi degustacjami.',
    source:
      'Opublikowane czasy połowiczne antocyjanów w czerwonych likierach; okna to zwyczaj rzemiosła, bez źródła.',
  },
  stock: {
    name: 'Zapas',
    text: 'Jak szybko pijesz i rozdajesz, miesiąc po miesiącu, z twojej własnej księgi, z pasmem, które jest szerokie, dopóki księga jest młoda.',
    source: 'Statystyka gamma i Poissona twoich własnych wpisów.',
  },
  season: {
    name: 'Przyszły sezon',
    text: 'Od życzeń i zapasu wstecz do litrów, owoców, spirytusu i cukru; potem naczynia i tygodnie wypełnia program całkowitoliczbowy, który najpierw spełnia życzenia według ważności, a potem oszczędza pieniądze. Jeśli czas się skończy, plan mówi, jak daleko od najlepszego może być.',
    source:
      'Mieszane programowanie całkowitoliczbowe (solver HiGHS); każdy zaplanowany nastaw jest odtwarzany przez księgę.',
  },
} as const

export const handbook = {
  title: 'Podręcznik',
  open: 'Podręcznik',
  lead: 'Jak w naczyniu powstaje nalewka i jak liczy Ratafia.',
  views: 'Rozdziały',
  chapter,
  step,
  log: 'W księdze:',
  tool,
  float: {
    title: 'Jeden areometr w trzech szklankach',
    text: 'Nalewka może unosić pływak tak wysoko jak woda: alkohol go topi, cukier go wypycha.',
    water: 'woda',
    spirit: 'spirytus',
    liqueur: 'nalewka',
  },
  danger,
  reckoning,
  source: 'Za:',
} as const
