/** Words around every screen: navigation, demo banner, settings, what is not made yet. */
export const shell = {
  name: 'Ratafia',
  skip: 'Skip to the content',
  navigation: 'Screens',
  screens: {
    today: 'Today',
    batches: 'Batches',
    draft: 'Draft',
    marry: 'Marry',
    shelf: 'Shelf',
    season: 'Season',
    bench: 'Bench',
    cellarRoom: 'Jars & pantry',
    fruits: 'Fruit',
    safekeeping: 'Safekeeping',
  },
  demo: {
    text: 'Demo cellar ‘Alder End’. Nothing here touches your own book.',
    back: 'Back to my cellar',
    remove: 'Remove the demo',
  },
  settings: {
    open: 'Settings',
    title: 'Settings of this cellar',
    theme: 'Light',
    themes: { light: 'Day', dark: 'Night', system: 'As the system' },
    units: 'Units',
    unitSystems: { metric: 'ml, L, g, kg, °C', us: 'fl oz, gal, oz, lb, °F' },
    locale: 'Numbers and dates as in',
    currency: 'Money in',
    done: 'Done',
  },
  later: {
    lead: 'This screen is not made yet.',
    season: {
      what: 'Here you will plan next year: which fruit in which week, how much spirit and sugar, and which jars are free.',
      meanwhile:
        'Meanwhile, Today says what the batches in hand need next, and Jars & pantry shows what stands empty.',
    },
    goTo: { batches: 'Go to Batches', today: 'Go to Today' },
  },
  notFound: {
    title: 'No such screen',
    text: 'The link leads nowhere in this cellar.',
    go: 'Go to Today',
  },
} as const
