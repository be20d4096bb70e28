const PLAIN = /^(?:plain|bare|none|no colou?r|uncolou?red|natural|sin color|sin colorear|solo|sola)$/iu;

/** Whether a text in the place of a colour says that there is none: `plain`, `bare`, `sin color`. English and Spanish. Pure. */
export const saysPlain = (text: string): boolean => PLAIN.test(text.trim());
