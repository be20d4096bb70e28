/** Potassium hydroxide's share of the saponification from which soap stays a paste, and from which a bar is soft (common practice). */
const PASTE_FROM = 0.5;
const SOFT_FROM = 0.1;
/** Salt in percent of the oils from which a bar sets within hours and then crumbles under the knife (common practice). */
const SALT_BAR_FROM = 20;
/** When such a bar is cut, hours after the pour (common practice). */
export const SALT_BAR_HOURS = [1, 4] as const;

/** True where nothing is unmoulded or cut: mostly potassium soap is a paste. */
export const isPaste = (kohShare: number): boolean => kohShare >= PASTE_FROM;
/** True where a bar still sets, but soft and late. */
export const isSoft = (kohShare: number): boolean => kohShare > SOFT_FROM && !isPaste(kohShare);
/** True where a bar has to be cut the same day. */
export const isSaltBar = (saltPercentOfOils: number): boolean => saltPercentOfOils >= SALT_BAR_FROM;
