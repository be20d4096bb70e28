/** An amount in the words that options take, as it is said. */
export const amountTold = (told: string): string =>
  told
    .replace(/ oils$/u, ' de aceites')
    .replace(/ batter$/u, ' de masa')
    .replace(/ bars of /u, ' pastillas de ');
