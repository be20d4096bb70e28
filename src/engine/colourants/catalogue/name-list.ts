/** Hues as other regions call them (from memory): rosado of rosa, colorado of rojo, naranjo of naranja. */
const TWINS: readonly (readonly [RegExp, readonly string[]])[] = [
  [/(?<!\p{L})rosa(?!\p{L})/u, ['rosado', 'rosada']],
  [/(?<!\p{L})rojo(?!\p{L})/u, ['colorado']],
  [/(?<!\p{L})roja(?!\p{L})/u, ['colorada']],
  [/(?<!\p{L})naranja(?!\p{L})/u, ['naranjo', 'anaranjado', 'anaranjada']],
];
/** "Rosa" is a flower and a woman too: only beside a word for what is coloured does it have twins. */
const OF_PIGMENT = /^(?:mica|[oó]xido|arcilla|ultramar(?:ino)?|laca|barro|greda|tierra|pigmento)(?!\p{L})/u;

const withTwins = (name: string): readonly string[] => [
  name,
  ...(OF_PIGMENT.test(name)
    ? TWINS.flatMap(([hue, others]) => (hue.test(name) ? others.map(other => name.replace(hue, other)) : []))
    : []),
];

/** Names that stand in one line, comma by comma, with the twins of their Spanish hues. Pure. */
export const namesIn = (names: string): readonly string[] => [
  ...new Set(names.split(/,\s*/).flatMap(name => withTwins(name.trim()))),
];
