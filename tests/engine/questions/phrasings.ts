import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Class } from '../../../src/engine/questions/learned/classes.ts';
import { mulberry32 } from '../../mulberry32.ts';

type Language = 'en' | 'es';

/** What stands for the marks of a phrasing: `{c}` a colourant, `{p}` a portion, `{a}` an amount of powder and so on. */
const FILLS: Readonly<Record<Language, Readonly<Record<string, readonly string[]>>>> = {
  en: {
    c: 'ultramarine blue;red iron oxide;activated charcoal;rose clay;titanium dioxide;gold mica;mica;turmeric;madder root;spirulina;green chromium oxide;purple mica;yellow oxide;cocoa powder;indigo;french green clay;neon pink pigment;beet powder;alkanet;food coloring;blue mica;annatto;kaolin;carmine;the black oxide;paprika;ultramarine violet;red 40 lake;zinc oxide;pearl white mica;copper mica;matcha;hibiscus;manganese violet;tio2'.split(
      ';',
    ),
    p: '2 cups of batter;2 cups;a pint;500 g oils;2 lb of oils;1 kg batter;three cups of batter;half a cup;750 g of soap;32 oz oils;a quart of batter;1.5 kg of oils;900 ml;a 3 lb batch;600 grams of batter;40 oz of batter;one pound of oils;1 liter of batter;a cup and a half'.split(
      ';',
    ),
    a: '1 tsp;2 tsp;1/2 teaspoon;1 tbsp;3 g;5 grams;half a teaspoon;a quarter tsp;10 g;2 grams;three teaspoons;1/4 tsp'.split(
      ';',
    ),
    s: 'pastel;pale;medium;bold;very dark;bright;soft;light;full strength;deep;barely tinted;strong'.split(
      ';',
    ),
    t: 'dusty rose;sage green;teal;burgundy;lavender;navy;peach;mustard;coral;charcoal grey;mint;olive green;brick red;turquoise;cream;plum;terracotta;sky blue;black;pink;blush;eggplant;rust'.split(
      ';',
    ),
    r: 'the EU;europe;germany;the US;america;california;france;the uk;spain;texas;the united states;ireland'.split(
      ';',
    ),
    l: 'mica, titanium dioxide, CI 77491;mica, CI 45410, tin oxide;ci 77007;mica and red 40 lake;talc, CI 77510;mica, carmine;iron oxides, mica, ci 77266;synthetic fluorphlogopite, titanium dioxide;yellow 5 lake, mica'.split(
      ';',
    ),
    o: '500 g olive oil and 200 g coconut oil;16 oz olive 8 oz coconut 4 oz castor;1000 g lard;700 g olive, 300 g coconut;2 lb tallow and 1 lb coconut oil;400 g palm 400 g olive 200 g coconut;50 % olive 30 % coconut 20 % shea, 1 kg in all;800g canola 200g coconut'.split(
      ';',
    ),
  },
  es: {
    c: 'ultramar azul;óxido de hierro rojo;carbón activado;arcilla rosa;dióxido de titanio;mica dorada;mica;cúrcuma;espirulina;óxido verde;mica morada;óxido amarillo;cacao en polvo;índigo;arcilla verde;pigmento neón rosa;remolacha en polvo;colorante alimentario;mica azul;achiote;caolín;carmín;el óxido negro;pimentón;ultramar violeta;óxido de zinc;mica blanca;mica cobre;té matcha;jamaica;azul ultramarino;rubia'.split(
      ';',
    ),
    p: '2 tazas de masa;2 tazas;medio litro;500 g de aceites;1 kg de masa;tres tazas de mezcla;media taza;750 g de jabón;un kilo de aceites;un litro de mezcla;1,5 kg de aceites;900 ml;600 gramos de masa;dos libras de aceites;taza y media;800 g de grasas;un lote de 1 kg'.split(
      ';',
    ),
    a: '1 cucharadita;2 cdtas;media cucharadita;1 cucharada;3 g;5 gramos;un cuarto de cucharadita;10 g;2 gramos;tres cucharaditas'.split(
      ';',
    ),
    s: 'pastel;clarito;medio;fuerte;muy oscuro;vivo;suave;bajito;intenso;apenas un tono;bien cargado'.split(
      ';',
    ),
    t: 'rosa viejo;verde salvia;turquesa;burdeos;lavanda;azul marino;durazno;mostaza;coral;gris carbón;menta;verde oliva;ladrillo;crema;ciruela;terracota;celeste;negro;rosa;vino;berenjena;palo de rosa;café'.split(
      ';',
    ),
    r: 'europa;la unión europea;estados unidos;españa;alemania;california;francia;la UE;texas;el reino unido'.split(
      ';',
    ),
    l: 'mica, dióxido de titanio, CI 77491;mica, CI 45410, óxido de estaño;ci 77007;mica y rojo 40;talco, CI 77510;mica, carmín;óxidos de hierro, mica, ci 77266'.split(
      ';',
    ),
    o: '500 g de aceite de oliva y 200 g de coco;700 de oliva, 300 de coco;1 kg de manteca de cerdo;400 g de palma, 400 g de oliva y 200 g de coco;oliva 600, coco 300, ricino 100;medio kilo de sebo y 250 g de coco'.split(
      ';',
    ),
  },
};

