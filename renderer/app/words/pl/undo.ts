/** What `en/undo.ts` says, in Polish. */
export const undo = {
  label: 'Co zrobiono ostatnio',
  told: {
    recorded: 'Zapisano: {{what}}.',
    changed: 'Zmieniono: {{what}}.',
    struck: 'Wykreślono: {{what}}.',
    takenBack: 'Cofnięto: {{what}}.',
    putBack: 'Przywrócono: {{what}}.',
  },
  andMore_one: '{{what}} i jeszcze {{count}}',
  andMore_few: '{{what}} i jeszcze {{count}}',
  andMore_many: '{{what}} i jeszcze {{count}}',
  andMore_other: '{{what}} i jeszcze {{count}}',
  undo: 'Cofnij',
  redo: 'Ponów',
  dismiss: 'Ukryj',
} as const
