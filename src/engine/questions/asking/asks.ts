import { unaccented } from '../../text/unaccented.ts';

/** Words that ask, wherever in a sentence they stand: what is asked is seldom marked in a chat. From general knowledge of both languages. */
const ASKING =
  /(?<!\p{L})(?:how|what|whats|which|why|when (?:do|does|should|can|to)|where|who|whose|whether|wat|wot|hw|cuant[oa]s?|cnt[oa]|que (?:tan|tal|tanto|color|cantidad|es|son|le|hago|hice|pasa|paso|sera|puedo|me)|como|cual(?:es)?|(?:con|en|de|por|a|para|pa|y|x) ?(?:que|q|cual)|donde|cuando (?:le|se|lo|la)|quien(?:es)?|(?:can|could|should|shall|may|might|will|would|wont|won't|do|does|did|is|are|has|have) (?:i|you|u|ye|yous|y'all|it|that|this|they|we|the|my|a|an|any|anyone|anybody|someone|mica|there)|(?:se )?pued(?:o|e|es|en|as?)|podes|podrian?|podrias?|sera que|serian?|hay que|sabe[sn]?|alguien|any (?:idea|tips|advice|chance|help|thoughts)|alguna idea|wonder\p{L}*|wondering)(?!\p{L})/u;

/** Requests: what whoever reads is to do. */
const REQUESTS =
  /(?<!\p{L})(?:please|pls|plz|por ?fa\p{L}*|por favor|help|ayuda\p{L}*|tell me|show me|give me|gimme|let me (?:know|see|have)|work (?:it |this |me )?out|calc\p{L}*|check|plan|planea\p{L}*|planifi\p{L}+|set (?:it|the|this|me)|put me|put down|add (?:it|this|to|that)|take (?:it|that|this|the) (?:\p{L}+ )?off|remove|delete|note|log|dime|digame|diganme|decime|deci[dr]me|muestr\p{L}+|mostra\p{L}*|ensen[ae]\p{L}*|calcul\p{L}+|anot[ae]\p{L}*|apunt[ae]\p{L}*|agreg[ae]\p{L}*|quit[ae]\p{L}*|borr[ae]\p{L}*|saca(?:me|la|lo)\p{L}*|guarda\p{L}*|registra\p{L}*|recomiend\p{L}+|aconsej\p{L}+|suggest\p{L}*|recommend\p{L}*|explic\p{L}+|explain\p{L}*|describe\p{L}*|i need|need (?:a|an|the|to|it|my)|i want|i'd like|id like|i would like|want (?:a|an|it|to|my)|necesit\p{L}+|quier[oa]|quisiera\p{L}*|queremos|me gustaria|busco|ocupo|looking for|after (?:a|an|some)|trying to (?:get|match|make|work))(?!\p{L})/u;

/** Whether a sentence asks for something, with or without a mark. In doubt it does. Pure. */
export function asksIn(sentence: string): boolean {
  if (/[?¿]/u.test(sentence)) return true;
  const plain = unaccented(sentence);
  return ASKING.test(plain) || REQUESTS.test(plain);
}
