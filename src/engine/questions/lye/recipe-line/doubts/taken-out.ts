import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { LYE } from '../../amounts/words.ts';

/*
 * Fat that left the pot again, and nobody weighed how much: poured back, spooned out, given away, gone over the side. Told by the motion and a
 * part of no weight (general knowledge of both languages, no source); with a weight it is subtracted by others.
 */

const MEASURE = unbroken`
  (?:drops?|cups?|cupfuls?|mugs?|ladles?|ladlefuls?|spoons?|spoonfuls?|(?:table|tea)spoons?(?:fuls?)?|tbsps?|tsps?|scoops?|glass(?:es)?|
  glugs?|splash(?:es)?|dollops?|dribbles?|jars?|handfuls?)
`;
const SOME = unbroken`
  (?:(?:quite |just )?(?:a|the|1) (?:(?:good|fair|wee|tiny|small|little|whole|big|large) )*(?:bit|little|dash|dab|touch|lot|blob|
  lump|chunk|spot|smidge|portion|part|third|quarter|${MEASURE})|(?:\d+|\d+\/\d+|a couple of|a few|several|another)
  (?: \p{L}+)? ${MEASURE}|some|part|half|most|the (?:excess|extra|surplus|top|overflow)|too much)
`;
/** Of the fat, by whatever name, or of nothing that is named. */
const OF_IT = '(?: (?:of|from) (?:it|that|them|this|those|the|my|all)(?: (?!water|lye)\\p{L}+){0,2}?)?';
const AWAY =
  '(?:back|out|off|away|overboard|over the (?:side|edge|rim|top)|(?:down|on|onto|in|into) the (?:sink|drain|floor|counter|bin|table|bottle|tin|jar|tub|jug))';
const TAKES = unbroken`
  (?:pour|tip|spoon|ladl|scoop|dip|skim|drain|siphon|syring|slosh|slop|splash|dribbl|decant|tak|took|put|empt|bail|los|drip|spill|lift|pull|
  thr[eo]w|chuck|toss|transferr?|return|sen[dt])\p{L}*
`;
const GIVES =
  '(?:g[ai]ve[ns]?|lent|lend|sold|nicked|pinched|stole|stolen|removed|returned|swiped|borrowed|helped (?:him|her|them|my)sel(?:f|ves) to)';
const WENT =
  '(?:went|gone|got|came|ran|run|leaked|dripped|spilled|spilt|slipped|escaped|sloshed|slopped|splashed|poured|tipped|scooped|spooned|ladled|landed|ended up)';
/** What a message says of fat that it took out; a purpose or an end of the clause stands behind what was given. */
const ENGLISH = unbroken`
  ${TAKES}(?: (?:him|her|my)self)? ${SOME}${OF_IT}(?: \p{L}+){0,2}? ${AWAY}(?! of (?:the )?(?:way|bed|town|work))|
  ${TAKES} (?:back|out|off) ${SOME}|
  ${GIVES} ${SOME}(?:${OF_IT})?(?= (?:of|to|from|for|back|when|because|since|before|after|while|and|this|last|off)(?!\p{L})| ?[,;]|$)|
  ${SOME}${OF_IT}(?: (?:accidentally|then|just|had|has|have|was|were|got|also|sadly))*? ${WENT}(?: \p{L}+)? ${AWAY}|
  ${SOME}${OF_IT}(?: (?:accidentally|then|just|had|has|have|was|were|got|been|also|sadly))+ (?:spilled|spilt|sloshed|slopped|scooped|
  spooned|ladled|lost|nicked|pinched|wasted|removed|poured (?:back|off|away)|taken|tipped)
`;

const ALGO = unbroken`
  (?:algo|alguito|un (?:buen )?(?:poc[oa]|poquit[oa]|pelin|chorr\p{L}+|vas\p{L}+|cucharon\p{L}*|par de \p{L}+|tercio|cuarto|dedo|tanto)|
  una (?:buena )?(?:gota|cucharad\p{L}+|cuchara|taza|tacita|parte)|unas (?:gotas|cucharad\p{L}+)|(?:1|\d+) (?:vas\p{L}+|tazas?|tacitas?|
  cucharad\p{L}+|cucharon\p{L}*|chorr\p{L}+|gotas?)|parte|la mitad|lo que (?:sobraba|rebosaba|se salia|no cabia)|el (?:exceso|sobrante)|
  bastante)
`;
const SACA = unbroken`
  (?:devolv\p{L}+|devuelt[oa]|regres[eo]|retir[eo]|retirado|retiramos|saque|saco|sacado|sacamos|sacaron|quite|quito|quitado|quitamos|regal[eo]|
  regalado|regalamos|di|dio|dimos|dado|prest[eo]|prestado|tir[eo]|tirado|bot[eo]|botado|botamos|perdi|perdio|perdido|aparte|aparto|apartado|
  rob[eo]|robaron|robado|cogio|cogi|tomo|agarro|agarre|vendi|vendio|escurri)
`;
const DE_VUELTA =
  '(?:de vuelta|otra vez|de nuevo|de regreso|para atras|fuera|(?:a|en) (?:la|el|su) (?:botella|garrafa|lata|frasco|tarro|bote|bidon|envase))';
