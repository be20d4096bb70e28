/** What a member wrote, in SI: millilitres of something poured or grams of something weighed. */
export type Volume = { readonly measure: 'volume'; readonly millilitres: number };
export type Mass = { readonly measure: 'mass'; readonly grams: number };
export type Amount = Volume | Mass;

/** How much batter is to be coloured; `oils` when the member counts by the oils that went into it. */
export type Portion = Amount & { readonly of: 'batter' | 'oils' };
