import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { COUNT, LYE, UNIT } from '../../amounts/words.ts';
import { PERSON } from '../doubts/harmless-phrases.ts';

/*
 * What is told of the recipe as a whole, and of how it is asked for: that its one oil is alone in the pot, that it stands so now, that it was
 * weighed, of whom the question is. Turns of both languages (general knowledge of them, no source).
 */

const ENDS = '(?= ?(?:[,;:]|$))';
const OUT: readonly RegExp[] = [
  // "To two decimals".
  `(?:(?:with|to|con|a|en|hasta) )?(?:1|2|3|un|one|dos|two) decimal(?:es| places?| points?|s)?(?: please| por favor)?${ENDS}`,
  // "Weighed, not measured".
  unbroken`
    (?:(?:all|everything|todo|by) )*(?:weigh(?:ed|t)|on the scales?|pesad[oa]s?|al peso),? (?:and |y )?(?:not|no) (?:measured|(?:by |in )?
    (?:volume|cups|eye|spoons|jugs?)|medid[oa]s?|(?:por|en) (?:volumen|tazas)|a ojo)${ENDS}
  `,
  // "Before I proceed".
  unbroken`
    (?:before (?:i|we) (?:proceed|start(?: in)?|begin|go (?:on|ahead|any further|further)|do anything(?: daft| silly| stupid)?|commit|get going|
    get started)|antes de (?:empezar|seguir|continuar|nada|ponerme|liarla|comenzar|que empiece))${ENDS}
  `,
  // "My gran wants to know", "mis alumnos preguntan".
  unbroken`
    (?:(?:and|y|que|dice que|says)[ ,]+)?(?:(?:the|my|our|an?|las?|los|el|mis?|nuestr[oa]s?|una?) (?:\p{L}+ )?(?:${PERSON}|students?|pupils?|class|
    alumn[oa]s?|clase)|(?:she|he|they|
    ell[oa]s?)) (?:wants? to know|(?:is|are) asking|asks|preguntan?|quieren? saber|me preguntan?)(?: de sexto)?(?: (?:the|about the|por la|la) (?=${LYE}))?
    (?=,? ?(?:[,;:]|$|${LYE}|how|what|cuant|que (?:sosa|soda|cantidad)))
  `,
  // "And what if it were 2 kilos".
  unbroken`
    (?<=^[^\d]*)(?:(?:and|y|oye|oigan)[ ,]+)*(?:(?:what )?if (?:it|this|that|they|we) (?:were|was|had|made|used)|what about|
    si (?:fueran?|fuese[n]?|son|hago|hiciera|hacemos|pongo|pusiera))(?= \d)
  `,
  // "We want it to shift grease": what the soap is for.
  unbroken`
    (?:(?:cos|because|so|since|as|coz|cuz) )?(?:(?:we|i|it|they|he|she) )?(?:(?:wants?|needs?|has|have) )?(?:(?:it|this|that) )?to (?:shift|cut|strip|
    remove|lift|clean off|get off|
    dissolve) (?:the |all )?(?:grease|engine oil|oil|grime|dirt|muck|fat)${ENDS}|
    (?:(?:porque|para|pa) )(?:que )?(?:quite|quitar|arranque|arrancar|corte|cortar|saque|sacar) (?:la |toda la |el )?(?:grasa|mugre|suciedad|aceite|
    cochambre)${ENDS}
  `,
  // "My dog Coco weighs 12 kg".
  unbroken`
    (?:mi|my|our|la|el|the|nuestr[oa]) (?:perr[oa]|perrit[oa]|gat[oa]|dog|cat|puppy|horse|caballo|cabra|goat|pig)(?:,? (?:called|named|llamad[oa]|
    que se llama))?(?: \p{L}+)? (?:pesa|weighs) \d[\d.,]* ?(?:${UNIT})(?:,? (?:y |and |which )*(?:no tiene nada que ver|(?:has|it has) nothing to do with
    (?:it|this)))?
  `,
  // "Please check my arithmetic".
  unbroken`
    (?:(?:please|kindly|por favor|can you|could you|would you|puedes|podrias?|me) )*(?:check|verify|review|revisa(?:me)?|revisen|comprueba|
    verifica(?:me)?) (?:my|the|mi|mis|
    la|el|las) (?:arithmetic|maths?|math|sums?|numbers|calculations?|workings?|cuentas?|calculos?|numeros|aritmetica)${ENDS}
  `,
].map(pattern => new RegExp(`(?<!\\p{L})(?:${pattern})(?!\\p{L})`, 'gu'));

