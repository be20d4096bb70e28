import type { ReasonId, Reasons } from '../../../src/engine/refusal.ts';

/** A refusal that no short talk in a terminal meets, with values that it may have, and a part of its sentence in each language. */
export type ToldCase = readonly [id: ReasonId, values: object, english: string, spanish: string];

const told = <Id extends ReasonId>(
  id: Id,
  values: Reasons[Id],
  [english, spanish]: readonly [string, string],
): ToldCase => [id, values, english, spanish];

/** By what keeps a line from meeting them. Each is raised by a test of its own, which declared.test.ts asks for. */
export const BY_VALUES: Readonly<Record<string, readonly ToldCase[]>> = {
  'what no line of text can hold: buttons, files, members': [
    told('question-empty', {}, ['There is nothing to answer', 'No hay nada que responder']),
    told('line-forgotten', {}, ['That question is too long ago', 'Esa pregunta es de hace mucho']),
    told('option-needs-a-file', { option: 'photo' }, ['such as a photo', 'debe ser un archivo']),
    told('option-names-nobody', { option: 'member', kind: 'member' }, ['pick one', 'elígelo de la lista']),
    told('follow-up-invalid', {}, [
      'That button is from an older version',
      'Ese botón es de una versión anterior',
    ]),
    told('follow-up-expired', {}, ['That button has run out', 'Ese botón ha caducado']),
    told('follow-up-not-yours', {}, [
      'or from before my signing key was changed',
      'o de antes de que cambiara mi clave de firma',
    ]),
    told('group-only', {}, ['That belongs to a group I am in', 'Eso es cosa de un grupo en el que estoy']),
    told('flaw-message-without-picture', {}, [
      'Point at one with a photo of the bar',
      'Señala uno con una foto de la barra',
    ]),
    told('flaw-case-gone', {}, ['That was too long ago to go on with', 'De eso hace demasiado para seguir']),
    told('fold-forgotten', {}, [
      'That answer is too old to open',
      'Esa respuesta es demasiado antigua para abrirla',
    ]),
    told('match-forgotten', {}, ['That match is too long ago', 'Esa búsqueda es de hace demasiado']),
    told('plan-forgotten', {}, ['I no longer have that plan at hand', 'Ya no tengo ese plan a mano']),
    told('line-not-a-command', {}, ['A command starts with a slash', 'Una orden empieza con una barra']),
    told('file-not-fetched', {}, ['I could not fetch that file', 'No he podido traer ese archivo']),
    told('file-too-large', { most: 10485760 }, [
      'A smaller picture is fine',
      'Ese archivo es demasiado grande',
    ]),
    told('number-unreadable', { field: 'Superfat' }, ['needs a plain number', 'necesita un número solo']),
    told('text-too-long', { most: 2000 }, ['That text is too long', 'Ese texto es demasiado largo']),
    told('privacy-under-way', {}, [
      'I am still looking through your records',
      'pregunta de nuevo cuando llegue esa respuesta',
    ]),
    told('metal-and-hurt', { text: 'aluminium', metal: 'aluminium', where: 'eye' }, [
      'rinse at once with plenty of running water',
      'enjuaga enseguida con mucha agua corriente',
    ]),
  ],
  'books and shelves that are full, records that are gone': [
    told('batch-gone', {}, ['That batch is no longer in your book', 'Ese lote ya no está en tu libro']),
    told('batches-full', { most: 1000 }, ['batches are the most I keep', 'quita uno primero']),
    told('batch-events-full', { most: 500 }, [
      'notes are the most I keep beside one batch',
      'apuntes junto a un lote',
    ]),
    told('recipes-full', { most: 200 }, ['recipes are the most I keep in one place', 'recetas en un sitio']),
    told('shelf-full', { most: 500 }, ['remove one you no longer have', 'quita alguno que ya no tengas']),
    told('flaw-pictures-full', { most: 200, of: 'member' }, [
      'pictures of yours here',
      'Retira antes alguna con',
    ]),
    told('shelf-name-set-aside', { name: 'Dusk' }, [
      'is on your shelf but can’t be read just now',
      'usa otro nombre o avisa a quien me mantiene',
    ]),
    told('shelf-grams-unfit', { grams: 0, least: 0.001, most: 100000 }, ['Say between', 'Di entre']),
    told('shelf-pigment-unfit', { percent: 0 }, [
      'The pigment in it is more than',
      'El pigmento que lleva es más de',
    ]),
  ],
  'votes that only a menu or another program can cast': [
    told('challenge-bar-taken-out', { title: 'Tide', reason: 'a copy' }, [
      'no other bar takes it',
      'Su lugar sigue ocupado',
    ]),
    told('challenge-title-unfit', { most: 80 }, [
      'A challenge needs a title of',
      'Un reto necesita un título de',
    ]),
    told('challenge-number-unfit', { what: 'quorum', least: 1, most: 100000 }, [
      'The quorum must be a whole number from',
      'El quórum debe ser un número entero de',
    ]),
    told('challenge-reason-missing', {}, ['Please give a reason', 'todos pueden leerlo']),
    told('challenge-entries-full', { most: 1 }, [
      'replace or withdraw one of yours first',
      'cambia o retira antes una de las tuyas',
    ]),
    told('vote-joined-late', { before: 1767225600000, zone: 'UTC' }, [
      'Only members who joined before t',
      'En este reto solo vota quien entró en el grupo antes del t',
    ]),
    told('vote-joined-unknown', {}, [
      'I can’t see when you joined this group',
      'No puedo ver cuándo entraste en este grupo',
    ]),
    told('vote-entry-unknown', { entry: 'z' }, [
      'One of those bars is no longer in the running',
      'Una de esas barras ya no participa',
    ]),
    told('vote-empty', {}, ['Choose at least one bar', 'Elige al menos una barra']),
    told('tally-candidate-twice', { candidate: 'a' }, [
      'name each candidate once',
      'nombra cada candidato una vez',
    ]),
    told('tally-ballot-unknown', { ballot: 2, candidate: 'z' }, [
      'which is not among the candidates',
      'que no está entre los candidatos',
    ]),
    told('tally-ballot-twice', { ballot: 2, candidate: 'a' }, [
      'rank each candidate once',
      'ordena cada uno una vez',
    ]),
    told('tally-ballot-own-ranked', { ballot: 2, candidate: 'a' }, [
      'and leaves it out at once',
      'y a la vez lo deja fuera',
    ]),
    told('tally-ballot-count', { ballot: 2, count: -1 }, [
      'the count must be a whole number from',
      'debe ser un número entero desde',
    ]),
    told('tally-ballot-not-single', { ballot: 2, chosen: 3 }, [
      'in a single choice it must be one',
      'en una elección única debe ser uno',
    ]),
  ],
  'what the options of commands keep from the engine': [
    told('match-too-many-colourants', { most: 3 }, [
      'ask for a number in that range',
      'colorantes además de un blanco',
    ]),
    told('calibration-dose-unusable', { grams: 60 }, [
      'g of batter is not a dose',
      'da la dosis real de cada barra',
    ]),
    told('never-meets-lye', { colourant: { en: 'Zinc dust', es: 'Polvo de zinc' } }, [
      'take a mica or an oxide of that colour',
      'usa una mica o un óxido de ese color',
    ]),
    told('spoon-weight-out-of-range', { grams: 90, low: 0.1, high: 20 }, [
      `A level teaspoon can't weigh`,
      'Una cucharadita rasa no puede pesar',
    ]),
    told('oils-without-unit', { sum: 519 }, [
      'These numbers are no percents',
      'Estos números no son porcentajes',
    ]),
    told('cavity-by-mass', { text: '4 oz' }, [
      'a cavity needs its volume',
      'una cavidad necesita su volumen',
    ]),
    told('powder-without-amount', { text: 'rose clay' }, ['says no amount', 'cdtas arcilla rosa']),
    told('palette-unreadable', { text: '' }, ['as a palette', 'Nombra colores']),
  ],
  'photos that no short test holds': [
    told('photo-too-heavy', { megabytes: 40, most: 25 }, ['MB. Send one', 'Envía uno de hasta']),
    told('photo-too-large', { megapixels: 900, most: 100 }, ['That picture claims', 'Esa imagen dice tener']),
    told('photo-heif-unread', {}, [
      'That HEIC or AVIF photo is damaged',
      'o codificada de un modo que no puedo abrir',
    ]),
    told('photo-moving', {}, ['That is a moving picture', 'Eso es una imagen en movimiento']),
    told('photo-bar-unseen', {}, [
      'Show me the cut face by a window',
      'Enséñame la cara cortada junto a una ventana',
    ]),
  ],
  'the house itself': [
    told('workers-busy', { full: 'group', seconds: 9 }, [
      'Please try again in about',
      'Prueba otra vez en unos',
    ]),
    told('work-took-too-long', {}, [
      'This took too long and was stopped',
      'Puede servir una imagen más pequeña u otra',
    ]),
    told('our-fault', { reference: 'a1b2' }, [
      'Something went wrong on our side and nothing was changed',
      'Algo ha fallado por nuestra parte y no se ha cambiado nada',
    ]),
    told('records-not-read', {}, [
      'I can’t reach my records just now',
      'Ahora mismo no llego a mis registros',
    ]),
    told('records-not-saved', {}, [
      'my records can’t be written just now',
      'ahora mismo no puedo escribir en mis registros',
    ]),
    told('records-maybe-saved', {}, [
      'so I can’t say whether that was saved',
      'Perdí el contacto con mis registros a medias y no sé si se',
    ]),
    told('backup-changed', { file: 'records.backup' }, [
      'it is not what was written',
      'no es lo que se escribió',
    ]),
    told('backup-cut-short', { file: 'records.backup' }, [
      'it was cut short',
      'backup acaba antes de tiempo',
    ]),
    told('backup-exists', { file: 'records.backup' }, [
      'name a file that is not',
      'di un archivo que no exista',
    ]),
    told('backup-how', { mode: 'backup' }, ['Say which file', 'Di qué archivo']),
    told('backup-missing', { file: 'records.backup' }, ['name one that is there', 'di uno que exista']),
    told('backup-of-memory', {}, [
      'A store in memory cannot be backed up from outside',
      'De un almacén en memoria no se puede hacer copia desde fuera',
    ]),
    told('backup-unlike', { records: 2, expected: 3 }, [
      'empty the target and start again',
      'vacía el destino y empieza de nuevo',
    ]),
    told('backup-unreadable', { file: 'records.backup', line: 7 }, [
      'name a file that npm run backup made',
      'di un archivo hecho con npm run backup',
    ]),
    told('move-onto-itself', {}, [
      'From and to are the same store',
      'El origen y el destino son el mismo almacén',
    ]),
    told('restore-not-empty', {}, [
      'That store holds records already',
      'Ese almacén ya tiene registros y no se ha cambiado nada',
    ]),
    told('store-half-filled', {}, [
      'This store holds only part of what was to be restored or moved',
      'Este almacén tiene solo una parte de lo que se restauraba o',
    ]),
    told('store-newer', { format: 9, known: 8 }, [
      'This store was written by a newer version',
      'arranca esa versión o restaura una copia anterior',
    ]),
    told('store-scheme-unknown', { address: 'ftp://x', known: ['sqlite', 'redis'] }, [
      'I can’t keep records in',
      'No puedo guardar registros en',
    ]),
  ],
};
