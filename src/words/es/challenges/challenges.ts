import { capital } from '../../../engine/text/capital.ts';
import { datesIn } from '../../dates.ts';
import type * as en from '../../en/challenges/challenges.ts';
import { withoutMarks } from '../../marks.ts';
import { numbersIn } from '../../numbers.ts';

const { percent, tenths } = numbersIn('es');
const { moment } = datesIn('es');

/** The same as the clocks of that zone show it, whoever reads it. */
const wallTime = (at: number, zone: string) => withoutMarks(moment(at, zone));

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

const phases: typeof en.challenges.phases = {
  announced: 'no ha empezado',
  entering: 'admite barras',
  voting: 'está en votación',
  counting: 'está en recuento',
  closed: 'ha terminado',
  cancelled: 'se canceló',
};

export const challenges: typeof en.challenges = {
  moment,
  phases,
  violations: {
    'entries-most': ({ most }) =>
      `${count(most, 'barra', 'barras')} por persona: cambia o retira antes una de las tuyas.`,
    'colourants-most': ({ most, used }) =>
      `${count(most, 'colorante', 'colorantes')} como máximo; la tuya lleva ${used}.`,
    'one-pigment': ({ used }) => `Un solo pigmento; en la tuya pones ${used}.`,
    'own-shelf': ({ missing }) => `Solo con lo de tu estante; no está en él: ${missing.join(', ')}.`,
    'made-on-missing': () => 'Di qué día hiciste la barra, por ejemplo 2026-11-20.',
    'made-on-future': ({ madeOn }) => `${madeOn} aún no ha llegado: di qué día hiciste la barra.`,
    'made-too-early': ({ madeOn, from }) => `Hecha el ${from} o después; la tuya es del ${madeOn}.`,
    'cure-short': ({ days, least, missing }) =>
      `${missing === 1 ? 'Falta 1 día' : `Faltan ${missing} días`}: la barra cura al menos ${least}, la tuya lleva ${days}.`,
    'not-beginner': ({ wins }) =>
      `Es para principiantes: aquí ya has ganado ${count(wins, 'reto', 'retos')}.`,
    'technique-missing': () => 'Esta clase va de técnica: cuenta en la nota cómo la hiciste.',
  },
  deciders: {
    votes: 'Decidió el voto.',
    colour: 'Decidió el color medido.',
    both: 'Decidieron el voto y el color medido: se suman los dos puestos de cada barra y gana la suma menor.',
    nothing: 'Hubo pocos votos: nadie queda clasificado.',
  },
  methods: {
    schulze: 'método Schulze: caminos más fuertes por votos ganadores',
    approval: 'aprobación: cada barra que te gusta recibe un voto',
    single: 'elección única: un voto',
  },
  classes: { beginner: 'principiantes', open: 'abierto a todos', technique: 'técnica' },
  constraints: {
    none: 'cualquier colorante',
    'one-pigment': 'un solo pigmento',
    'own-shelf': 'solo con lo de tu estante',
  },
  unscored: {
    'no-white':
      'Sin nota: en la foto no hay hoja blanca. Pon papel blanco junto a la barra y cambia la foto.',
    neon: 'Sin nota: un neón brilla, y eso una foto no lo mide.',
    pearl: 'Sin nota: un perlado cambia con el ángulo, y eso una foto no lo mide.',
    'no-colours':
      'Sin nota: no se pudo medir ningún color de la barra. Repite la foto con luz de día y sin flash.',
  },
  shifted: {
    skipped: v => `El reloj se salta esa hora; la moví ${v.minutes} minutos: ${wallTime(v.at, v.zone)}.`,
    twice: v => `El reloj da esa hora dos veces; tomé la primera: ${wallTime(v.at, v.zone)}.`,
  },
  sharedTies:
    'Las barras iguales comparten puesto, y los siguientes quedan libres: dos en el 1.º, luego el 3.º.',
  brokenTies:
    'Los empates se deshacen con papeletas sacadas al azar, una tras otra, hasta que una distingue las barras.',
  tieSeed: v => `Empates: jerarquía de votantes al azar, semilla «${v.seed}».`,
  ownEntry: 'Nadie vota a favor ni en contra de su barra: no está en su papeleta.',
  withinError: 'Las barras que miden igual dentro de su error comparten puesto.',
  quorumMissed: v => `${count(v.cast, 'papeleta', 'papeletas')} de las ${v.needed} necesarias.`,
  closedLate: v =>
    `Tocaba el ${moment(v.due, v.zone)}; no estaba en marcha y lo cerré el ${moment(v.closed, v.zone)}. Solo cuenta lo que llegó a tiempo.`,
  score: v => `${tenths(v.score)} ± ${tenths(v.plusMinus)}`,
  stray: v => `El ${v.percent} % de la cara se sale de la paleta y suma ${tenths(v.adds)}.`,
  lacking: v => `${v.hex} no está en la barra.`,
  announced: v => `«${v.title}» ${v.phase}.`,
  entriesUntil: 'Inscribe hasta',
  votesUntil: 'Vota hasta',
  rules: 'Reglas',
  palette: v => `Paleta: ${v.colours.join(', ')}`,
  entriesEach: v => `${count(v.most, 'barra', 'barras')} por persona`,
  mostColourants: v => `${count(v.most, 'colorante', 'colorantes')} como máximo`,
  madeFrom: v => `hecha el ${v.from} o después`,
  leastCure: v => `curada al menos ${count(v.days, 'día', 'días')}`,
  decides: {
    votes: 'Decide el voto.',
    colour: 'Decide el color medido.',
    both: 'Deciden el voto y el color medido: se suman los dos puestos de cada barra y gana la suma menor.',
  },
  whiteSheet:
    'Pon una hoja blanca lisa junto a la barra en la foto; neones y perlados (micas) no reciben nota de color.',
  joinedBefore: v => `Vota quien entró antes del ${moment(v.before, v.zone)}.`,
  quorum: v => `La votación vale desde ${count(v.needed, 'papeleta', 'papeletas')}.`,
  nowOpen: v => `«${v.title}» está abierto: inscribe tu barra hasta el ${v.until}.`,
  entriesSoon: v => `«${v.title}»: las inscripciones acaban el ${v.until}.`,
  nowVote: v => `«${v.title}»: hay ${count(v.entries, 'barra', 'barras')}, vota hasta el ${v.until}.`,
  votesSoon: v => `«${v.title}»: la votación acaba el ${v.until}.`,
  cancelled: v => `«${v.title}» se canceló: ${v.reason}`,
  winner: v => `Primer puesto en «${v.title}»: ${v.bars.join(', ')}`,
  nobodyPlaced: v => `«${v.title}» ha terminado y nadie queda clasificado.`,
  byMaker: v => `«${v.title}» de ${v.maker}`,
  places: 'Puestos',
  placed: v => `${v.place}. ${v.bar} (barra ${v.number})${v.why === '' ? '' : `: ${v.why}`}`,
  colourNumber: v => `Barra ${v.number}: a ${v.score} de la paleta (0 es exacto, 2 apenas se nota)`,
  colourNumbers: 'Color medido',
  unplaced: v => `sin puesto: ${v.bar}. ${v.why}`,
  ballotsCounted: v => (v.ballots === 1 ? '1 papeleta contada.' : `${v.ballots} papeletas contadas.`),
  takenOut: 'Retiradas por un responsable',
  disqualified: v => `${v.bar}: ${v.reason}`,
  tallyUsage: 'Indica un archivo de papeletas: npm run -s tally -- papeletas.json',
  tallyUnreadable: v => `No puedo leer el archivo «${v.file}». Revisa el nombre y la carpeta.`,
  tallyNotJson: v => `«${v.file}» no es JSON. Exporta el reto otra vez o corrige el archivo.`,
  tallyNotBallots: v =>
    `Hay un error en «${v.where}». Un archivo de papeletas es así: {"candidates":["a","b"],"ballots":[{"count":2,"ranking":[["a"],["b"]]}]}.`,
};

