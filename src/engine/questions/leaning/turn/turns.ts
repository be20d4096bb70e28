import type { Language } from '../../../language.ts';
import { unbroken } from '../../../over-lines.ts';
import { type Opened, plainTurn } from './plain.ts';

const FINE = new RegExp(
  unbroken`
    ^(?:(?:ok|okay|okey|kk?|great|cool|perfect|lovely|nice|brilliant|fab|got it|gotcha|will do|will try|
    ill try|good|right|righto|noted|understood|makes sense|that makes sense|good to know|fair enough|vale|
    perfecto|perfecta|genial|listo|entendido|de acuerdo|bien|muy bien|que bien|estupendo|dale|claro|anotado|
    ya veo|ya|asi lo hago)(?: |$))+$
  `,
  'u',
);

/** "It came out lovely", "ya salió bien". */
const GLAD = new RegExp(
  unbroken`
    ^(?:(?:it|they|that|this|all|ya|me|y) )*(?:worked|(?:came|turned) out (?:great|good|well|fine|lovely|
    perfect|nice|straight)|(?:is|are) (?:perfect|lovely|fine now|great)|(?:salio|salieron|quedo|quedaron|
    funciono|resulto)(?: (?:muy |super |bien |re)?(?:bien|rect[oa]s?|derech(?:it)?[oa]s?|perfect[oa]s?|
    hermos[oa]s?|bonit[oa]s?|lind[oa]s?|precios[oa]s?|genial|divin[oa]s?))?)(?: (?:salio|salieron|quedo|
    quedaron) \p{L}+)*$
  `,
  'u',
);

/** "Ok", "perfecto": nothing is asked and nothing told. */
export const fineTurn = ({ text, leads, tails }: Opened): boolean =>
  (FINE.test(text) && leads.every(one => FINE.test(one)) && tails.length === 0) || GLAD.test(text);

const IN_SPANISH = new RegExp(
  unbroken`
    ^(?:(?:and|y|ok|now|ahora|can (?:you|u|ye)|could (?:you|u)|puedes|please|por favor|say (?:it|that)|dilo|
    dimelo|lo mismo|the same|pero|mejor|me lo dices|repite|repitelo|podrias) )*(?:in|en) (?:spanish|espanol|
    castellano)(?: (?:please|por favor|porfa|pls|too|tambien))*(?: (?:(?:its|es|is) )?(?:for|pa|
    para) (?:\p{L}+ ?){1,4})?$
  `,
  'u',
);
const IN_ENGLISH = new RegExp(
  unbroken`
    ^(?:(?:and|y|ok|now|ahora|can (?:you|u|ye)|could (?:you|u)|puedes|please|por favor|say (?:it|that)|dilo|
    dimelo|lo mismo|the same|pero|mejor|me lo dices|repeat|repite) )*(?:in|en) (?:english|
    ingles)(?: (?:please|por favor|porfa|pls|too|tambien))*(?: (?:(?:its|es|is) )?(?:for|pa|
    para) (?:\p{L}+ ?){1,4})?$
  `,
  'u',
);

/** Words that may stand behind it. */
const MOST_BEHIND = 6;

/** The language that a turn asks for, where it asks for nothing else. */
export function languageTurn(typed: string): Language | undefined {
  const [asked = '', ...rest] = typed.split(/[?!.;](?:\s|$)/u);
  // "And in English? My pal's reading": what is told behind it asks for nothing.
  if (rest.join(' ').split(' ').length > MOST_BEHIND || /[?¿]/u.test(rest.join(' '))) return undefined;
  const text = plainTurn(asked);
  if (IN_SPANISH.test(text)) return 'es';
  return IN_ENGLISH.test(text) ? 'en' : undefined;
}