/** "I ran short of coconut, and so the recipe now stands at 350 g": what stands before, without a figure, is how it came to that. */
const STANDS = new RegExp(
  unbroken`
    ^[^\d]*?(?<!\p{L})(?:so|hence|therefore|thus|y asi|asi que|asi es que|por eso|entonces)[ ,]+(?:(?:the|my|this|la|mi|esta) )?(?:recipe|batch|pot|receta|
    tanda|formula|it)?(?: (?:now|ahora|ya))?(?: (?:stands?|is|reads?|comes|becomes|goes|queda|es|va|dice|lleva))(?: (?:now|ahora|ya))?(?: (?:at|as|to|
    like this|en|asi|con|de))?:? (?=\d)
  `,
  'u',
);

/** "1 kg entero de coco". */
const WHOLE_WEIGHT = new RegExp(
  unbroken`
    (${COUNT} ?${UNIT}) (?:enter[oa]s?|cabal(?:es)?|just[oa]s?|exact[oa]s?|pelad[oa]s?|bien pesad[oa]s?|exactly|exact|dead|
    full|spot on)(?= (?:of|d|de)? ?\p{L})
  `,
  'gu',
);

/** "Against 147 g of NaOH": beside. */
const AGAINST = new RegExp(
  `(?<=\\p{L},? )(?:against|frente a|contra)(?= ${COUNT} ?${UNIT}(?: (?:of|de))? ${LYE})`,
  'gu',
);

const ALONE = unbroken`
  (?:,? ?(?:(?:solo|only|just|all|nothing but|puro|todo) %OIL%|alone|by itself|on its own|full stop|only|and that'?s (?:it|all|the lot)|
  and no other(?: oil| fat)?|sol[oa]|solit[oa]|solamente|a secas|nomas|y ya(?: esta)?|y punto|
  nada mas|y ningun otro(?: aceite)?)(?! (?:in|at|en|al|on|the|for|para|la|el|if|si|half|mitad|\d)(?!\p{L}))(?!\p{L}))
`;
/** "32 oz of lard alone", "only olive": of a recipe that names one oil, all of it. */
function aloneInThePot(line: string): string {
  const names = new Set(
    line.split(/[^\p{L}'’-]+/u).flatMap(word => {
      const oil = word.length > 2 ? knownOil(word) : undefined;
      return oil === undefined ? [] : [oil.id];
    }),
  );
  if (names.size !== 1) return line;
  const [, name] =
    /\d[\d.,]* ?\p{L}+ (?:of |de )?(?:aceite de )?(\p{L}+)/u.exec(line) ??
    /(\p{L}+)(?: oil)?,? \d/u.exec(line) ??
    [];
  if (name === undefined || knownOil(name) === undefined) return line;
  const word = name.replace(/[^\p{L}]/gu, '');
  return line.replace(
    new RegExp(
      `(?<=(?<!\\p{L})${word}(?: oil)?(?: \\d[\\d.,]* ?\\p{L}+)?)${ALONE.replace('%OIL%', `(?:${word}|aceite de ${word})(?: oil)?`)}`,
      'gu',
    ),
    ' ',
  );
}

