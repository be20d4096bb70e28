import { spaced } from '../../over-lines.ts';
import { foldedWords } from '../../text/fold.ts';
import { EMERGENCY_IDS, type EmergencyId } from './emergency.ts';

/** What people call an emergency in a word or two, both languages; singular, without accents. */
const NAMES: { readonly [Id in EmergencyId]: string } = {
  'lye-swallowed': spaced`
    swallowed; swallow; drank; drunk;
    ingested; mouth; tongue; throat;
    poisoning; poisoned;
    tragar; trago; tragado;
    bebio; bebi; boca; lengua;
    garganta; envenenamiento; ingestion
  `,
  'lye-eye': 'eye; eyes; in eye; ojo; ojos; en el ojo; vista',
  'lye-skin': spaced`
    burn; burns; burned; burnt; burning;
    skin; hand; hands; face;
    arm; lye burn; chemical burn;
    quemadura; quemaduras; quemado; quemada; quema;
    piel; mano; manos; cara;
    brazo
  `,
  fire: 'fire; flames; burning oil; fuego; llamas; incendio',
  'toxic-gas': 'gas; toxic gas; bleach; chlorine; gas toxico; cloro; lavandina',
  'fumes-inhaled':
    'fumes; fume; steam; vapour; vapor; breathing; inhaled; cough; powder; dust; fainted; vapores; inhalar; respirar; tos; polvo; desmayo',
  'hydrogen-sulfide': 'rotten egg; rotten eggs; egg smell; sulfide; huevo podrido; huevos podridos; sulfuro',
  'hydrogen-from-metal': 'hydrogen; aluminium; aluminum; zinc; tin; metal; hidrogeno; aluminio',
  'lye-eruption':
    'eruption; volcano; boiling over; boil over; spill; spilled; spilt; erupcion; volcan; derrame; se desborda',
  'animal-exposed': 'dog; cat; pet; animal; horse; perro; gato; mascota; caballo',
  'skin-reaction':
    'rash; itch; itching; allergy; allergic; hives; swelling; swollen; sarpullido; picazon; picor; alergia; roncha; ronchas; hinchazon',
};

const key = (text: string): string => foldedWords(text).join(' ');
const BY_NAME: ReadonlyMap<string, EmergencyId> = new Map(
  Object.entries(NAMES).flatMap(([id, names]) =>
    names.split('; ').map(name => [key(name), id as EmergencyId] as const),
  ),
);
/** Small words beside the name. */
const BESIDE = /\b(?:a|an|the|my|his|her|of|in|on|by|from|un|una|el|la|los|las|mi|su|de|en|por)\b/gu;

/** The emergency of an id as members type it: `lye-eye`, `Lye eye`, `lye_eye`; undefined where it is none. */
export function emergencyById(text: string): EmergencyId | undefined {
  const id = text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/gu, '-');
  return EMERGENCY_IDS.find(one => one === id);
}

/** The emergency that a word or two name where only an emergency can be meant, such as `burn` or `ojo`; else undefined. */
export function emergencyNamed(text: string): EmergencyId | undefined {
  const name = text.slice(0, 60);
  return BY_NAME.get(key(name)) ?? BY_NAME.get(key(name.toLowerCase().replace(BESIDE, ' ')));
}
