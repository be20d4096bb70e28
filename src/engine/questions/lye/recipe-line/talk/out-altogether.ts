import { unbroken } from '../../../../over-lines.ts';
import { LYE } from '../../amounts/words.ts';
import type { Name } from '../items/item.ts';
import { itemsOf } from '../items/items.ts';
import { isOil } from '../settling/parts.ts';
import { same } from '../state.ts';

/*
 * An oil that is out of the pot for good, told beside a list in which it does not stand: "there's no castor. Just 600 g olive and 300 g
 * coconut". The list is what it would be without that sentence; if some of that oil were in after all, the lye would be too little for it.
 */

/** What tells that there is none of it. */
const OUT = new RegExp(
  unbroken`
    (?<!\p{L})(?:there(?:['’]?s| is| was) (?:no|none)|(?:is|was|turned out)(?: all)? (?:empty|gone|rancid|
    finished)|(?:it['’]?s|it is|is) out|ran out|run out|have none|got none|
    have (?:no|n['’]?t any)|threw (?:it|that) (?:out|away)|no longer|left (?:it )?out|without|forget (?:the|
    about)|skip(?:ping|ped)?|
    no hay|no queda|no tengo|se (?:me )?(?:acabo|termino|puso rancio|enrancio)|(?:estaba|esta) (?:ranci[oa]|
    vaci[oa])|l[oa] (?:tire|quite|bote|deseche)|
    (?:esta|esta ya|ya esta) (?:quitad[oa]|fuera)|olvid(?:a|ad|en|aos|ense|ate) (?:del?|l[oa]|el)|sin|fuera)(?!\p{L})
  `,
  'u',
);
/** What is told of the others with it, of a share, of what takes its place, or of what is yet to be: such a sentence stays. */
const MORE = new RegExp(
  unbroken`
    (?<!\p{L})(?:${LYE}|half|halves|double|twice|triple|third|quarter|all (?:of )?(?:them|it)|both|rest|
    everything|the others?|batch|instead|in its place (?!nothing)|replac\p{L}*|swap\p{L}*|
    same|jugs?|pans?|pots?|bowls?|scales?|spil\p{L}*|later|tomorrow|unless|if|maybe|perhaps|mitad|doble|tercio|
    cuarto|todo|todos|todas|ambos|resto|demas|tanda|
    en su lugar|en vez|reemplaz\p{L}*|mism[oa]s?|ollas?|cazos?|bol|bascula|derram\p{L}*|luego|manana|si|
    quiza\p{L}*|tal vez|almost|casi|nearly|mostly|parts?|partly|partes?|some|bits?|lumps?|poco|algo|puse|
    ponemos|pongo|eche|echo|use[ds]?|uso|put|puts|added|add|agregue|anadi|too|also|tambien|another|something|
    otr[oa]s?|in(?! (?:the |my |our )?(?:house|cupboard|shop|shops|town)| its place)|(?:more|less|extra|mas|
    menos))(?!\p{L})
  `,
  'u',
);

/**
 * A line without its sentences that tell of one oil that it is out, where the rest of the line weighs others and names that oil nowhere.
 * Takes what `plainWords` gives with its clauses. Pure.
 * @example withoutWhatIsOut('no hay ricino ; 600 g oliva, 200 g coco') // ' 600 g oliva, 200 g coco'
 */
export function withoutWhatIsOut(plain: string): string {
  const sentences = plain.split(PARTED);
  // "The canola's part almond" names both.
  const items = sentences.map(sentence => itemsOf(sentence.replace(/(?<=\p{L})['’]s(?!\p{L})/gu, ' is')));
  const oilsOf = (at: number) => items[at]!.filter(isOil);
  const isOut = sentences.map((sentence, at) => {
    const [oil, ...others] = oilsOf(at);
    return (
      oil !== undefined &&
      others.every(other => same(other, oil)) &&
      OUT.test(sentence) &&
      !MORE.test(sentence.replace(DEL_TODO, '').replace(PLANNED, '')) &&
      // What else its sentence weighs would be weighed with it.
      items[at]!.filter(({ is }) => is === 'amount').length <= 1
    );
  });
  const drops = sentences.map(
    (_, at) =>
      isOut[at]! &&
      items.every(
        (others, place) => isOut[place]! || !others.some(one => isOil(one) && isNameOf(oilsOf(at)[0]!, one)),
      ),
  );
  const isList = items.some(
    (those, at) => !drops[at] && those.some(isOil) && those.some(({ is }) => is === 'amount'),
  );
  return drops.some(Boolean) && isList
    ? sentences
        .filter((_, at) => !drops[at])
        .join(' ; ')
        .replace(LEAVES, '')
    : plain;
}
/** "I was going to put 100 g of castor in but": what did not come about. */
const PLANNED = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:was|were) )?(?:going|meant|planning|wanted|hoping) to (?:put|add|
    use)(?: [^ ;]+){0,6}?(?: in)?(?= (?:but|only)(?!\p{L}))|
    (?<!\p{L})(?:iba|ibamos|queria|queriamos|pensaba|pensabamos) (?:a )?(?:poner|echar|usar|meter|anadir|
    agregar)\p{L}*(?: [^ ;]+){0,6}?(?= (?:pero|y)(?!\p{L}))
  `,
  'gu',
);
/** Whether a name is that of an oil, or a word of it: "la manteca" is the cocoa butter that is told. */
const isNameOf = (name: Name, oil: Name): boolean =>
  same(name, oil) || name.text.split(' ').every(word => oil.text.split(' ').includes(word));
/** "Queda: oliva 500 g", "that leaves 600 g olive": the list. */
const LEAVES =
  /(?<=^|;) *(?:(?:so|entonces|asi que) )?(?:(?:me |nos )?quedan?|(?:that |which )?leaves)[ :]+(?=\d|\p{L}+ \d)/u;
const PARTED = / ?;|:(?= )/u;
/** "Lo quité del todo": for good. */
const DEL_TODO = /(?<!\p{L})(?:del todo|todo se|all gone)(?!\p{L})/gu;