/** "Tallow soap", "a pure coconut bar", "jabon de coco": the kind, named by an oil that is weighed elsewhere in the message. */
const KIND_BY_OIL = new RegExp(
  unbroken`
    (?<!\d[\d.,]* ?%? ?(?:\p{L}+ )?(?:of |de )?)(?<!\p{L})(?:(?:pure|plain|all|straight|simple) )?(?<en>\p{L}{3,})(?: oil)? (?:(?:soaps?|
    bars?)(?: soaps?)?)(?!\p{L})(?! (?:of|with|base)(?!\p{L}))|
    (?<!\p{L})(?:jabon(?:es)?|barras?) (?:pur[oa] )?de (?:pur[oa] )?(?:aceite de )?(?<es>\p{L}{3,})(?= ?(?:[,;:]|$)| (?:para|con|de)(?!\p{L}))
  `,
  'gu',
);
const withoutKindByOil = (line: string): string =>
  line.replace(KIND_BY_OIL, (...match) => {
    const { en, es } = match.at(-1) as { en?: string; es?: string };
    const [whole, name] = [String(match[0]), en ?? es ?? ''];
    const isWeighed = new RegExp(
      `\\d[\\d.,]* ?(?:\\p{L}+ )?(?:of |de )?(?:aceite de |manteca de )?${name}(?!\\p{L})|(?<!\\p{L})${name}(?: (?:oil|butter))?[ :=]+\\d`,
      'u',
    ).test(line.replace(whole, ' '));
    return isWeighed && knownOil(name) !== undefined ? (en === undefined ? 'jabon' : 'soap') : whole;
  });

/** "Potasa, de la de 90 %": how pure it is. */
const PURITY_OF = new RegExp(
  `(${LYE}),? (?:(?:de )?la (?:de|del|que es de)|de la del|the) (\\d{2}) ?%(?: (?:one|kind|sort))?,?`,
  'gu',
);
/** "NaOH=?": asked for. */
const LYE_BLANK = new RegExp(`(?<!\\p{L})(${LYE}|agua|water) ?[:=] ?(?=[;,]|$)`, 'gu');

const SHARE =
  '(?:(?:a )?half|a third|a quarter|la mitad|media|una? (?:tercera|cuarta) parte|la (?:tercera|cuarta) parte|un tercio|un cuarto)';
/** "So it'll be half", "yo voy a hacer la tercera parte": of all that was told before. */
const MADE_OF_IT = new RegExp(
  unbroken`
    (?<=\d[^]*)(?<!\p{L})(?:so |and |but |y |asi que |entonces |pero |yo )*(?:it'?ll be|it will be|i'?m (?:only )?(?:making|doing)|
    i'?ll (?:only )?(?:make|do)|we'?re (?:only )?(?:making|doing)|
    i (?:only )?want to (?:make|do)|voy a hacer|vamos a hacer|yo hago|solo hago|quiero hacer|hare|haremos|solo quiero)(?: (?:only|just|solo|
    nomas))* (${SHARE})
    (?: (?:of (?:it|this|that|the recipe|the batch)|de (?:eso|esta|esto|la receta|todo)))?
    (?= ?(?:[,;:]|$)| que (?:somos|es|son)| because| since| as | porque)
  `,
  'u',
);
const RECIPE_OF: Readonly<Record<string, string>> = {
  half: 'half the recipe',
  third: 'a third of the recipe',
  quarter: 'a quarter of the recipe',
};
const ANOTHER_MULTIPLE = new RegExp(
  unbroken`
    (?<!\p{L})(?:doubl\p{L}+|tripl\p{L}+|twice|times|half|halv\p{L}+|third|quarter|mitad|tercera|tercio|cuarta|cuarto|doble|dupli\p{L}+|except|menos|
    but not|salvo|already|
    ya (?:es|esta|son)|left)(?!\p{L})
  `,
  'u',
);
function madeOfIt(line: string): string {
  const found = MADE_OF_IT.exec(line);
  if (!found || ANOTHER_MULTIPLE.test(line.replace(found[0], ' '))) return line;
  const share = /half|mitad|media/u.test(found[1]!)
    ? 'half'
    : /third|terc/u.test(found[1]!)
      ? 'third'
      : 'quarter';
  return line.replace(found[0], ` ; ${RECIPE_OF[share]} ; `);
}

/**
 * A line without what is told of its recipe as a whole and leaves every weight as it stands; a share of all of it in the grammar's words. Takes
 * what `plainWords` gives with its clauses. Pure.
 */
export const withoutToldOfAll = (plain: string): string =>
  madeOfIt(
    aloneInThePot(
      withoutKindByOil(
        OUT.reduce((line, pattern) => line.replace(pattern, ' ; '), plain)
          .replace(STANDS, '')
          .replace(WHOLE_WEIGHT, '$1')
          .replace(AGAINST, ',')
          .replace(PURITY_OF, '$1 al $2%')
          .replace(LYE_BLANK, '$1 '),
      ),
    ),
  );
