import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

/** Words that ask, wherever in a sentence they stand: what is asked is seldom marked in a chat. From general knowledge of both languages. */
const ASKING = new RegExp(
  unbroken`
    (?<!\p{L})(?:how|what|whats|which|why|when (?:do|does|should|can|to)|whose|whether|wat|wot|hw|
    cuant[oa]s?|cnt[oa]|que (?:tan|tal|tanto|color|cantidad|es|son|le|hago|hice|pasa|paso|sera|puedo|me)|
    cual(?:es)?|(?:con|en|de|por|a|para|pa|y|x) ?(?:que|q|cual)|(?:can|could|should|shall|may|might|will|
    would|wont|won't) (?:i|you|u|ye|yous|y'all|it|that|this|they|we|anyone|anybody)|(?:do|does|did) (?:i|
    you|u|ye|yous|y'all|it|that|this|they|we|anyone|anybody)|(?<!no )se puede|puedo|podes|podrian?|podrias?|
    sera que|serian?|hay que|alguien|any (?:idea|tips|advice|chance|help|thoughts)|alguna idea|wonder\p{L}*|
    wondering)(?!\p{L})
  `,
  'u',
);
/** These ask where a clause begins; elsewhere they tell: "she has a cold", "donde mi abuela", "as I do". */
const ASKING_FIRST = new RegExp(
  unbroken`
    (?:^\W*(?:has|have|had|es|son|hay|tiene[ns]?)|(?:^|[,:;(]|(?<!\p{L})(?:so|and|but|or|y|o|pero|hola|hi|
    hey|ok|oye|bueno|pues))\s*(?:is|are|was|were|do|does|did|can|could|will|would|should|any|anyone|anybody|
    who|where|como|donde|quien(?:es)?|cuando|puede[ns]?|sabe[ns]?))(?!\p{L})
  `,
  'u',
);

/** Requests: what whoever reads is to do, and what whoever writes wants. */
const REQUESTS = new RegExp(
  unbroken`
    (?<!\p{L})(?:please|pls|plz|por ?fa(?:vor|s|vorcito)?|por favor|help|ayud(?:a|en|ame|enme|ar|arme)|
    tell me|show me|give me|gimme|let me (?:know|see|have)|work (?:it |this |me )?out|calc(?:s|ulate|
    ulated)?|check|plan|planea\p{L}*|planifi\p{L}+|set (?:it|the|this|me)|put me down|put down|add (?:it|
    this|to|that)|take (?:it|that|this|the) (?:\p{L}+ )?off|remove|delete|note|log|dime|digame|diganme|
    decime|muestr\p{L}+|mostra\p{L}*|ensen(?:ame|eme|enme)|calcul\p{L}+|anota(?:me|la|lo)?|anote(?:me|n)?|
    apunta(?:me|la|lo)?|agreg(?:a|ame|ue|uen)|quita(?:me|la|lo)?|quite(?:n|me)|borra(?:me|la|lo)?|saca(?:me|
    la|lo)|guarda(?:me|la|lo)|registra(?:me|la|lo)?|recomiend\p{L}+|aconsej\p{L}+|suggest\p{L}*|
    recommend\p{L}*|explica(?:me)?|explain|describe|i need|need (?:a|an|the|to|it|my)|i want|i'd like|
    id like|i would like|want (?:a|an|it|to|my)|necesit\p{L}+|quier[oa]|quisiera\p{L}*|queremos|me gustaria|
    busco|ocupo|looking for|(?:i'm|im|am|be) after|trying to (?:get|match|make|work))(?!\p{L})
  `,
  'u',
);

/** Whether a sentence asks for something, with or without a mark. In doubt it does. Pure. */
export function asksIn(sentence: string): boolean {
  if (/[?¿]/u.test(sentence)) return true;
  const plain = unaccented(sentence).trim();
  return [ASKING, ASKING_FIRST, REQUESTS].some(some => some.test(plain));
}
