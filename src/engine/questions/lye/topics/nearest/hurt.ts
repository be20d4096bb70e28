import { unbroken } from '../../../../over-lines.ts';
import { unaccented } from '../../../../text/unaccented.ts';

/** What only somebody who is hurt feels, or what was done to a body; of soap and of lye itself none of it is said. */
const HURT = new RegExp(
  unbroken`
    \b(?:vomit\w*|swallow\w*|drank|puk(?:e|ed|ing)|chok\w*|cough\w*|faint(?:ed|ing)?|dizzy|passed out|
    unconscious|crying|cries|scream\w*|blister\w*|rash|sting(?:s|ing)?|stung|hurts?|hurting|painful|pain|
    burn(?:t|ed|ing|s)? (?:my|his|her|your|the) (?:skin|hands?|fingers?|arms?|face|eyes?|tongue|mouth|
    throat)|(?:skin|hands?|fingers?|arms?|face|eyes?|tongue|mouth|throat|chest|lungs?) (?:is |are |was |
    got )?(?:red|sore|white|tight|burn(?:t|ed|ing|s)?)|can ?'?t breathe|hard to breathe|electrocut\w*|
    got a shock|gave me a shock|electric shock|splash\w*|in (?:my|his|her) (?:eyes?|mouth)|
    put (?:\w+ ){1,5}in (?:my|his|her) mouth|trag(?:o|ue|ado|aron)|bebi(?:do|o)?|vomit\w*|tos|tosiendo|
    ahog\w*|desmay\w*|maread\w*|mareo|llor(?:a|ando)|grit(?:a|ando)|ampollas?|sarpullido|escuec\w*|escoz\w*|
    duele\w*|dolor|ard(?:e|en|iendo) (?:la|el|los|las|mi|mis)|me quem\w*|se quem(?:o|aron)|se ha quemado|
    cuesta respirar|no (?:puedo|puede) respirar|falta el aire|calambre (?:con|de) la (?:luz|corriente)|
    electrocut\w*|salpic\w*|en (?:el|los|mi|su) ojos?|acabo de (?:respirar|tragar|beber))\b
  `,
  'u',
);

/** True where a question tells of somebody hurt: it is then no matter to be looked up, whatever else it speaks of. */
export const tellsOfHurt = (question: string): boolean => HURT.test(unaccented(question, 2000));
