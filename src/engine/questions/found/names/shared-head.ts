import { unbroken } from '../../../over-lines.ts';

const HUE_EN =
  'red|pink|orange|yellow|green|blue|purple|violet|brown|black|white|gr[ae]y|teal|turquoise|gold';
const HUE_ES =
  'roj[oa]|ros[ao]|rosad[oa]|naranja|amarill[oa]|verde|azul|morad[oa]|violeta|marr[oó]n|negr[oa]|blanc[oa]|gris|turquesa|dorad[oa]';
/** "Blue and pink ultramarine", "azul y rosa ultramarino": the kind is said once, behind both. */
const BEHIND = new RegExp(
  unbroken`
    (?<!\p{L})(?<!ultramarine |ultramar |oxide |oxido |óxido )(${HUE_EN}|${HUE_ES})
    [ ](and|&|\+|y|e) (${HUE_EN}|${HUE_ES}) (ultramarines?|ultramarin[oa]s?|ultramar|oxides?|micas?|clays?)(?!\p{L})
  `,
  'giu',
);
/** "Óxido rojo y amarillo": before both; white beside one is the pigment that lightens it. */
const BEFORE = new RegExp(
  unbroken`
    (?<!\p{L})([oó]xidos?|micas?|arcillas?|ultramar|ultramarinos?) (${HUE_ES}) (y|e|\+|
    &) (?!blanc)(${HUE_ES})(?!\p{L})(?! (?:mica|[oó]xido|arcilla|ultramar))
  `,
  'giu',
);

/**
 * A question in which two hues that share one kind are told as two colourants, so that none is dropped. Pure.
 * @example withSharedHead('blue and pink ultramarine') // 'blue ultramarine and pink ultramarine'
 */
export const withSharedHead = (question: string): string =>
  question
    .replace(
      BEHIND,
      (_, first: string, joins: string, second: string, kind: string) =>
        `${first} ${one(kind)} ${joins} ${second} ${one(kind)}`,
    )
    .replace(
      BEFORE,
      (_, kind: string, first: string, joins: string, second: string) =>
        `${one(kind)} ${first} ${joins} ${one(kind)} ${second}`,
    );

const one = (kind: string): string => kind.replace(/s$/iu, '');
