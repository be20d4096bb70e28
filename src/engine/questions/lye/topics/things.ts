/* What several matters of lye speak of, each named in one place; plain text, as patterns. */

import { unbroken } from '../../../over-lines.ts';

export const RAW_BATTER =
  '(?:raw soap|(?:soap )?batter|raw loaf|soap scraps|jabon crudo|masa(?: cruda)?(?: de jabon)?|mezcla de jabon)';
export const CHILD = unbroken`
  (?:kids?|child(?:ren)?|toddlers?|grand(?:son|daughter|kids?|child(?:ren)?)|son|daughter|pupils?|students|
  year olds?|ninos?|ninas?|hij[oa]s?|niet[oa]s?|sobrin[oa]s?|alumn[oa]s?|peques?|crios?)
`;
export const PET = unbroken`
  (?:dogs?|cats?|pets?|pup(?:py|pies)|hens?|chickens?|goats?|parrots?|birds?|horses?|perr[oa]s?|gat[oa]s?|
  mascotas?|cachorr[oa]s?|gallinas?|loros?|pajaros?|caballos?)
`;
export const OIL =
  '(?:oils?|fats?|olive|coconut|palm|lard|tallow|shea|castor|sunflower|canola|aceites?|grasas?|oliva|coco|manteca|girasol|ricino|karite)';
export const BLENDER = '(?:(?:stick |hand |same )?blenders?|mixers?|batidoras?|licuadoras?|minipimers?)';
