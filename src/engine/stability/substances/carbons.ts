import { published } from '../../colourants/catalogue/origins.ts';
import { spaced } from '../../over-lines.ts';
import { named, type Substance } from './substance.ts';

const carbon = {
  role: 'pigment',
  kind: 'carbon',
  alkali: { behaviour: 'stable' },
  confidence: 'high',
  source: published('Encyclopaedia Britannica 1911, pigments: carbon is not liable to change'),
} as const;

/** Black pigments of carbon: soot, charcoal and charred bone. */
export const carbons: readonly Substance[] = [
  {
    ...carbon,
    id: 'carbon-black',
    ci: ['77266'],
    us: ['74.2052'],
    like: 'carbon-black',
    names: named(
      spaced`
        Black 2; carbon black; D&C Black No. 2; D&C Black 2; black no. 2; black no 2; negro de humo; negro
        de carbón; negro de carbono; negro 2; noir de carbone; Ruß; Carbon Schwarz; nero carbone; nerofumo;
        negro de fumo; furnace black; lamp black; pigment black 7
      `,
    ),
  },
  {
    ...carbon,
    id: 'charcoal',
    ci: ['77268:1'],
    e: ['153'],
    us: 'none',
    like: 'activated-charcoal',
    names: named(`Charcoal Powder; charcoal; activated charcoal; activated carbon; vegetable carbon;
      vegetable charcoal; bamboo charcoal; bamboo charcoal powder; bambusa arundinacea charcoal;
      coconut shell charcoal; coke black; carbón activado; carbón activo; carbón vegetal;
      carbón de bambú; charbon actif; charbon végétal; charbon végétal actif; Aktivkohle; Pflanzenkohle;
      carbone attivo; carbone vegetale; carvão ativado; carvão vegetal; carbo medicinalis`),
  },
  {
    ...carbon,
    id: 'bone-black',
    ci: ['77267'],
    us: ['74.2053'],
    like: 'bone-black',
    names: named(
      spaced`
        Black 3; bone black; bone char; ivory black; D&C Black No. 3; D&C Black 3; black no. 3; negro de
        hueso; negro de huesos; negro de marfil; noir d’os; noir d’ivoire; Knochenkohle; Knochenschwarz;
        nero avorio; pigment black 9
      `,
    ),
  },
];
