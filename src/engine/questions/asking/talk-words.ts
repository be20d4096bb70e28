/*
 * What people talk of beside their questions, in both languages, lower case without accents: family, weather, work, home, body, travel and feasts.
 * From general knowledge (no source). None of these words is one of soap; where a word of the trade stands beside them, they tell nothing.
 */

import { unbroken } from '../../over-lines.ts';

const listed = (words: string): string => words.trim().split(/\s+/u).join('|');

const KIN = listed(`
  husband wife hubby missus mum mom mam mammy mother dad da father nan nana gran granny grandma grandad
  granddad grandpa grandkids? grand?daughter grandson sister sis
  brother son daughter kids? child(?:ren)? bairns? wains? lads? lass(?:es)? niece nephew aunt(?:ie|y)? uncle
  cousin in-laws? neighbou?rs? friends? mates? pals? boss vicar baby
  toddler twins teenagers? boyfriend girlfriend fiance fella marido espos[oa] mama papa madre padre
  abuel(?:[oa]s?|ita|ito) herman[oa]s? hij[oa]s? nin[oa]s? nen[ea]s? suegr[oa]s? cunad[oa]s?
  prim[oa]s? ti[oa]s? sobrin[oa]s? niet[oa]s? vecin[oa]s? amig[oa]s? comadre compadre comadres jef[ea]
  novi[oa] guaguas? bebe pelad[oa]s? chamac[oa]s? chiquill[oa]s?`);
const PETS = listed(
  'dogs? puppy cats? kitten hens? horses? goats? perr[oa]s? gat[oa]s? gallinas? caballos? cabras? vacas?',
);
const WEATHER = listed(`
  rain(?:s|ed|ing|y)? raining drizzl\\p{L}* pouring chucking wind(?:y)? gale storm\\p{L}* snow\\p{L}* sleet
  fog(?:gy)? frost\\p{L}* freezing sunny sunshine heatwave muggy flood\\p{L}* clocks
  lluvi\\p{L}* llov\\p{L}+ lluev\\p{L}+ aguacero granizo viento ventarron tormenta nieve nev\\p{L}+ niebla calor frio bochorno sol solazo inundad\\p{L}*`);
const DAY = listed(`
  work(?:ed|ing)?(?! it) shifts? office ward school nursery class college uni exams? homework lessons?
  church chapel mass choir quiz telly tv football match rugby bowls bingo darts
  club market fete fair wedding birthday christening funeral party holidays? bus train tram ferry car van
  traffic roadworks doctor'?s? dentist hospital appointment surgery physio knee back hip
  feet migraine nap bed sleep(?:ing|s)? slept tired knackered shattered boiler heating kettle cuppa dinner
  lunch breakfast tea roast pudding washing ironing bins hoover\\p{L}* laundry phone
  radio garden allotment greenhouse milking calving lambing harvest depot lorry caravan library shops?
  shopping bank queue council landlord rent tax bills? strike christmas easter halloween gossip
  trabajo trabajar turno oficina guardia clase colegio escuela universidad examen(?:es)? tareas? iglesia
  misa parroquia partido clasico seleccion futbol novela tele telenovela
  feria mercado boda cumpleanos bautizo quinceanera entierro velorio fiesta vacaciones puente bus camion
  metro tren carro coche moto trafico tranca medico dentista
  cita rodilla espalda cadera pies migrana siesta cama dorm\\p{L}+ cansad[oa]s? muert[oa] rendid[oa] caldera
  luz apagon cena(?:r|mos)? almuerzo desayuno sancocho asado arroz tinto mate cafecito lavadora
  plancha\\p{L}* celular telefono jardin huerta ordenar cosecha hospital biblioteca bicicleta carretera
  tiendas? banco fila arriendo alquiler impuestos recibos? huelga navidad pascua chisme peluqueria salon
  clientas? salsa musica`);

/** Whoever is spoken of, of the family or the yard; for taking their names out of a text. */
export const WHO = new RegExp(`(?<!\\p{L})(?:${KIN}|${PETS})(?!\\p{L})`, 'gu');
/** Words of what is talked of beside a question. */
export const OF_LIFE = new RegExp(`(?<!\\p{L})(?:${KIN}|${PETS}|${WEATHER}|${DAY})(?!\\p{L})`, 'u');

/** Whose doings are told: "my neighbour", "el perro", "our Gareth's lad". */
export const PEOPLE = new RegExp(
  unbroken`
    (?<!\p{L})(?:my|our|me|his|her|their|the|a|mi|mis|el|la|los|las|su|sus|un|una|
    nuestr[oa]s?) (?:\p{L}+(?:'s)? ){0,2}(?:${KIN}|${PETS}|bus|car|boiler|carro|coche|moto|panadero|knees?|
    back|feet|head|hip|rodillas?|espalda|pies|cabeza|cadera)(?!\p{L})
  `,
  'u',
);
