import { unbroken } from '../over-lines.ts';

/**
 * Names of the trade as notebooks cut them off, with or without the point: "óx. rojo", "red ox.", "diox. titanio", "ultram. azul". Which language
 * is meant tells the word beside it.
 */
const HUE_ES =
  'roj[oa]|amarill[oa]|negr[oa]|verde|azul|marr[oó]n|naranja|caf[eé]|rosa|blanc[oa]|violeta|morad[oa]|ocre';
const HUE_EN = 'red|yellow|black|green|brown|orange|white|iron|chrome|chromium|zinc|tin';
const CUT_OFF: readonly (readonly [RegExp, string])[] = [
  [
    new RegExp(
      String.raw`(?<!\p{L})[oó]x\.? (?=(?:de |del )?(?:${HUE_ES}|hierro|zinc|cromo|titanio)(?!\p{L}))`,
      'giu',
    ),
    'óxido ',
  ],
  // Chromium takes its "de": "óx. cromo".
  [/(?<=(?<!\p{L})[oó]xido )(?=(?:hierro|zinc|cromo)(?!\p{L}))/giu, 'de '],
  [new RegExp(String.raw`(?<=(?<!\p{L})(?:${HUE_EN}) )ox(?:\.|(?!\p{L}))`, 'giu'), 'oxide'],
  [/(?<!\p{L})di[oó]x\.? (?:de )?(?=titanio)/giu, 'dióxido de '],
  [/(?<!\p{L})(?:tit|titan)\. di(?:ox)?\.?(?!\p{L})/giu, 'titanium dioxide'],
  [new RegExp(String.raw`(?<!\p{L})ultram?\. (?=(?:${HUE_ES})(?!\p{L}))`, 'giu'), 'ultramar '],
  [/(?<!\p{L})ultram?\. (?=(?:blue|violet|pink|green|red)(?!\p{L}))/giu, 'ultramarine '],
  [new RegExp(String.raw`(?<!\p{L})arc\. (?=(?:${HUE_ES})(?!\p{L}))`, 'giu'), 'arcilla '],
  [/(?<!\p{L})(?:carb\.|cbn\.?) (?=act)/giu, 'carbón '],
  [/(?<=(?<!\p{L})carb[oó]n )act\./giu, 'activado'],
  [/(?<=(?<!\p{L})act)\. (?=charcoal)/giu, 'ivated '],
];
/** Without one of these none of them fits. */
const MAY_FIT = unbroken`
  (?<!\p{L})(?:di)?[oó]x(?!\p{L})|(?:tit|titan|ultram?|arc|carb|act)\.|cbn
`;
const MAY = new RegExp(MAY_FIT, 'iu');

/**
 * A text in which names of colourants that are cut off stand whole, so that no point within one ends a sentence. Pure.
 * @example withNamesWhole('3 partes óx. amarillo + 1 parte óx. rojo') // '3 partes óxido amarillo + 1 parte óxido rojo'
 */
export const withNamesWhole = (text: string): string =>
  MAY.test(text) ? CUT_OFF.reduce((said, [pattern, whole]) => said.replace(pattern, whole), text) : text;
