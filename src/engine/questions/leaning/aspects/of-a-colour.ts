import { unbroken } from '../../../over-lines.ts';
import { type AspectPhrases, END, IT, POWDER, WILL, whole } from './aspect.ts';

/** Asked of a colour that was named before. */
export const OF_A_COLOUR: readonly AspectPhrases[] = [
  [
    'bleeds',
    whole(
      unbroken`
        (?:${WILL} )?(?:${IT} )?(?:bleed|bleeds|stain|stains|ruin|mark|run|rub off|migrate|wander|leak|
        dye)(?: (?:into|in|my|the|on|onto|a|off)?(?: (?:white|towels?|flannels?|cloths?|cloth|skin|hands?|
        lather|suds|washcloths?|bath|tub|sink|other colou?rs?|colou?rs?|next layer|layers?|swirls?|the|my|
        bits?|base|part|half|rest|face ?cloths?|\p{L}+ (?:one|layer|part|swirl|bit)))*)?
      `,
      unbroken`
        (?:${WILL} )?(?:my |the )?(?:lather|suds|foam|bubbles) (?:be |turn |go |come out |get )?(?:pink|red|
        blue|green|black|grey|gray|colou?red|purple|orange|yellow|brown)
      `,
      unbroken`
        (?:me |se |nos )?(?:va a |van a |ira a )?(?:manch|sangr|migr|pint|corr|arruin)(?:a|ar|e|er|
        an)(?: (?:la|mi|mis|el|las|los|mucho|lo|a|en|asi|piel|toallas?|espuma|blanco|manos|manopla|otros?|
        colores))*
      `,
      `(?:la )?espuma (?:sale|queda|saldra|quedara|sera) (?:\\p{L}+)`,
    ),
  ],
  [
    'holds',
    whole(
      unbroken`
        (?:${WILL} )?(?:${IT} )?(?:(?:not |wont )?(?:fade|fades|last|lasts|hold|holds|survive|survives|stay|
        stays|keep|turn|change|morph|go|bear|stand)|stable|lye (?:safe|stable|proof)|colou?r ?fast|
        light ?fast)(?: (?:up|its colou?r|colou?r|well|bright|green|blue|pink|red|purple|yellow|orange|
        brown|grey|the lye|lye|true|out|ok|okay|like that|much|gel|the gel))*${END}
      `,
      `(?:con|en) (?:el |la )?(?:sol|luz|tiempo) (?:se )?(?:va|ira|pierde|destine|quita|aguanta|dura)`,
      `(?:est[ae]|es[ae]) ${POWDER}(?: (?:si|me))? (?:sirve|aguanta|vale|dura|se puede)(?: (?:para jabon|en jabon|con la sosa))?`,
      `(?:is|does|will|can i use) (?:this|that) ${POWDER}(?: (?:work|hold|ok|okay|lye safe|safe|survive|stable|in soap))*`,
      `(?:is|are) (?:${IT} )(?:lye ?(?:safe|stable|proof)|stable|colou?r ?fast|light ?fast)`,
      unbroken`
        (?:y )?(?:se )?(?:me )?(?:va a )?(?:${IT} )?(?:aguanta|aguantan|aguantara|resiste|resisten|dura|
        duran|durar|mantiene|mantienen|queda|va|desvanece|decolora|destine|despinta|aclara|pierde|apaga|
        cambia|cambiar|sobrevive|estable|sobrevivira|desteñira|irse)(?: (?:bien|mucho|el color|la sosa|
        la lejia|color|asi|verde|azul|rosa|rojo|de color|con la sosa))*${END}
      `,
    ),
  ],
  [
    'allowed',
    whole(
      `(?:is |are )?(?:${IT} )?(?:allowed|legal|permitted|approved)(?: (?:in|here|there|to sell|for soap))*`,
      `can i sell (?:with )?${IT}`,
      `(?:esta|es|son|estan)? ?(?:permitid[oa]s?|legal(?:es)?|se permite|se puede vender)`,
      `(?:lo|la|los|las) puedo vender`,
    ),
  ],
  [
    'safe',
    whole(
      unbroken`
        (?:is |are )?(?:${IT} )?(?:still )?(?:safe|ok|okay|fine|dangerous|harmful|toxic|
        usable)(?: (?:to use|for skin|on skin|for kids|for children|for babies|for me|to touch|in soap|then|
        on my skin|to wash with))*
      `,
      unbroken`
        (?:y )?(?:es|son|esta|sera)? ?(?:segur[oa]s?|peligros[oa]s?|toxic[oa]s?|
        dan[ia]n[oa]?)(?: (?:de usar|usarlo|usarla|para la piel|para ninos|para usar|asi))*
      `,
      `(?:se )?(?:puede|puedo) usar(?:lo|la|los|las)?(?: asi| igual)?`,
      `(?:${IT} )?sirve(?: asi| igual)?`,
    ),
  ],
  [
    'how-much',
    whole(
      `how much(?: (?:of )?(?:${IT}))?(?: (?:do i|should i|would i|goes|to) ?(?:need|use|put|add|put in|go in|in|put in it)?)?`,
      `how much(?: (?:is|of) (?:it|that))`,
      `(?:y )?(?:cuant[oa]s?|que cantidad)(?: (?:de (?:eso|ese|esa|cada uno|el|ella)|le (?:pongo|echo)|lo|pongo|echo|uso|lleva|seria|va|es))*`,
    ),
  ],
  [
    'wet',
    whole(
      unbroken`
        (?:can|could|should|do|must) i (?:mix|wet|put|stir|disperse|make) (?:${IT} )?(?:in|with|into|
        up with|up in)?(?: (?:a bit of |some |the |plain )?(?:oil|water|glycerin(?:e)?|batter|first|what))*
      `,
      `(?:what|how) (?:do|should|can|shall) i (?:mix|wet|disperse|put|dissolve) (?:${IT})(?: (?:in|into|with|in first))?`,
      `(?:in|with) (?:oil or water|water or oil)`,
      `(?:i )?(?:wet|mix|dissolve|disperse|stir) ${IT} (?:with|in|into) what`,
      `(?:do|should|must) i wet ${IT}(?: first| before(?:hand)?)?`,
      `(?:${IT} )?(?:en|con) que (?:lo |la |se )?(?:deshago|deshace|moja)`,
      `(?:lo|la|los|las) (?:mojo|humedezco|disuelvo|deshago)(?: (?:antes|primero))?`,
      `(?:did you mean |is that |do you mean )?(?:in )?(?:oil or water|water or oil)`,
      `(?:con|en) que (?:lo|la) (?:mezclo|disuelvo|mojo|humedezco|diluyo|pongo)`,
      unbroken`
        (?:lo|la|los|las|se) (?:puedo |puede )?(?:mezclo|mezclar|disuelvo|disolver|mojo|mojar|humedecer|
        diluyo|diluir|pongo|echo)(?: (?:con|en) (?:el |la )?(?:agua|aceite|glicerina|que))?(?: o (?:en |
        con )?(?:el |la )?(?:agua|aceite|glicerina))?
      `,
      unbroken`
        (?:eso |lo |la )?(?:va |deshago |disuelvo |mojo )?(?:en|con) (?:el |la )?(?:agua|aceite) o (?:en |
        con )?(?:el |la )?(?:agua|aceite)(?: (?:lo|la|los|las|se) (?:deshago|disuelvo|mojo|mezclo|pongo|
        echo|deshace|disuelve|moja))?
      `,
      `(?:como )(?:lo|la) (?:mezclo|disuelvo|mojo|preparo|uso)`,
    ),
  ],
  [
    'when',
    whole(
      unbroken`
        (?:(?:do|does|should) )?(?:${IT} |i )?(?:put |add |go |goes )?(?:${IT} )?(?:in )?(?:before or after|
        after or before)(?: (?:trace|lye|the lye|scent|the scent))?
      `,
      `when (?:do|should|does) (?:i|${IT}) (?:add|put|go|stir)(?: (?:${IT}))?(?: in)?`,
      `(?:eso |lo |la )?(?:va |pongo |echo |se pone |se echa )?(?:antes o despues|despues o antes)(?: de (?:la )?(?:traza|sosa|lejia|esencia))?`,
      `(?:y )?cuando (?:lo|la|los|las|se) (?:pongo|echo|pone|echa|agrego|agrega|anado|anade)`,
    ),
  ],
  [
    'too-much',
    whole(
      `(?:is |isnt )?(?:${IT} )(?:too much|a lot|enough|too little)`,
      `(?:whats )?(?:the )?max(?:imum)?`,
      `(?:no )?(?:es|sera) (?:mucho|demasiado|poco|suficiente)(?: eso)?`,
    ),
  ],
  [
    'looks',
    whole(
      `(?:what|which) colou?r (?:will|would|does|is) (?:${IT})(?: (?:be|come out|turn out|look|give|make|end up))?`,
      `(?:what|how) (?:will|would|does) (?:${IT}) (?:look|look like|come out|turn out)`,
      `(?:whats|what is|hows|how is) ${IT} (?:going to |gonna )?(?:look like|look|be like|come out)`,
      `(?:y )?(?:de |a )?que color (?:queda|sale|da|saldria|quedaria|sera|va a quedar)(?: (?:eso|al final|la barra))?`,
      `(?:y )?como (?:queda|sale|se ve|quedaria|se veria)(?: (?:de color|el color|al final))*`,
    ),
  ],
];
