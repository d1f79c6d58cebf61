/** Words of a batch's page: its moves, its curve, its jars. */
export const batch = {} as const
