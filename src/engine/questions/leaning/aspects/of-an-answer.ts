import { unbroken } from '../../../over-lines.ts';
import { type AspectPhrases, CUPS, IT, whole } from './aspect.ts';

/** Asked of what was answered, whatever it was of. */
export const OF_AN_ANSWER: readonly AspectPhrases[] = [
  [
    'how-long',
    whole(
      unbroken`
        (?:for )?how (?:long|many (?:mins?|minutes|hours|days|weeks))(?: (?:is|does|do|will|should|for|
        would) (?:${IT}|i|we)(?: (?:take|last|wait|be|leave it|keep it))?)?(?: for)?
      `,
      `how long(?: (?:until|till|before)(?: then| that)?)?`,
      `(?:por )?cuanto (?:tiempo|rato|tarda|dura|espero|hay que esperar)(?: (?:es|seria|son|dura|tarda|espero|lo dejo|la dejo))?(?: eso)?`,
      `cuant[oa]s (?:minutos|horas|dias|semanas)(?: (?:son|espero|tarda))?`,
      'when(?: is that| will that be)?',
      'cuando(?: es eso| seria)?',
    ),
  ],
  [
    'how-hot',
    whole(
      `(?:at |to )?(?:what|which|how) (?:temp|temps|temperature|hot|warm|cold|cool)(?: (?:is|should|does) (?:${IT}|i)(?: (?:be|use))?)?(?: for (?:that|it))?`,
      `(?:a )?(?:que|cual) (?:temperatura|temp)(?: (?:es|seria|uso|debe ser))?`,
      'que tan caliente(?: (?:se pone|esta|queda))?',
      `how (?:hot|warm|cold) (?:does|will|should|is|can) ${IT} ?(?:get|be|go)?`,
      `(?:(?:and |y )?(?:in|en) )?(?:grados |degrees )?(?:fahrenheit|celsius|centigrad(?:e|os)|f|c)`,
      'how hot (?:it|does it|will it) get',
      'cuanto se calienta',
    ),
  ],
  [
    'water',
    whole(
      `(?:how much|what about|the|much) ?(?:less |more )?(?:water|liquid)(?: (?:is that|for (?:it|that)|do i (?:need|use|add)|goes in|with it|then))?`,
      'water',
      `(?:the |el )?(?:water|agua) (?:the same|same|igual|lo mismo|tambien|stays)`,
      `same water`,
      `(?:y )?(?:cuanta|el|la|que|de)? ?agua(?: (?:lleva|le pongo|uso|necesito|pongo|seria|es|para eso))?`,
    ),
  ],
  [
    'why',
    whole(
      `(?:but )?why(?: (?:is|was|does|do|not|so|that|this|did|would) ?(?:${IT})?(?: (?:is|happen|happened|so|matter))?)?`,
      'how come(?: that)?',
      'why so(?: much| little| long)?',
      unbroken`
        (?:y )?(?:por ?que|pq|xq|y eso)(?: (?:me |se |le )?(?:es|no|pasa|paso|ocurre|sale|salio|salen|hace|
        queda|quedo|pone|puso|tanto|debe))?(?: (?:eso|esto|asi|entonces))?
      `,
      'a que se debe(?: eso)?',
      'what (?:causes?|caused|does) (?:it|that)',
    ),
  ],
  [
    'instead',
    whole(
      `what (?:does|do|will|can|would|holds|stays|works|else)(?: (?:i use|i use instead|instead|then|work|hold|stay|last|work instead))*`,
      `what (?:can|should|do|could) i use(?: instead)?`,
      `which (?:one )?(?:does|do|will|would|holds|stays|works)(?: (?:it|hold|stay|last))?`,
      unbroken`
        (?:y )?(?:cual|que|cuales)(?: (?:otro|otra))? (?:si|uso|aguanta|aguantan|sirve|sirven|queda|pongo|
        seria|se queda|no se va|dura|duran)(?: (?:si|entonces|en vez|en su lugar|aguanta|sirve|dura))?
      `,
      `que uso(?: en (?:vez|lugar|su lugar))?`,
    ),
  ],
  [
    'same',
    whole(
      'both(?: the)?(?: same)?',
      '(?:is it |are they )?the same(?: thing| for both)?',
      '(?:los dos|las dos|ambos|ambas)(?: (?:igual(?:es)?|a la misma))?',
      '(?:es|son)? ?lo mismo',
      '(?:son )?iguales',
    ),
  ],
  [
    'more',
    whole(
      '(?:tell me )?more',
      'go on',
      'and\\??',
      'mas',
      'sigue',
      'cuentame mas',
      'explain(?: that)?',
      'explica(?:me)?(?: eso)?',
      'how(?: so| do i do that| do i do it| exactly)?',
      'como(?: (?:lo hago|se hace|asi))?',
      'meaning(?: what)?',
      'what do you mean',
      'en que sentido',
    ),
  ],
  [
    'which-cup',
    whole(
      `(?:is (?:that|it|this) |are (?:those|they|these) )?(?:in )?${CUPS}(?: (?:or|o) (?:in )?${CUPS})+`,
      `(?:what|which) (?:size |kind of )?(?:cups?|spoons?)`,
      `(?:en |son |es )?(?:que )?(?:tazas?|cucharas?|cucharadas?) (?:son|de que tamano)`,
      unbroken`
        (?:en |son |es )?tazas? (?:de )?(?:gringas?|americanas?|metricas?|europeas?|240|
        250)(?: ml)?(?: o (?:de )?(?:gringas?|americanas?|metricas?|europeas?|240|250)(?: ml)?)?
      `,
    ),
  ],
  [
    'that-one',
    whole(
      '(?:that|this|the other)(?: one)?',
      'which(?: one)?(?: is better)?',
      '(?:y )?(?:el otro|la otra|ese|esa|este|cual|el primero|la primera)',
      'with the other(?: one)?',
      '(?:con )?(?:el otro|la otra)',
    ),
  ],
];
