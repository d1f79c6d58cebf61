/** Everything the screens say, in Polish; what is not here yet is said in English. */
export const pl = {}
