import type { help as en, HelpReason } from '../../en/conversation/help.ts';
import type { RefusalSentences } from '../../sentence.ts';

const jobs: (typeof en)['jobs'] = {
  dose: { name: '¿Cuánto color?', says: 'cucharas, y cómo humedecerlo', topic: 'dose' },
  colour: { name: 'Ver un color', says: 'antes de verter', topic: 'preview' },
  plan: { name: 'Planear un lote', says: 'sosa, agua, partes, calor', topic: 'plan' },
  trouble: { name: '¿Qué salió mal?', says: 'con palabras o foto', topic: 'diagnose' },
  keep: { name: 'Mi estantería', says: 'lo que tienes, cómo se porta', topic: 'shelf' },
};

const terms: (typeof en)['terms'] = {
  batter: {
    name: 'masa',
    text: 'El jabón crudo mientras se vierte: aceites y sosa disuelta, batidos. Quema la piel.',
  },
  trace: {
    name: 'traza',
    text: 'El momento en que un hilo de masa se queda encima. Traza ligera se vierte, espesa se cucharea.',
  },
  superfat: {
    name: 'sobreengrasado',
    text: 'Por ciento de aceites que la sosa deja como aceite. 5 es lo normal; bajo 0 la pastilla es cáustica.',
  },
  gel: {
    name: 'gel',
    text: 'Fase caliente y traslúcida de la barra. Con gel se ve más hondo y claro; a medias, con anillo.',
  },
  glycerinRivers: {
    name: 'ríos de glicerina',
    text: 'Líneas claras en un jabón que se calentó con mucha agua. Solo es aspecto.',
  },
  ash: {
    name: 'ceniza de sosa',
    text: 'Velo blanco donde el jabón joven toca el aire. Solo es aspecto; se va con vapor o agua.',
  },
  premix: {
    name: 'premezcla',
    text: 'Un color ya humedecido, comprado o hecho: se mide la pasta, no el polvo.',
  },
  paste: { name: 'pasta', text: 'Polvo removido en poco líquido hasta que queda liso, antes de la masa.' },
  portion: { name: 'parte de masa', text: 'La masa que apartas para un color: «2 tazas».' },
  lake: { name: 'laca', text: 'Un tinte fijado en alúmina. La sosa suelta casi todos: migran y manchan.' },
  mica: { name: 'mica', text: 'Escamas nacaradas. Lo que las cubre decide si el color aguanta la sosa.' },
  oxide: {
    name: 'óxido',
    text: 'Óxidos de hierro y cromo: fuertes, baratos, firmes en sosa, con grumos. Humedécelos bien.',
  },
  dishTest: {
    name: 'prueba del plato',
    text: 'Una pizca de polvo en un plato de agua. Se reparte: agua. Se queda en el fondo: aceite o glicerina.',
  },
  testBar: {
    name: 'barra de prueba',
    text: 'Una barra pequeña de dosis conocida, curada. Dice la fuerza de tu bote: /calibrate.',
  },
  colourUnits: {
    name: 'unidades de color',
    text: 'Cuánto difieren dos colores (CIEDE2000): 2 apenas se ve, 10 es otro tono.',
  },
  zap: {
    name: 'calambre',
    text: 'Un pinchazo de sosa libre. Nunca pongas jabón en la lengua: usa papel de pH o espera.',
  },
};

const cautions: (typeof en)['cautions'] = {
  lye: {
    name: 'sosa',
    text: 'Quema piel y ojos. Gafas estancas, guantes, manga larga. Poco a poco en agua fría, nunca agua sobre sosa; corriente de aire; nada de aluminio. En los ojos: enjuaga ya, 30 minutos, pide ayuda. Sin vinagre.',
  },
  rawBatter: {
    name: 'masa cruda',
    text: 'Quema piel y ojos uno o dos días, también al fregar: guantes y gafas.',
  },
  dust: {
    name: 'polvo',
    text: 'No respires polvos: sin corriente, mascarilla, y el polvo bajo el líquido antes de encender nada.',
  },
  heat: {
    name: 'calor',
    text: 'Una barra puede llegar a 85 °C y abombarse. Vigílala las primeras horas; enfríala si se hincha.',
  },
  metal: {
    name: 'metal en el jabón',
    text: 'Escamas de aluminio, zinc o cobre nunca: aluminio y sosa hacen hidrógeno, que arde.',
  },
};

export const help: typeof en = {
  headline: 'Pregúntame con tus palabras, o elige.',
  job: v => `${v.name} /${v.topic}: ${v.says}`,
  jobs,
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
