const RARITY_STEPS = 24;

/** How rare a feature is that stands in `holding` of `all` texts, as kept in {@link Model}: 1 + ln((1+n)/(1+df)). */
export const rarity = (holding: number, all: number): number =>
  Math.min(255, Math.round(RARITY_STEPS * (1 + Math.log((1 + all) / (1 + holding)))));
