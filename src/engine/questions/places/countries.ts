import { unbroken } from '../../over-lines.ts';

/** A country by its ISO 3166-1 code whose law of cosmetics none of the tables holds, or holds only as it began. */
export type OtherCountry = keyof typeof NAMES;

/** Names, people and large cities of countries outside the EU and the US, both languages, lower case without accents (from memory). */
const NAMES = {
  GB: unbroken`
    uk|united kingdom|britain|great britain|england|scotland|
    wales|northern ireland|glasgow|edinburgh|cardiff|belfast|manchester|liverpool|birmingham|leeds|bristol|
    sheffield|aberdeen|paisley|london|londres|britanic[oa]s?|trading standards|edimburgo|reino unido|inglaterra|escocia|gales|british law|uk (?:law|
    rules|market)
  `,
  CA: 'canada|canadian|canadiense|ontario|quebec|toronto|vancouver|alberta|manitoba|nova scotia|saskatchewan|british columbia',
  AU: unbroken`
    australian?|aussie|(?:here|sell\p{L}*|allowed|permitted|legal|soap) in oz|down under|nsw|
    new south wales|perth|tassie|sydney|melbourne|queensland|brisbane|adelaide|tasmania|australiana?
  `,
  NZ: 'nz|new zealand|nueva zelanda|aotearoa|auckland|christchurch',
  AE: 'uae|u\\.a\\.e\\.?|(?:united arab )?emirates|emiratos(?: arabes(?: unidos)?)?|dubai|abu dhabi|sharjah',
  SA: 'saudi(?: arabia)?|arabia saud\\p{L}*',
  SG: 'singapore|singapur',
  MY: 'malaysia|malasia',
  TT: 'trinidad|tobago',
  DO: '(?:republica )?dominicana|dominican republic|santo domingo',
  BO: 'bolivia',
  PY: 'paraguay',
  PA: '(?:en|a|para|de) panama',
  HN: 'honduras',
  SV: 'el salvador',
  NI: 'nicaragua',
  MX: '(?:en|a|para|de) mexico|guadalajara|monterrey|oaxaca|(?:permite|prohibe|acepta|autoriza) mexico|mexican law|cofepris',
  AR: '(?:la )?argentina|anmat|buenos aires|mendoza|cordoba|rosario',
  CL: '(?:en|a|para|de) chile(?! (?:ancho|en polvo|molido|guajillo))|santiago de chile|valparaiso|antofagasta|temuco',
  CO: '(?:en|a|para|de) colombia|invima|bogota|medellin|barranquilla',
  PE: '(?:en|a|para|de) (?:el )?peru|digemid|arequipa',
  UY: 'uruguay',
  CR: 'costa rica',
  GT: 'guatemala',
  CU: '(?:en|a|para|de) cuba',
  EC: '(?:en|a|para|de) ecuador|guayaquil',
  VE: 'venezuela',
  BR: 'brazil|brasil|anvisa',
  IN: '(?:in|for|to|of) india|indian (?:law|rules|market)',
  PH: 'philippines|filipinas',
  JP: '(?:in|for|to|en|a) japan|japon(?! blue)',
  CN: '(?:in|for|to|en|a) china(?! (?:clay|cup|blue|red))',
  KR: 'korea|corea',
  ZA: 'south africa|sudafrica',
  NG: 'nigeria|nafdac',
  KE: 'kenya',
  GH: 'ghana',
  JM: 'jamaica(?= ?(?:$|[?.,!]|law|rules|allow|too))',
  CH: 'switzerland|suiza|swiss (?:law|rules)',
} as const;

const PATTERNS = Object.entries(NAMES).map(
  ([code, names]) =>
    [code as OtherCountry, new RegExp(String.raw`(?<!\p{L})(?:${names})(?!\p{L})`, 'u')] as const,
);

/**
 * The country that a text in lower case without accents names, where its law is none of the tables'; undefined where it names none. The
 * United Kingdom's list began as the EU's and may have changed since. Pure.
 */
export const otherCountryIn = (text: string): OtherCountry | undefined =>
  PATTERNS.find(([, pattern]) => pattern.test(text))?.[0];