const SE_FUE = unbroken`
  se (?:(?:me|nos|le|les) )?(?:fue|fueron|ha ido|cayo|cayeron|ha caido|salio|salieron|ha salido|derramo|ha derramado|perdio|ha perdido|
  chorreo|tiro|volco|escapo|escurrio|rego|paso)
`;
const SPANISH = unbroken`
  (?<!(?:me|nos) )${SACA} ${ALGO}(?! de (?:tiempo|paciencia|miedo))|
  (?:eche|echo|echado|echamos|volqu\p{L}+|volco|verti|vacie|vacio|puse|puso|meti|metio|pase|pasamos) ${ALGO}(?: de(?:l| la| lo)?(?: \p{L}+){1,2})? ${DE_VUELTA}|
  ${SE_FUE} ${ALGO}(?! la mano)|${ALGO}(?: de(?:l| la| lo)?(?: \p{L}+){1,2})? ${SE_FUE}(?! la mano)
`;
const TAKEN_OUT = new RegExp(`(?<!\\p{L})(?:${ENGLISH}|${SPANISH})(?!\\p{L})`, 'u');

/** What is no fat of the recipe, whatever was done with it. */
const OF_NO_FAT = new RegExp(
  unbroken`
    (?<!\p{L})(?:${LYE}|soda|water|agua|milk|leche|beer|cerveza|tea|te|coffee|cafe|batter|masa|mixture|traza|trace|mould|mold|molde|mica|colou?r\p{L}*|
    pigment\p{L}*|pigmento|scent|fragrance|fragancia|perfume|aroma|esencia|salt|sal|sugar|azucar|honey|miel|clay|arcilla|oatmeal|oats|avena|soaps?|jabon\p{L}*|
    bars?|barras?|pastillas?|petals?|petalos|flowers?|flores|squash|money|dinero|time|tiempo|labels?|etiquetas?|recipe|receta)(?!\p{L})
  `,
  'u',
);
/** "I spooned some out until the scale said 500": then it was weighed. */
const UNTIL = /(?<!\p{L})(?:until|till|til|hasta)(?!\p{L})/u;

/** "Most of the flour", "unas cucharadas de caldo": of what it was some. */
const OF_WHAT =
  /(?<!\p{L})(?:of|de|del)(?: (?:the|my|that|this|our|el|la|los|las|mi|ese|esa))* (?!cuchar|vas[io]|taz|got|chorr|spoon|cup|drop)(?<what>\p{L}{3,})/u;
const THE_FAT = new RegExp(
  unbroken`
    ^(?:it|that|this|them|those|these|all|both|each|everything|oils?|fats?|grease|butters?|wax|blend|mix|pot|pan|batch|lot|aceites?|grasas?|
    mantecas?|mantequillas?|cera|sebo|mezcla|eso|esto|ello|ella|ellos|todo|tod[oa]s|olla|tanda|vuelta|nuevo|regreso|cada|amb[oa]s|los|las)$
  `,
  'u',
);
function isOfFat(clause: string): boolean {
  const { what } = OF_WHAT.exec(clause.slice(TAKEN_OUT.exec(clause)!.index))?.groups ?? {};
  return what === undefined || THE_FAT.test(what) || knownOil(what) !== undefined;
}

/**
 * The words of a message by which fat left the pot in no known amount; undefined where none does. Takes what `plainWords` gives
 * with its clauses. Pure.
 * @example takenOutIn('600 g olive ; i did pour some back into the bottle') // 'pour some back'
 */
export function takenOutIn(plain: string): string | undefined {
  const clause = plain
    .split(/(?<!\d)[,:;]|[,:;](?!\d)/u)
    .find(one => TAKEN_OUT.test(one) && !OF_NO_FAT.test(one) && !UNTIL.test(one) && isOfFat(one));
  return clause === undefined ? undefined : TAKEN_OUT.exec(clause)![0];
}
