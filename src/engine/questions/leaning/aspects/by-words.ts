import { spaced, unbroken } from '../../../over-lines.ts';
import type { Aspect } from './aspect.ts';

/* What a turn asks by the words that are in it, in whatever order: every word is one that tells nothing or belongs to the aspect. */

const set = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/u));

/** Two words that ask one thing are one. */
const JOINED: readonly (readonly [RegExp, string])[] = [
  [/(?<!\p{L})how (?:long|many (?:mins?|minutes|hours|days|weeks|months))(?!\p{L})/gu, 'howlong'],
  [/(?<!\p{L})cuant[oa]s? (?:tiempo|rato|dura|tarda|minutos|horas|dias|semanas|meses)(?!\p{L})/gu, 'howlong'],
  [/(?<!\p{L})(?:too (?:much|many|strong)|a lot|a bit much)(?!\p{L})/gu, 'toomuch'],
  [
    /(?<!\p{L})(?:how much|(?:the )?dose (?:the )?same|same dose|misma dosis|dosis igual)(?!\p{L})/gu,
    'howmuch',
  ],
  [/(?<!\p{L})(?:(?:what|which) colou?r|que color)(?!\p{L})/gu, 'whatcolour'],
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?:(?:some|any)thing|owt|summat|what) else|(?:a )?better (?:one|choice|option)|(?:some|
        any)thing better|(?:algun[oa]|algo|otr[oa]) mejor|(?:alguna )?otra (?:cosa|opcion)|algo (?:seguro|
        estable|que (?:aguante|dure|no cambie))|something (?:safe|stable|that (?:holds|stays|works|
        lasts))(?!\p{L})
      `,
      'gu',
    ),
    'another',
  ],
  [
    /(?<!\p{L})(?:lye )?(?:oil|water|aceite|agua) (?:or|o) (?:in |en )?(?:lye )?(?:oil|water|aceite|agua)(?!\p{L})/gu,
    'oilorwater',
  ],
  [/(?<!\p{L})(?:por ?que|how come|pq|xq)(?!\p{L})/gu, 'why'],
];

/** These tell nothing of what is asked. */
const TELLS_NOTHING = set(
  spaced`
    a an the i you we my me it its that thats this these those they them their theyre one ones is isnt are
    arent was were will wont would does doesnt do dont did can cant could should shall to of for in on at
    be been am so and or but if then anyway actually really just please tho though now also too as well
    even ever still ok any some all there what which how with by up ` +
    spaced`
      el la los las lo le les me se te mi mis un una unos unas es son esta estan este estos eso esa ese
      esas esos esto va van ya y e o u de del al en con por para pa que q no si pero pues entonces tambien
      muy mas asi hay como seria sera
    `,
);

type Asked = {
  readonly aspect: Aspect;
  readonly keys: ReadonlySet<string>;
  readonly beside: ReadonlySet<string>;
};

/** One of the keys has to be there; what may stand beside it. */
const ASKED: readonly Asked[] = [
  {
    aspect: 'how-long',
    keys: set('howlong'),
    beside: set(
      spaced`
        between each other layers layer entre otra otras capa capas cada leave wait take takes last lasts
        keep keeps until till ready left need needs before dura tarda espero dejo esperar dejar hasta listo
        lista aguanta
      `,
    ),
  },
  {
    aspect: 'how-much',
    keys: set(
      'howmuch dose doses dosage amount amounts quantity dosis cantidad cuanto cuanta cuantos cuantas',
    ),
    beside: set(
      'use need put add go goes going want take use uso pongo echo lleva necesito poner echar usar whats usual normal hace falta',
    ),
  },
  {
    aspect: 'safe',
    keys: set(
      spaced`
        safe unsafe dangerous harmful harmless toxic danger harm bad seguro segura seguros seguras
        peligroso peligrosa peligrosos peligrosas toxico toxica toxicos dano malo mala
      `,
    ),
    beside: set(
      'skin kids kid children babies baby use using touch wash washing face body people piel ninos nino bebes usar tocar lavar cara cuerpo hace',
    ),
  },
  {
    aspect: 'bleeds',
    keys: set(
      'bleed bleeds bleeding stain stains staining mancha manchan manchar manche sangra sangran sangrar',
    ),
    beside: set(
      spaced`
        bath tub sink towel towels flannel flannels skin hands lather suds white clothes cloth next colour
        colours layer layers into toalla toallas piel manos espuma blanco banera ropa capa
      `,
    ),
  },
  {
    aspect: 'holds',
    keys: set(
      spaced`
        fade fades fading last lasts survive survives stable hold holds lightfast aguanta aguantan
        aguantara dura duran durara destine despinta decolora estable estables resiste resisten
      `,
    ),
    beside: set(
      spaced`
        sun sunlight light window windowsill time over years weeks months lye soap bar long colour stay sol
        luz ventana tiempo anos meses semanas sosa jabon color queda mucho
      `,
    ),
  },
  {
    aspect: 'wet',
    keys: set(
      'wet wetting disperse dissolve oilorwater mojo moja mojar deshago deshacer disuelvo disolver humedezco humedecer',
    ),
    beside: set(
      'oil water glycerin glycerine alcohol first before aceite agua glicerina alcohol antes primero mix mezclo',
    ),
  },
  {
    aspect: 'allowed',
    keys: set('legal allowed permitted sell vender vendo permitido permitida permitidos legales'),
    beside: set('here use usar soap jabon puedo puede'),
  },
  {
    aspect: 'looks',
    keys: set('whatcolour'),
    beside: set(
      'come comes out give gives look looks make makes turn turns end get sale queda da saldra quedara',
    ),
  },
  {
    aspect: 'instead',
    keys: set('another instead alternative alternatives alternativa alternativas'),
    beside: set('use good uso usar puedo algo vez lugar natural'),
  },
  {
    aspect: 'next-time',
    keys: set('prevent avoid stop evitar evito evitarlo evitarla prevenir prevenirlo'),
    beside: set('again happening happens next time proxima vez pase vuelva pasar'),
  },
  {
    aspect: 'comes-back',
    keys: set(
      spaced`
        fix fixable save salvage salvageable rescue ruined lost round remedy arreglar arreglo arregla
        salvar salva rescatar remedio solucion arruinado arruinada perdido perdida
      `,
    ),
    beside: set('way possible anything somehow tiene puede puedo alguna manera forma'),
  },
  {
    aspect: 'too-much',
    keys: set('toomuch loads lots excessive demasiado demasiada enough suficiente bastante'),
    beside: set('sure seems sounds looks seguro parece'),
  },
  { aspect: 'why', keys: set('why'), beside: set('happen happened happens paso pasa') },
];

/** Longer turns say more than one thing, words. */
const MOST_WORDS = 9;

/**
 * What a turn asks for whose every word either tells nothing or belongs to one aspect, in whatever order; undefined where a word is left over.
 * Pure.
 * @example aspectByWords('how much anyway') // 'how-much'
 */
export function aspectByWords(turn: string): Aspect | undefined {
  const joined = JOINED.reduce((text, [phrase, word]) => text.replace(phrase, word), turn);
  const words = joined.split(' ').filter(word => word !== '');
  if (words.length > MOST_WORDS) return undefined;
  const telling = words.filter(word => !TELLS_NOTHING.has(word));
  return ASKED.find(
    ({ keys, beside }) =>
      telling.some(word => keys.has(word)) && telling.every(word => keys.has(word) || beside.has(word)),
  )?.aspect;
}
