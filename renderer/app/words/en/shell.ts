/** Words around every screen: navigation, demo banner, settings. */
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
  notFound: {
    title: 'No such screen',
    text: 'The link leads nowhere in this cellar.',
    go: 'Go to Today',
  },
} as const