const numbers = {
  entries: 'Las barras por persona deben ser',
  colourants: 'El máximo de colorantes debe ser',
  cure: 'Los días de curado deben ser',
  quorum: 'El quórum debe ser',
} as const;

const times = {
  opening: 'la apertura',
  entries: 'el fin de las inscripciones',
  votes: 'el fin de la votación',
} as const;

const deadlineExamples = '«2026-12-01 18:00», «viernes 18:00» o «en 3 días»';

export const challengesRefusals: typeof en.challengesRefusals = {
  'tally-candidate-twice': ({ candidate }) => `«${candidate}» está dos veces: nombra cada candidato una vez.`,
  'tally-ballot-unknown': ({ ballot, candidate }) =>
    `La papeleta ${ballot} nombra «${candidate}», que no está entre los candidatos.`,
  'tally-ballot-twice': ({ ballot, candidate }) =>
    `La papeleta ${ballot} ordena «${candidate}» dos veces: ordena cada uno una vez.`,
  'tally-ballot-own-ranked': ({ ballot, candidate }) =>
    `La papeleta ${ballot} ordena «${candidate}» y a la vez lo deja fuera: haz una de las dos cosas.`,
  'tally-ballot-count': ({ ballot, count: given }) =>
    `La papeleta ${ballot} cuenta ${given} veces: debe ser un número entero desde 0.`,
  'tally-ballot-not-single': ({ ballot, chosen }) =>
    `La papeleta ${ballot} elige ${chosen}: en una elección única debe ser uno.`,
  'challenge-not-now': ({ phase, needs }) =>
    `El reto ${phases[phase]}; esto solo se puede mientras ${phases[needs]}.`,
  'challenge-title-unfit': ({ most }) => `Un reto necesita un título de 1 a ${most} caracteres.`,
  'challenge-palette-unfit': ({ least, most, given }) =>
    `Una paleta tiene de ${least} a ${most} colores; diste ${given}.`,
  'challenge-times-order': ({ first, next }) => `${capital(times[first])} debe ir antes de ${times[next]}.`,
  'challenge-times-far': ({ most }) => `Un reto dura como mucho ${most} días. Elige un final más cercano.`,
  'challenge-number-unfit': ({ what, least, most }) =>
    `${numbers[what]} un número entero de ${least} a ${most}.`,
  'vote-joined-late': ({ before, zone }) =>
    `En este reto solo vota quien entró en el grupo antes del ${moment(before, zone)}.`,
  'vote-joined-unknown': () => 'No puedo ver cuándo entraste en este grupo. Vota desde el propio grupo.',
  'vote-entry-unknown': () => 'Una de esas barras ya no participa. Abre otra vez la papeleta.',
  'vote-entry-twice': () => 'Una barra está dos veces en tu papeleta. Da un solo puesto a cada una.',
  'vote-one-only': ({ chosen }) => `Elige una barra; elegiste ${chosen}.`,
  'vote-own-only': () => 'Nadie vota su propia barra. Elige otra.',
  'vote-empty': () => 'Tu papeleta está vacía. Elige al menos una barra.',
  'deadline-unreadable': ({ text }) => `No entiendo «${text}» como hora. Escríbela como ${deadlineExamples}.`,
  'deadline-time-missing': ({ text }) => `A «${text}» le falta la hora, por ejemplo «${text} 18:00».`,
  'deadline-past': ({ text, zone }) => `«${text}» ya pasó en ${zone}. Elige una hora futura.`,
  'zone-unknown': ({ zone }) =>
    `No conozco la zona horaria «${zone}». Escríbela como «Europe/Madrid» o «America/Chicago».`,
  'date-impossible': ({ date }) => `La fecha ${date} no existe. Escríbela como 2026-12-01.`,
  'palette-no-shelves': () =>
    'Ningún estante de este grupo tiene colorantes todavía: no hay de dónde sacar una paleta.',
  'palette-out-of-reach': ({ wanted, found, share }) =>
    `Solo encontré ${found} de ${wanted} colores que pueda hacer el ${percent(share)} de los estantes. Pide menos colores o menos estantes.`,
  'challenge-unknown': () => 'No conozco ese reto en este grupo. Elige uno de la lista.',
  'challenge-over': ({ phase }) => `El reto ${phases[phase]}: ya no se puede cambiar nada.`,
  'challenge-extension-unfit': () =>
    'Un plazo solo se puede mover a más tarde y antes de que venza, y la votación acaba después de las inscripciones.',
  'challenge-reason-missing': () => 'Da un motivo: todos pueden leerlo.',
  'challenge-entry-unknown': () => 'Esa barra no participa o no es tuya. Elige una de la lista.',
  'challenge-entries-full': ({ most }) =>
    `${count(most, 'barra', 'barras')} por persona: cambia o retira antes una de las tuyas.`,
};
