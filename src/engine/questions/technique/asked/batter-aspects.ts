import { unbroken } from '../../../over-lines.ts';
import { THINGS } from './things.ts';

const { colour, scent, alcohol, glycerin } = THINGS;
const IN =
  '(?:in|into|with|on|using|en|con)(?: (?:the|my|a|some|it|la|el|un|una|mi|poco|de|bit|of|drop|little))*';
const WETS = unbroken`
  (?:wet\w*|mix\w*|dissolv\w+|dispers\w+|pre ?mix\w*|moj\w+|mezcl\w+|disuelv\w+|disolv\w+|disper\w+|
  humedec\w+|humedezc\w+|desli\w+|deshac\w+|deshag\w+)
`;

/** What is asked of batter, and of what is stirred into it. Patterns as in `aspects.ts`. */
export const BATTER_ASPECTS = {
  fluid: ['(?:thin|fluid|runny|liquid|workable|fluid[oa]|liquid[oa]|warm|cool|going|white|bright)'],
  lines: [
    '(?:lines?|drag\\w*|streak\\w*|lineas?|rayas?|marcas?|smear\\w*|crumbl\\w+|desmiga\\w*|desgran\\w+)',
  ],
  melts: ['(?:melt\\w*|derret\\w+|derrit\\w+|fund\\w+|liquid first|solid|hard|dur[oa]|solid[oa])'],
  meltsOrNot: [
    unbroken`
      (?:melt\w*|derret\w+|derrit\w+|fund\w+)\b.{0,40}\b(?:first|before|or|need|have|o|antes|primero|va|
      hay que|entero|completely|fully|all|todo|del todo)
    `,
    '(?:do|does|should|must|need|have to|tengo que|hay que|se|la|lo) (?:\\w+ ){0,4}(?:melt\\w*|derret\\w+|derrit\\w+|fund\\w+)',
  ],
  wetsInScent: [
    `${WETS}(?: \\w+){0,5} ${IN} ${scent}`,
    `(?:put|add|use|pong\\w*|ech\\w+|us\\w+)(?: \\w+){0,3} ${colour} ${IN} ${scent}`,
  ],
  wetsInAlcohol: [`${WETS}(?: \\w+){0,5} ${IN} ${alcohol}`, `${alcohol} (?:to|para) ${WETS}`],
  wetsInGlycerin: [
    `(?:${WETS}|did mine|did it|do mine|used|lo hice|use)(?: \\w+){0,5} ${IN} ${glycerin}`,
    `${glycerin} (?:to|para|for) (?:the )?(?:${WETS}|${colour})`,
    `(?:used|use|uso|usar) ${glycerin}`,
  ],
  lessColour: [
    `(?:less|more|menos|mas)(?: of)?(?: the| my| de| del)*? ${colour}|${colour}(?: \\w+){0,2} (?:less|more|menos|mas)`,
  ],
  puts: [
    '(?:put|pop|stick|go(?:es)?|leave|can|should|do|does|will|what if|help\\w*|meter\\w*|meto|pon\\w+|va|van|deb\\w+|puedo|conviene|sirve|dej\\w+)',
  ],
  strokes: [
    unbroken`
      (?:how (?:many|often)|cuant[oa]s|too many|enough|demasiad[oa]s)\b.{0,20}\b(?:strokes?|passes|turns?|
      goes|times|twirls?|stirs?|loops?|drags?|pasadas?|vueltas?|veces|movimientos?|trazos?)
    `,
    '(?:strokes?|passes|turns?|goes|pasadas?|vueltas?) (?:is |are |with |of )?(?:\\w+ ){0,4}(?:too many|enough|best|demasiad[oa]s|suficientes?)',
  ],
  thick: ['(?:thin\\w*|thick\\w*|light|medium|heavy|fin[oa]|liger[oa]|medi[oa]|espes[oa]|grues[oa])'],
  fell: [
    unbroken`
      (?:sank|sunk|sink\w*|fell|fall\w*|went (?:straight |right )?(?:through|into)|broke through|broke into|
      bled through|punch\w+|hund\w+|traspas\w+|atraves\w+|se (?:me )?(?:fue|metio))
    `,
  ],
  apart: [
    unbroken`
      (?:separat\w+|come apart|came apart|comes? apart|split\w*|fall(?:ing|s)? apart|fell apart|peel\w*|
      unstick|break(?:s|ing)? (?:off|apart)|despeg\w+|separ\w+|se (?:me )?(?:abren|abrieron|parten|
      partieron|sueltan))
    `,
  ],
  heldBack: [
    '(?:hold back|take|off|from|count|subtract|out of|rest\\w+|saco|sacar|descont\\w+|descuent\\w+|quit\\w+|del? (?:la )?agua)',
  ],
  thins: [
    unbroken`
      (?:how much (?:plain|uncolou?red)|plain (?:soap|batter|bars?)|dilut\w+|thin (?:it|them) out|
      tone (?:it|them) down|cuanto jabon (?:sin color|blanco)|cuanta masa sin color|dilu\w+)
    `,
  ],
  settles: [
    unbroken`
      (?:separat\w+|settl\w+|sunk|sinks?|sank|at the bottom|split|floats?|floating|clear on top|separ\w+|
      asent\w+|hund\w+|al fondo|en el fondo|flota\w*|decant\w+)
    `,
  ],
  dissolves: [
    '(?:dissolv\\w+|faster|quicker|better|easier|use|can i|disuelv\\w+|disolv\\w+|mas rapido|mejor|puedo|uso)',
  ],
  beforePour: [
    'before (?:i|it|the|we)(?: \\w+){0,4} (?:pour\\w*|mou?ld|in|colou?rs?)|antes de (?:\\w+ ){0,3}(?:llegar|verter|volcar|molde|echar\\w*|poder)',
  ],
  smoothInWater: [
    unbroken`
      (?:smooth|fine|ok|dissolves|mixes|goes in|lis[oa]|bien)(?: \w+){0,2} (?:in|with|en|con) (?:the |
      el )?(?:water|agua)|(?:lumps?|lumpy|clumps?|balls|grumos?)(?: \w+){0,2} (?:in|en) (?:the |el )?(?:oil|
      aceite)
    `,
  ],
  smoothInOil: [
    unbroken`
      (?:smooth|fine|ok|dissolves|mixes|goes in|lis[oa]|bien)(?: \w+){0,2} (?:in|with|en|con) (?:the |
      el )?(?:oil|aceite)|(?:lumps?|lumpy|clumps?|balls|grumos?)(?: \w+){0,2} (?:in|en) (?:the |
      el )?(?:water|agua)
    `,
  ],
  poursInto: [
    '(?:pour\\w*|mou?ld|use|put|line\\w*|ok|work\\w*|instead|verter|vierto|volcar|vuelco|molde|sirve\\w*|us\\w+|puedo|vale)',
  ],
  mixes: ['(?:mix(?:ed|ing|es)?|run(?:ning)? into|mezcl\\w+)'],
  staysFluid: [
    '(?:how long|cuanto(?: tiempo)?)\\b.{0,40}\\b(?:fluid\\w*|runny|pourable|workable|thin|liquid\\w*|liquid[oa]|fluid[oa]|trabaj\\w+)',
  ],
};
