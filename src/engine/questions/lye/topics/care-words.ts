import { unbroken } from '../../../over-lines.ts';

/** True of a text in which every idea is found, in any order, and nothing of `unless`. All as patterns over plain text. */
export const said = (ideas: readonly string[], unless?: string): RegExp =>
  new RegExp(
    `^${unless === undefined ? '' : `(?!.*\\b(?:${unless})\\b)`}${ideas.map(idea => `(?=.*\\b(?:${idea})\\b)`).join('')}`,
    'u',
  );

/** Lye by names that are not bleach's. */
export const CAUSTIC =
  '(?:lye|naoh|koh|caustic(?: soda| potash)?|sodium hydroxide|sosa(?: caustica)?|soda caustica|hidroxido(?: de sodio| sodico)?)';
export const OIL =
  '(?:oils?|fats?|olive|coconut|palm|lard|tallow|shea|sunflower|canola|aceites?|grasas?|oliva|coco|manteca|girasol|karite)';
export const PAST =
  '(?:i (?:have |had |ve )?(?:put|added|poured|used|weighed|mixed)|put in|eche|he echado|puse|he puesto|anadi|agregue|use|pese|mezcle)';
export const KID = unbroken`
  (?:kids?|child(?:ren)?|toddlers?|son|daughter|grand(?:son|daughter|kids?|child(?:ren)?)s?|niec?es?|
  nephews?|ninos?|ninas?|hij[oa]s?|niet[oa]s?|sobrin[oa]s?|peques)
`;
export const PET = '(?:dogs?|cats?|pupp(?:y|ies)|kittens?|perr[oa]s?|gat[oa]s?|mascotas?|cachorr[oa]s?)';
export const MAKING = unbroken`
  (?:(?:make|making|mak|do|doing|mix|mixing|stir|stirring) (?:\w+ )?(?:soap|lye)|soap ?making|soaping|
  (?:hac\w+|hago|mezcl\w+|remuev\w+|prepar\w+) (?:\w+ )?(?:jabon(?:es)?|sosa)|while (?:i )?(?:mix\w*|
  stir\w*)|mientras (?:mezcl\w+|remuev\w+|hago))
`;
/** Somebody is hurt, or something is happening to somebody: never answered as a matter of care. */
export const HURT = unbroken`
  burn(?:s|ed|t|ing)?|hurts?|sting(?:s|ing)?|splash\w*|drank|swallow\w*|lick\w*|vomit\w*|cough\w*|faint\w*|
  quem\w+|duele\w*|arde\w*|escuec\w*|salpic\w+|bebio|trago|lamio|vomit\w+|tose|tosiendo|desmay\w+
`;