const folder = join(import.meta.dirname, 'phrasings');

/** The lines of one file under each heading in brackets. */
export function linesOf(file: string): ReadonlyMap<string, readonly string[]> {
  const parts = new Map<string, string[]>();
  let part: string[] = [];
  for (const line of readFileSync(file, 'utf8').split('\n')) {
    const heading = /^\[(.+)\]$/u.exec(line)?.[1];
    if (heading !== undefined) {
      part = [];
      parts.set(heading, part);
    } else if (line.trim() !== '') part.push(line.trim());
  }
  return parts;
}

/** A letter left out, doubled or changed with its neighbour, as thumbs do. */
function slipped(text: string, draw: () => number): string {
  const at = 1 + Math.floor(draw() * (text.length - 2));
  if (!/\p{L}/u.test(text[at] ?? '') || !/\p{L}/u.test(text[at + 1] ?? '')) return text;
  const how = draw();
  if (how < 0.4) return text.slice(0, at) + text.slice(at + 1);
  if (how < 0.6) return text.slice(0, at) + text[at] + text.slice(at);
  return text.slice(0, at) + text[at + 1] + text[at] + text.slice(at + 2);
}

const ofJob = (file: string): Class => {
  const name = file.replace('.txt', '');
  return (name === 'survives' ? 'survives-lye' : name === 'shelf' ? 'shelf-add' : name) as Class;
};

/**
 * Turns of phrase for every job, invented in the manner of many makers; each filled `times` times with other names and
 * amounts, some with what people say before or after, some with slips. The same every time.
 */
export function phrasings(times: number): readonly { readonly text: string; readonly label: Class }[] {
  const draw = mulberry32(20_260_501);
  const pick = <One>(list: readonly One[]): One => list[Math.floor(draw() * list.length)]!;
  const asides = linesOf(join(folder, 'asides.txt'));
  const files = readdirSync(folder)
    .filter(file => file.endsWith('.txt') && file !== 'asides.txt')
    .sort();
  return files.flatMap(file =>
    [...linesOf(join(folder, file))].flatMap(([language, lines]) =>
      lines.flatMap(line =>
        Array.from({ length: times }, (_, round) => {
          const fills = FILLS[language as Language];
          let text = line.replaceAll(/\{(\w)\}/gu, (_mark, kind: string) => pick(fills[kind]!));
          if (round > 0) {
            if (draw() < 0.3) text = `${pick(asides.get(`before ${language}`)!)} ${text}`;
            if (draw() < 0.25) text = `${text} ${pick(asides.get(`after ${language}`)!)}`;
            if (draw() < 0.25) text = slipped(text, draw);
          }
          return { text, label: ofJob(file) };
        }),
      ),
    ),
  );
}
