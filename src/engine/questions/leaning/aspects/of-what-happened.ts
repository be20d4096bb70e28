import { unbroken } from '../../../over-lines.ts';
import { type AspectPhrases, IT, WILL, whole } from './aspect.ts';

/** Asked after something went wrong, or was done. */
export const HAPPENED: readonly AspectPhrases[] = [
  [
    'next-time',
    whole(
      unbroken`
        (?:how (?:do|can|could|should) (?:i|we|you) )?(?:(?:stop|avoid|prevent|fix|dodge|
        keep) )(?:${IT} )?(?:from )?(?:happening )?(?:again )?(?:for |the )?(?:next time|happening|
        happening again|in future|again)
      `,
      `(?:how (?:do|can|could|should) (?:i|we|you) )(?:stop|avoid|prevent|dodge) ${IT}(?: happening)?`,
      `what (?:do|should|can) i do (?:different(?:ly)?|better)?(?: for)? next time`,
      'next time',
      unbroken`
        (?:y )?(?:como (?:lo |la |las |los )?(?:evito|evitar(?:lo|la)?|puedo evitar(?:lo|la)?|prevengo|
        hago para que no (?:me )?(?:vuelva a pasar|pase|
        vuelva a salir))(?: eso)?(?: la proxima(?: vez)?| otra vez)?)
      `,
      `(?:que hago |y )?(?:para )?la proxima(?: vez)?(?: (?:que hago|como (?:lo|la) (?:evito|hago)|como hago))?`,
      `como hago (?:para )?que no (?:me )?(?:vuelva a pasar|pase mas|pase de nuevo|salga|pase)(?: la proxima(?: vez)?)?`,
    ),
  ],
  [
    'done',
    whole(
      `(?:i )?(?:did|done|ive done|have done|tried) (?:that|it|this|all that|so)(?: (?:and )?(?:now )?whats? ?(?:now|next)?)?`,
      `(?:whats? )?(?:now|next)(?: what)?`,
      `(?:what (?:do|should|shall) (?:i|we) do )?(?:now|next|after that|after)`,
      `(?:now )?what(?: comes)?(?: next)?`,
      `(?:ya )?(?:lo |la |eso )?(?:hice|he hecho|probe|esta hecho|esta)(?: eso| asi)?(?: y)?(?: ahora)?(?: que)?(?: hago| sigue)?`,
      `(?:y )?(?:ahora )?que (?:hago|sigue|viene)?(?: ahora| despues| luego)?`,
      `(?:y )?(?:luego|despues|ahora)(?: que)?`,
      `que mas(?: hago)?`,
    ),
  ],
  [
    'still',
    whole(
      unbroken`
        (?:i )?(?:(?:did|tried) (?:that|it|this|all that) )?(?:and |but )?(?:its |it is |theyre |
        my batter is |the batter is |his )?(?:all )?(?:still|is still) (?:\p{L}+ ?){1,4}
      `,
      unbroken`
        (?:its|it is|it was|ive|i)? ?(?:all )?(?:already|just) (?:poured|in the mould|in the mold|in|
        in moulds|set|cut|unmou?lded|hard|solid|thick|mixed|done)(?: (?:it|them|now|in the mou?ld))?
      `,
      `(?:its|it is) (?:all )?in(?: the mou?ld)?(?: already)?(?: (?:and|but))? ?(?:lumpy|thick|solid|set|\\d+ (?:hrs?|hours?|mins?|minutes?))?`,
      `(?:pero )?(?:ya )?(?:lo hice y )?(?:sigue|siguen|todavia|aun|esta todavia|continua)(?: (?:estando|esta))? (?:\\p{L}+ ?){1,4}`,
      `(?:ya )?(?:lo |la |eso )?(?:hice|probe|he hecho)(?: eso| asi)? (?:y|pero) (?:sigue|siguen|todavia|aun|esta) (?:\\p{L}+ ?){1,4}`,
      unbroken`
        ya (?:lo |la )?(?:verti|vertida?|eche|esta (?:en el molde|vertid[oa]|echad[oa]|cortad[oa]|dur[oa])|
        en el molde|cort[eo]|desmolde)(?: (?:al molde|en el molde))?
      `,
      `no (?:mejora|cambia|se arregla|funciona|funciono|sirvio|sale)`,
      `(?:it )?(?:didnt|did not|doesnt|hasnt|wont) (?:work|help|helped|worked|change|changed|budge|go away|come out)`,
      `no (?:luck|change|good|difference|better)`,
    ),
  ],
  [
    'comes-back',
    whole(
      `(?:and )?(?:how (?:do|can|could|should) (?:i|we|you) )?(?:get|take|wash|clean|wipe) (?:rid of )?${IT}(?: (?:off|out|away))?(?: how)?`,
      `(?:y )?como (?:lo|la|los|las|se) (?:quito|quita|saco|saca|elimino|elimina)`,
      unbroken`
        ${WILL} (?:${IT} )?(?:come back|go away|go|get better|come right|come out|recover|improve|wear off|
        even out|disappear|sort itself out)(?: (?:in the cure|with cure|as it cures|(?:while|when|
        once) it (?:cures|dries|is cured)|on its own|by itself|again|in time))?
      `,
      `(?:can|could) (?:i|we) (?:still )?(?:save|fix|rescue|use|sell|keep|gift|give) (?:${IT})`,
      `(?:is it|are they|is that|is this) (?:ruined|lost|salvageable|fixable|spoiled|a goner|a write off)`,
      `(?:bin it|worth saving|any way (?:to|of) (?:fix|save|fixing|saving) (?:it|that))`,
      unbroken`
        (?:${IT} )?(?:se )?(?:va a )?(?:se )?(?:quita|quitar|va|ira|arregla|arreglar|recupera|recuperar|
        mejora|mejorar|vuelve|volvera?|pasa|pasara)(?: (?:solo|sola|con el curado|con el tiempo|despues))?
      `,
      `(?:tiene|hay) (?:arreglo|remedio|solucion)`,
      `(?:lo|la|los|las) (?:puedo |puede |podria )?(?:salvo|salvar|arreglo|arreglar|rescato|rescatar|uso|usar|tiro|tirar)`,
      `(?:se )?(?:puede|puedo) (?:salvar|arreglar|rescatar|usar|aprovechar)(?:lo|la|los|las)?`,
      `esta (?:perdid[oa]|arruinad[oa]|echad[oa] a perder)`,
    ),
  ],
];
