import { unbroken } from '../../../over-lines.ts';

/** "The purple that you spoke of": nobody remembers it. */
const SAID_BEFORE = new RegExp(
  unbroken`
    ^(?:the|that|el|la|los|las)(?: \p{L}+){1,2}(?: es[ae])?(?: one)?(?: (?:that|which|que|q))? (?:(?:you|
    u) (?:said|told|mentioned)|(?:me )?dijiste|mencionaste)(?!\p{L})
  `,
  'u',
);

/** "What did I ask you last Tuesday": nobody remembers that either. */
const REMEMBERS = new RegExp(
  unbroken`
    ^(?:(?:do you remember|remember|te acuerdas|te acordas|recuerdas) )?(?:what|que|cual|
    lo que)(?: \p{L}+){0,3} (?:(?:did|do) (?:i|you|u|we) (?:ask|say|tell|told)|te (?:pregunte|dije|pedi)|
    me dijiste|(?:i|you) (?:asked|said|told))(?!\p{L})|(?<!\p{L})(?:you|u) (?:said|told me|gave me|
    mentioned) (?:last|the other|yesterday|before|on)(?!\p{L})|(?<!\p{L})(?:me )?(?:dijiste|
    diste) (?:la (?:semana|vez)|el otro|ayer|antes)(?!\p{L})
  `,
  'u',
);

/** Whether a turn is of what was said another time, which nobody remembers. Pure. */
export const asksWhatWasSaid = (text: string): boolean => SAID_BEFORE.test(text) || REMEMBERS.test(text);
