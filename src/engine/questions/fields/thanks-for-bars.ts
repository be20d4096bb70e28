import { unbroken } from '../../over-lines.ts';

const THANKS = /(?<!\p{L})(?:thank\p{L}*|thx|ty|cheers|gracias|gracies|gracinas)(?!\p{L})/u;
/** It came out as was wished. */
const CAME_OUT_WELL = new RegExp(
  unbroken`
    (?<!\p{L})(?:perfect\p{L}*|gorgeous|beaut\p{L}*|lovely|amazing|spot on|stunning|brilliant|wonderful|dreamy|a treat|
    (?:i|we) love (?:it|them|the)|bang on|precios\p{L}*|lind[oa]s?|bonit[oa]s?|chul[oa]s?|xul[oa]s?|hermos\p{L}+|
    genial\p{L}*|bell[oa]s?|divin\p{L}+|espectacular\p{L}*|me encant\p{L}+|de lujo|de maravilla|
    (?:qued|sali)o (?:muy )?bien|came out (?:so )?(?:well|nice|great|good))(?!\p{L})
  `,
  'u',
);
/** More is asked, wished, or not as it should be. */
const SAYS_BESIDE = new RegExp(
  unbroken`
    (?<!\p{L})(?:but|pero|except|only|although|though|aunque|however|not|no|nt|never|how|what|why|which|when|where|can|
    could|should|would|next|now|como|cual|cuanto|cuando|puedo|ahora|sino|todavia|brown|grey|crack\p{L}*|spot(?! on)\p{L}*|speck\p{L}*|
    smell\p{L}*|mancha\p{L}*|grieta\p{L}*|huele)(?!\p{L})
  `,
  'u',
);
/**
 * Whether somebody thanks for bars that came out well and asks nothing: "thank you, that pink turned out perfect". Takes the text and
 * the same in lower case without accents and marks. Pure.
 */
export const thanksForBars = (text: string, plain: string): boolean =>
  !text.includes('?') && THANKS.test(plain) && CAME_OUT_WELL.test(plain) && !SAYS_BESIDE.test(plain);