const NAME = String.raw`(\p{L}+(?: \p{L}+){0,3})`;
/** Where something may stand behind it. */
const SHORT = String.raw`(\p{L}+(?: \p{L}+){0,3}?)`;
const SWAPS: readonly (readonly [RegExp, out: 1 | 2])[] = [
  [
    new RegExp(
      unbroken`
        ^(?:(?:can|could|may) i |what if i |if i |i |lets )?(?:swap|swapped|change|changed|replace|replaced|
        switch|exchange)(?: out)? (?:the |my |all the )?${NAME} (?:for|with|to|by) (?:the )?${NAME}$
      `,
      'u',
    ),
    1,
  ],
  [
    new RegExp(`^(?:with |use |using |i use )?${NAME} (?:instead of|rather than) (?:the |my )?${NAME}$`, 'u'),
    2,
  ],
  [
    new RegExp(
      `^(?:puedo |si |y si )?(?:cambi|sustitu|reempla|camb)[a-z]+ (?:el |la |los )?(?:aceite de )?${NAME} (?:por|con) (?:el |la |aceite de )*${NAME}$`,
      'u',
    ),
    1,
  ],
  [
    new RegExp(
      `^(?:con |uso |si uso |usando )?(?:el |la )?${NAME} en (?:vez|lugar) (?:de|del) (?:el |la )?${NAME}$`,
      'u',
    ),
    2,
  ],
  // "Si le saco el coco y pongo girasol", "take the coconut out and put sunflower in".
  [
    new RegExp(
      unbroken`
        ^(?:what if i |if i |can i |i )?(?:take|took|leave|left|drop|dropped|remove)(?: out)? (?:the |my |
        all the )?${SHORT}(?: out)? and (?:i )?(?:put|use|used|add|go with|
        have)(?: in)? (?:the )?${SHORT}(?: in)?$
      `,
      'u',
    ),
    1,
  ],
  [
    new RegExp(
      unbroken`
        ^(?:y |si )*(?:le |les )?(?:sac|saqu|quit)\p{L}+ (?:todo )?(?:el |la |
        los )?(?:aceite de )?${SHORT} y (?:le |les )?(?:pong|pus|ech|us|agreg|anad|met|va)\p{L}* (?:el |la |
        aceite de )*${SHORT}(?: en su lugar)?$
      `,
      'u',
    ),
    1,
  ],
];

const PART = String.raw`(\d+(?:[.,]\d+)?(?: ?(?:g|kg|oz|lbs?|grams?|gramos?|onzas?))?)`;
const PART_SWAPS: readonly RegExp[] = [
  new RegExp(
    unbroken`
      ^(?:(?:can|could|may) i |what if i |if i |i )?(?:swap|swapped|change|changed|replace|replaced|
      switch) ${PART}(?: of)?(?: (?:it|that|them|the total))?(?: ?(?:the )?(?!for |with |to |
      by )${SHORT})? (?:for|with|to|by) (?:the )?${SHORT}$
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      ^(?:puedo |si |y )*(?:cambi|sustitu|reempla)[a-z]+ ${PART}(?: de)?(?: (?:eso|ese|esos))?(?: ?(?:del |
      el |la |aceite de )*(?!por |con |a )${SHORT})? (?:por|con|a) (?:el |la |aceite de )*${SHORT}$
    `,
    'u',
  ),
];

/** How much of an oil goes, of which one where that is told, and which comes in its place. */
export function partSwapTurn(
  text: string,
): { readonly amount: string; readonly out: string | undefined; readonly into: string } | undefined {
  for (const pattern of PART_SWAPS) {
    const [, amount, out, into] = pattern.exec(text) ?? [];
    if (amount !== undefined && into !== undefined) return { amount, out, into };
  }
  return undefined;
}

/** Which oil goes and which comes in its place. */
export function swapTurn(text: string): { readonly out: string; readonly into: string } | undefined {
  for (const [pattern, out] of SWAPS) {
    const found = pattern.exec(text);
    if (found) return { out: found[out]!, into: found[3 - out]! };
  }
  return undefined;
}

const ONE_OIL = new RegExp(
  unbroken`
    ^(?:(?:im |ill |ive |he |i have |just |ya |also |tambien |le |les |si le |if i |i |voy a |
    put )*(add|adding|added|plus|anad\p{L}*|agreg\p{L}*|sum[ao]\p{L}*|ech[oe]\p{L}*|pongo|puse|
    mas) )?(\d+(?:[.,]\d+)?(?: ?(?:g|kg|oz|lbs?|grams?|gramos?|onzas?))?) (?:more |mas )?(?:of |
    de )?(?:aceite de )?(\p{L}+(?: \p{L}+){0,3}?)(?: (?:since|after|afterwards|later|already|in|despues|
    luego|ya|desde entonces))*$
  `,
  'u',
);

/** "Add 50 g castor", "and 50 g castor": one oil with its weight, and whether it is said to come in addition. */
export function oilTurn(
  text: string,
): { readonly isAdded: boolean; readonly amount: string; readonly name: string } | undefined {
  const [, verb, amount, name] = ONE_OIL.exec(text) ?? [];
  return amount === undefined || name === undefined
    ? undefined
    : { isAdded: verb !== undefined, amount, name };
}
