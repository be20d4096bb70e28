/** Moods that name a palette: their colours from top to bottom of a bar, `#rrggbb`, from memory; and the words for them. */
export type Theme = {
  readonly id: string;
  readonly words: RegExp;
  readonly stops: readonly string[];
};

export const THEMES: readonly Theme[] = [
  {
    id: 'sunset',
    words: /\bsunsets?\b|\b(?:atardecer|ocaso|puesta de sol)\b/u,
    stops: ['#4b3a78', '#a8487f', '#e0714a', '#f2b95c'],
  },
  {
    id: 'sunrise',
    words: /\b(?:sunrise|dawn)\b|\b(?:amanecer|alba)\b/u,
    stops: ['#6b6aa8', '#d8a0b4', '#f3c39a', '#f7e3ae'],
  },
  {
    id: 'ocean',
    words: /\b(?:oceans?|sea(?:side)?|waves?|beach)\b|\b(?:oceano|mar|olas?|playa)\b/u,
    stops: ['#16345f', '#1f6e96', '#5fb3b8', '#e3ecdc'],
  },
  {
    id: 'forest',
    words: /\b(?:forest|woods?)\b|\bbosque\b/u,
    stops: ['#24402f', '#4c7042', '#93a05a', '#6b4a33'],
  },
  {
    id: 'autumn',
    words: /\b(?:autumn|fall)\b|\botono\b/u,
    stops: ['#6f2b2a', '#b4532a', '#d69a36', '#6d6a35'],
  },
  { id: 'spring', words: /\bspring\b|\bprimavera\b/u, stops: ['#f0b9c6', '#f5e39a', '#a9cf8d', '#b9b3e0'] },
  {
    id: 'rainbow',
    words: /\brainbow\b|\barco ?iris\b/u,
    stops: ['#c8323a', '#ea8a2e', '#f0d23c', '#4a9a4c', '#3565b8', '#6d45a0'],
  },
  { id: 'desert', words: /\bdesert\b|\bdesierto\b/u, stops: ['#8a4a34', '#c9885a', '#e3c493', '#8fa39b'] },
  {
    id: 'berries',
    words: /\bberr(?:y|ies)\b|\b(?:bayas|frutos rojos)\b/u,
    stops: ['#3d2150', '#7a2a5c', '#b83a5e', '#e7a9b4'],
  },
  {
    id: 'night',
    words: /\b(?:night|galaxy)\b|\b(?:noche|galaxia)\b/u,
    stops: ['#14162c', '#2b2f6b', '#5b3f8c', '#b7a7d6'],
  },
  { id: 'citrus', words: /\bcitrus\b|\bcitricos?\b/u, stops: ['#e2742a', '#f2c230', '#c9d84a', '#6fae3f'] },
  {
    id: 'earth',
    words: /\bearthy?\b|\b(?:tierra|terrosos?)\b/u,
    stops: ['#4d3527', '#8a5a3c', '#b98f63', '#d9c7a4'],
  },
  {
    id: 'christmas',
    words: /\b(?:christmas|xmas|yule)\b|\b(?:navidad|navidenos?|navidenas?)\b/u,
    stops: ['#8e2a2e', '#2f5d3a', '#f3efe2', '#c9a24a'],
  },
  {
    id: 'winter',
    words: /\bwinter\b|\binvierno\b/u,
    stops: ['#2c4a6e', '#7fa3bf', '#cfdbe2', '#f4f3ee'],
  },
  {
    id: 'summer',
    words: /\bsummer\b|\bverano\b/u,
    stops: ['#e8735a', '#f2c14a', '#5fb5b0', '#f6ecd2'],
  },
  {
    id: 'halloween',
    words: /\bhalloween\b|\bdia de (?:los )?muertos\b/u,
    stops: ['#2a2a2a', '#d8742c', '#5b3f78', '#8ea44a'],
  },
  {
    id: 'valentine',
    words: /\bvalentines?\b|\bsan valentin\b/u,
    stops: ['#9c2f3f', '#d97f92', '#f0c9cd', '#f7efe6'],
  },
];
