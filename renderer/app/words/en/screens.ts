/** Words of the screens, one entry a screen; a batch's page has a file of its own. */
export const screens = {} as const
