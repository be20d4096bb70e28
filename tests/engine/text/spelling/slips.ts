const KEYS = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'] as const;
const beside = (letter: string): string => {
  const row = KEYS.find(keys => keys.includes(letter)) ?? '';
  const at = row.indexOf(letter);
  return [row[at - 1], row[at + 1]].filter(key => key !== undefined).join('');
};

/** Spellings by ear, English and Spanish (from memory of how words are misspelt). */
const SOUNDS: readonly (readonly [RegExp, string])[] = [
  [/ph/u, 'f'],
  [/c(?=[aou])/u, 'k'],
  [/c(?=[ei])/u, 's'],
  [/z/u, 's'],
  [/v/u, 'b'],
  [/b/u, 'v'],
  [/ll/u, 'y'],
  [/h/u, ''],
  [/qu/u, 'k'],
  [/g(?=[ei])/u, 'j'],
  [/y/u, 'i'],
  [/(?<=\p{L})i/u, 'e'],
  [/(?<=\p{L})e(?=\p{L})/u, 'i'],
  [/(?<=\p{L})o(?=\p{L})/u, 'u'],
];

type Slip = (word: string, draw: () => number) => string;
const at = (word: string, draw: () => number, from = 0, to = word.length) =>
  from + Math.floor(draw() * (to - from));

/** One slip of each kind in a word of lower-case letters without accents. */
export const SLIPS: Readonly<Record<string, Slip>> = {
  neighbour: (word, draw) => {
    const place = at(word, draw);
    const keys = beside(word[place]!);
    return word.slice(0, place) + (keys[at(keys, draw)] ?? word[place]!) + word.slice(place + 1);
  },
  doubled: (word, draw) => {
    const place = at(word, draw);
    return word.slice(0, place) + word[place] + word.slice(place);
  },
  dropped: (word, draw) => {
    const place = at(word, draw);
    return word.slice(0, place) + word.slice(place + 1);
  },
  swapped: (word, draw) => {
    const place = at(word, draw, 0, word.length - 1);
    return word.slice(0, place) + word[place + 1] + word[place] + word.slice(place + 2);
  },
  'by ear': (word, draw) => {
    const fitting = SOUNDS.filter(([heard]) => heard.test(word));
    const sound = fitting[at(word, draw, 0, fitting.length)];
    return sound ? word.replace(...sound) : word;
  },
};

/** A name with one slip in one of its words of four letters or more. */
export function slipped(name: string, kind: string, draw: () => number): string {
  const words = name.split(' ');
  const long = words.flatMap((word, place) => (/^[a-z]{4,}$/u.test(word) ? [place] : []));
  const place = long[Math.floor(draw() * long.length)];
  if (place === undefined) return name;
  return words.map((word, one) => (one === place ? SLIPS[kind]!(word, draw) : word)).join(' ');
}
