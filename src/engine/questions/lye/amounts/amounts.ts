import { DEFAULT_PURITY } from '../../../batch/lye/lye.ts';
import type { WeighedLye } from '../sums/check.ts';
import type { Alkali } from './alkali.ts';
import { decimal, FAT, gramsOf, LYE, MASS, PERCENT, type Remaining, told } from './words.ts';

export function superfatIn(rest: Remaining): { superfat?: number } {
  if (rest.take(`(?:no|zero|without(?: any)?|sin|cero) (?:de )?${FAT}`)) return { superfat: 0 };
  const percent = told(
    rest.take(
      String.raw`(?:a |at |at a |con |with |with a |al |un )*(-? ?\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)? ?(?:de |of )?${FAT}`,
      String.raw`${FAT} ?(?:of |at |de |del |al |is |=|: ?)*(-? ?\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)?`,
    ),
  );
  return percent === undefined ? {} : { superfat: decimal(percent.replace(' ', '')) };
}

export function waterIn(rest: Remaining): { water?: string } {
  const ratio = rest.take(
    String.raw`(?:a |at |with |con |al )*(\d+(?:[.,]\d+)?) ?: ?(\d+(?:[.,]\d+)?)(?: (?:water|agua|ratio|to|lye|a|de|sosa|proporcion))*`,
  );
  if (ratio) return { water: `${ratio[1]}:${ratio[2]}` };
  const strength = told(
    rest.take(
      `(?:a |at |at a |with |con |with a |al )*${PERCENT} ?(?:de |of )?(?:${LYE} )?(?:concentration|concentracion|conc|strength)(?: (?:of|de) ${LYE})?`,
      `(?:${LYE} )?(?:concentration|concentracion|conc|strength)(?: (?:of|de) ${LYE})? ?(?:of |at |de |del |al |is |: ?)*${PERCENT}`,
      `(?:a |at |with |con |al )*${PERCENT} ?(?:de )?${LYE}`,
    ),
  );
  if (strength !== undefined) return { water: `${strength}% lye` };
  const ofOils = told(
    rest.take(
      `(?:a |at |with |con |al )*${PERCENT} ?(?:de |of )?(?:water|agua)(?: (?:of|as|de|del|sobre)(?: the| los)? (?:oils?|aceites?|percent of oils))?`,
      `(?:water|agua) ?(?:at |of |al |del |is |: ?)*${PERCENT}(?: (?:of|de) (?:the |los )?(?:oils?|aceites?))?`,
    ),
  );
  return ofOils === undefined ? {} : { water: `${ofOils}% of oils` };
}

export function weighedIn(rest: Remaining, { lye, purity }: Alkali): WeighedLye | undefined {
  const mass = told(
    rest.take(
      `(${MASS})(?: of| de)?(?: the| my| la)? ${LYE}`,
      `${LYE}(?: is|:|=| es)? ?(${MASS})(?! ?(?:of |de )?[a-z]+(?: oil)?)`,
    ),
  );
  if (mass === undefined) return undefined;
  const alkali = lye.alkali === 'KOH' ? 'KOH' : 'NaOH';
  return { alkali, grams: gramsOf(mass), purity: purity ?? DEFAULT_PURITY[alkali] };
}
