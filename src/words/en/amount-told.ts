/** An amount in the words that options take, as it is said. */
export const amountTold = (told: string): string => told.replace(/ oils$/u, ' of oils');
