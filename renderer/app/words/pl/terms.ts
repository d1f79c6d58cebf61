/** What `en/terms.ts` says, in Polish. */
export const terms = {
  strength: {
    name: 'Moc, % obj.',
    text: 'Jaka część objętości to czysty alkohol, w 20 °C. Litr o mocy 30 % obj. miałby 300 ml alkoholu, gdyby go wyjąć i zmierzyć osobno.',
  },
  apparent: {
    name: 'Moc pozorna',
    text: 'To, co alkoholomierz pokazuje w słodkim płynie. Cukier unosi pływak, więc pokazuje dużo za mało: 40 % obj. z odrobiną cukru może pokazać 37, a nalewka nic.',
  },
  proof: {
    name: 'Proof',
    text: 'Amerykański proof to dwa razy moc objętościowa, liczona w 60 °F zamiast w 20 °C.',
  },
  contraction: {
    name: 'Kontrakcja',
    text: 'Spirytus i woda zajmują razem mniej miejsca niż osobno: po pół litra daje 965 ml. Dlatego same objętości się nie sumują, a masy tak.',
  },
  sugar: {
    name: 'Cukier, g/l',
    text: 'Gramy wszystkich cukrów w litrze gotowego płynu: tego, co dodano, i tego, co wniosły owoce.',
  },
  brix: {
    name: 'Stopnie Brixa, °Bx',
    text: 'Gramy cukru w 100 g syropu. Cukromierz lub refraktometr ze skalą °Bx (dawniej °Blg) mówi prawdę w soku i syropie; w nalewce liczy się też alkohol i refraktometr pokazuje dużo więcej.',
  },
  density: {
    name: 'Gęstość',
    text: 'Masa objętości, w kilogramach na metr sześcienny, czyli gramach na litr. Spirytus jest lżejszy od wody, cukier czyni ją cięższą: nalewka może mieć gęstość wody.',
  },
  acid: {
    name: 'Kwas, g/l',
    text: 'Kwasy owocowe w litrze, liczone jako bezwodny kwas cytrynowy. Równoważą słodycz: 200 g/l cukru smakuje mdło przy małym kwasie, a żywo przy dostatecznym.',
  },
  steeping: {
    name: 'Maceracja',
    text: 'Owoce leżą w spirytusie: alkohol wchodzi w owoce, a sok, barwa i aromat wychodzą, aż wszędzie jest tak samo. Pokrojone owoce potrzebują dni, całe z nalotem woskowym wielu tygodni.',
  },
  held: {
    name: 'Zatrzymane w owocach',
    text: 'Płyn w owocach i na nich. Ma moc naczynia, ale nie ścieka: część wydobywa cukier albo wyciskanie.',
  },
  bed: {
    name: 'Cukier na dnie',
    text: 'Cukier, który się jeszcze nie rozpuścił. Mocny spirytus rozpuszcza go mało; pomaga obracanie naczynia.',
  },
  drawOff: {
    name: 'Zlanie',
    text: 'Odlanie płynu znad owoców. To, co spłynie, jest pierwszym nalewem, najlepszą częścią.',
  },
  sugarDraw: {
    name: 'Zasyp cukrem',
    text: 'Odcieknięte owoce, często rozgniecione, zasypuje się cukrem, który rozpuszcza się w spirytusie zatrzymanym w owocach. Po kilku dniach zlewa się syrop; można to powtórzyć.',
  },
  press: {
    name: 'Wyciskanie',
    text: 'Wyciśnięcie owoców ręką albo prasą po ostatnie, co trzymają. Wychodzi mętne i wymaga więcej filtrowania.',
  },
  marry: {
    name: 'Kupaż',
    text: 'Zlanie nalewów razem w wybranych częściach, aby każda butelka była taka sama.',
  },
  rack: {
    name: 'Ściąganie znad osadu',
    text: 'Zlanie albo ściągnięcie rurką płynu, który się ustał, znad tego, co leży na dnie.',
  },
  lees: {
    name: 'Osad',
    text: 'To, co opada na dno, gdy płyn się klaruje. Przy każdym ściąganiu traci się z nim około trzech części na sto.',
  },
  delle: {
    name: 'Liczba Dellego',
    text: 'Dziesiąta część cukru w g/l plus cztery i pół raza moc w % obj. Poniżej 75 drożdże mogą zacząć fermentację; powyżej 85 płyn się trzyma.',
  },
  window: {
    name: 'Okno',
    text: 'Od kiedy nalewka jest ułożona, do kiedy zaczyna słabnąć: według owoców, mocy, cukru, ciepła i światła oraz twoich własnych degustacji.',
  },
  band: {
    name: 'Pasmo',
    text: 'To, co leży między małą a dużą wartością: dziewięć razy na dziesięć prawdziwa jest w środku. Szerokie pasmo znaczy, że wiadomo jeszcze mało.',
  },
  yield: {
    name: 'Wydajność',
    text: 'Litry gotowej nalewki z kilograma owoców. Zaczyna od tego, co zwykłe dla owoców, i z każdym zakończonym nastawem przesuwa się ku twojej własnej.',
  },
  lot: {
    name: 'Partia',
    text: 'Butelki napełnione razem z tego samego płynu albo towar kupiony razem.',
  },
  vintage: {
    name: 'Rocznik',
    text: 'Rok, w którym do nalewki włożono pierwsze owoce.',
  },
  opened: {
    name: 'Otwarta butelka',
    text: 'Odkorkowana butelka dostaje powietrza: najpierw ucieka aromat. Najlepiej wypić ją w kilka miesięcy, im słabsza, tym prędzej.',
  },
  lineage: {
    name: 'Rodowód',
    text: 'Skąd wzięło się wszystko w butelce, przez każde naczynie, i dokąd poszło wszystko, co kupiono.',
  },
  halfTime: {
    name: 'Czas połowiczny',
    text: 'Dni, w których wychodzi z owoców połowa tego, co ma jeszcze wyjść. Po czterech takich wyszły około 94 części na sto.',
  },
  learned: {
    name: 'Nauczone',
    text: 'Wyliczone z twoich własnych nastawów i, dopóki jest ich mało, zmieszane ze zwykłą wartością.',
  },
  gap: {
    name: 'Odstęp planu',
    text: 'Jak daleko plan może być najwyżej od najlepszego możliwego. Zero znaczy, że udowodniono, iż jest najlepszy.',
  },
} as const

/** Round the explanation of a term. */
export const termHelp = {
  ask: 'Co to jest? {{name}}',
  more: 'Wszystkie pojęcia w podręczniku',
} as const
