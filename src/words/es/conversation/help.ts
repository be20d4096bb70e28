import { spaced } from '../../../engine/over-lines.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import type { help as en, HelpReason } from '../../en/conversation/help.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { terms } from './glossary.ts';

const jobs: (typeof en)['jobs'] = {
  dose: { name: '¿Cuánto color?', says: 'cucharas, y cómo humedecerlo', topic: 'dose' },
  colour: { name: 'Ver un color', says: 'antes de verter', topic: 'preview' },
  plan: { name: 'Planear un lote', says: 'sosa, agua, partes, calor', topic: 'plan' },
  trouble: { name: '¿Qué salió mal?', says: 'con palabras o foto', topic: 'diagnose' },
  keep: { name: 'Mi estantería', says: 'lo que tienes, cómo se porta', topic: 'shelf' },
};

const cautions: (typeof en)['cautions'] = {
  lye: {
    name: 'sosa',
    means: 'Quema piel y ojos.',
    more: spaced`
      Gafas estancas, guantes, manga larga. Poco a poco en agua fría, nunca agua sobre sosa; corriente de
      aire; nada de aluminio. En los ojos: enjuaga ya, 30 minutos, pide ayuda. Sin vinagre.
    `,
  },
  rawBatter: {
    name: 'masa cruda',
    means: 'Quema piel y ojos uno o dos días, también al fregar: guantes y gafas.',
  },
  dust: {
    name: 'polvo',
    means:
      'No respires polvos: sin corriente, mascarilla, y el polvo bajo el líquido antes de encender nada.',
  },
  heat: {
    name: 'calor',
    means: 'Una barra puede llegar a 85 °C (185 °F) y abombarse.',
    more: 'Vigílala las primeras horas; enfríala si se hincha.',
  },
  metal: {
    name: 'metal en el jabón',
    means: 'Escamas de aluminio, zinc o cobre nunca: aluminio y sosa hacen hidrógeno, que arde.',
  },
};

export const help: typeof en = {
  headline: 'Pregúntame con tus palabras, o elige.',
  job: v => `${v.name} /${v.topic}: ${v.says}`,
  jobs,
  /** The meaning of a word of the trade first: “Trace: the moment …”. */
  meaning: ({ name, means }: { name: string; means: string }) => `${capital(name)}: ${midSentence(means)}`,
  terms,
  cautions,
  examples: {
    dose: '/dose colourant:"azul ultramar" portion:"2 tazas"',
    preview: '/preview mix:"azul ultramar + dióxido de titanio"',
    match: '/match target:#3f8f8f portion:"1 taza"',
    plan: '/plan oils:"coco 30%, oliva 50%, palma 20%" size:"1000 g de aceites" portions:"2 tazas azul ultramar; resto sin color"',
    diagnose: '/diagnose words:"motas azules por todas partes"',
    ask: '/ask question:"¿cuánto ultramar para 2 tazas?"',
  },
  tryIt: 'Probar',
  row: v => `/${v.name}: ${v.purpose}${v.subcommands.length > 0 ? ` (${v.subcommands.join(', ')})` : ''}`,
  start: '/help topic: explica cualquier orden, palabra o aviso.',
  lye: 'La masa cruda y la sosa queman. Guantes y gafas puestos, niños y animales lejos; nada de esto sustituye una receta probada ni las normas de tu lugar.',
  lyeBrief: 'La masa cruda y la sosa queman: guantes y gafas. ¿Daño? /first-aid',
};

export const helpRefusals: Pick<RefusalSentences, HelpReason> = {
  'topic-unknown': ({ text, nearest }) =>
    `No tengo nada que explicar sobre «${text}».${nearest.length > 0 ? ` ¿Querías decir ${nearest.join(', ')}?` : ''}`,
};
