import { unbroken } from '../../over-lines.ts';

/** Where a soap is sold, as far as the tables of law go. */
export type Region = 'EU' | 'US';

/**
 * Countries under the EU's cosmetics law or one made after it, in both languages, lower case without accents: member states,
 * those of the EEA, and the United Kingdom, whose annexes began as the EU's (Regulation (EC) 1223/2009; from memory).
 */
const EU = new RegExp(
  unbroken`
    \b(?:eu|ue|europe\w*|europa|brussels|bruselas|comunitari[oa]s?|german[sy]?|alemanes|italians?|
    italianos?|britanic[oa]s?|london|londres|paris|berlin|madrid|barcelona|dublin|lisboa?n?|amsterdam|
    sevilla|bilbao|milano?|rome|vienn?a|munich|hamburgo?|galway|limerick|irish|irlandes(?:es|a)?|dutch|
    holandes(?:es|a)?|spanish law|french law|deutschland|osterreich|
    euroland|union europea|uk|united kingdom|britain|great britain|england|scotland|wales|reino unido|inglaterra|escocia|
    gales|austria|belgium|belgica|bulgaria|croatia|croacia|cyprus|chipre|czech\w*|chequia|denmark|dinamarca|
    estonia|finland|finlandia|france|francia|germany|alemania|greece|grecia|holland|holanda|hungary|hungria|
    iceland|islandia|ireland|irlanda|italy|italia|latvia|letonia|lithuania|lituania|luxembourg|luxemburgo|
    malta|netherlands|paises bajos|norway|noruega|poland|polonia|portugal|romania|rumania|slovakia|
    eslovaquia|slovenia|eslovenia|spain|espana|sweden|suecia)\b
  `,
  'u',
);

/** The United States, as they are called, and their states; those that are names of people or other countries are left out. */
const US = new RegExp(
  unbroken`
    \b(?:fed(?:eral)? (?:law|rules?)|us (?=\. (?:fed|law))|in us|the us|(?<=(?:^|
    [.,;?!] ?))us(?= ?(?:[.,;?!]|$))|us (?:market|law|rules|customers|sale)|usa|u\.s\.|america|
    united states|the states|stateside|estados unidos|eeuu|ee uu|fda|americans?|americanos?|yanquis?|
    chicago|los angeles|houston|miami|boston|seattle|denver|san francisco|san diego|atlanta|phoenix|
    gringos?|gringolandia|gabachos?|alabama|alaska|arizona|arkansas|california|(?<=(?:in|to|from|near|en|a|desde) )colorado|connecticut|
    delaware|florida|hawaii|idaho|illinois|indiana|iowa|kansas|kentucky|louisiana|luisiana|maine|maryland|
    massachusetts|michigan|minnesota|mississippi|misisipi|missouri|montana|nebraska|nevada|new hampshire|
    new jersey|new mexico|nuevo mexico|new york|nueva york|north carolina|south carolina|
    carolina del (?:norte|sur)|north dakota|south dakota|ohio|oklahoma|oregon|pennsylvania|pensilvania|
    rhode island|tennessee|texas|tejas|utah|vermont|west virginia|washington|wisconsin|wyoming)\b
  `,
  'u',
);

/** The region that a text in lower case without accents speaks of, or undefined. */
export function regionIn(text: string): Region | undefined {
  if (EU.test(text)) return 'EU';
  // "Colorado" is a Spanish red as well: only a place that one is in counts.
  return US.test(text) ? 'US' : undefined;
}
