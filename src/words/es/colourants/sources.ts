/** Where statements of the catalogue come from, by what it says in English; titles stay as they are printed. */
const SOURCES: ReadonlyMap<string, string> = new Map([
  ['told from the chemical name alone', 'solo por el nombre químico'],
  [
    'level US teaspoons per US cup of raw batter, full saturated colour',
    'cucharaditas rasas de EE. UU. por taza de masa cruda, a pleno color',
  ],
  ['what wets this kind of powder', 'lo que moja este tipo de polvo'],
  ['dye chemistry', 'química de los tintes'],
  [
    'Pharmaceutical Research 1993;10:1458: lakes let go of their dye as the alumina dissolves',
    'Pharmaceutical Research 1993;10:1458: las lacas sueltan su tinte al disolverse la alúmina',
  ],
  [
    'plant powders go in oil or water; roots are better infused in oil',
    'los polvos de plantas van en aceite o agua; las raíces, mejor infundidas en aceite',
  ],
  ['food chemistry and indicator tables', 'química de los alimentos y tablas de indicadores'],
  ['pigment handbooks on daylight-fluorescent dyes', 'manuales de pigmentos sobre tintes fluorescentes'],
  [
    'makers use about a tablespoon of plant powder a pound of oils',
    'se usa más o menos una cucharada de polvo de plantas por libra de aceites',
  ],
  ['has no colour to lose', 'no tiene color que perder'],
  [
    'no trade rule known: dye powder is strong, start at a sixteenth of a teaspoon a cup',
    'sin regla conocida: el tinte en polvo es fuerte, empieza con 1/16 de cucharadita por taza',
  ],
  [
    'no trade rule known: weaker than other dyes, start at half a teaspoon a cup',
    'sin regla conocida: más flojo que otros tintes, empieza con media cucharadita por taza',
  ],
  [
    'no trade rule known: stronger than clays, so half of that dose to begin with',
    'sin regla conocida: más fuerte que las arcillas, así que la mitad de su dosis para empezar',
  ],
  [
    'no trade rule known: stronger than other plant powders, so half of that dose to begin with',
    'sin regla conocida: más fuerte que otros polvos de plantas, así que la mitad de su dosis para empezar',
  ],
  [
    'no trade rule known: stronger than other plant powders, so a quarter of that dose to begin with',
    'sin regla conocida: más fuerte que otros polvos de plantas, así que un cuarto de su dosis para empezar',
  ],
  [
    'no trade rule known: stronger than charcoal, so half of that dose to begin with',
    'sin regla conocida: más fuerte que el carbón, así que la mitad de su dosis para empezar',
  ],
  [
    'no trade rule known: stronger than charcoal, so a quarter of that dose to begin with',
    'sin regla conocida: más fuerte que el carbón, así que un cuarto de su dosis para empezar',
  ],
  ['lakes: oil or glycerin only', 'lacas: solo en aceite o glicerina'],
  ['pigment handbooks: resists dilute alkali', 'manuales de pigmentos: resiste el álcali diluido'],
  [
    'lakes other than the true red bleed and stain: start far lower; figure from memory',
    'las lacas, salvo el rojo verdadero, sangran y manchan: empieza con mucho menos; cifra de memoria',
  ],
  ['water-soluble dyes go in water', 'los tintes solubles en agua van en agua'],
  [
    'wet clay in water first, else it takes water from the batter',
    'moja antes la arcilla en agua, o le quita agua a la masa',
  ],
  [
    'makers use about a tablespoon of clay a pound of oils',
    'se usa más o menos una cucharada de arcilla por libra de aceites',
  ],
  [
    'pigment handbooks: attacked slowly, no change in cold-process time',
    'manuales de pigmentos: ataque lento, sin cambio en lo que tarda el proceso en frío',
  ],
  ['never disperses in water', 'nunca se dispersa en agua'],
  [
    'pigment handbooks (Buxbaum): insoluble in dilute alkali',
    'manuales de pigmentos (Buxbaum): insoluble en álcali diluido',
  ],
  [
    'polymer chemistry: lye attacks polyester film slowly and may pull its dye',
    'química de polímeros: la sosa ataca despacio el poliéster y puede llevarse su tinte',
  ],
  [
    'sold water- or oil-dispersible: the label or a dish test says which',
    'se vende dispersable en agua o en aceite: lo dice la etiqueta o la prueba del plato',
  ],
  ['oil-soluble dyes go in oil', 'los tintes solubles en aceite van en aceite'],
  ['carbon wets in oil; water takes patience', 'el carbón se moja en aceite; en agua pide paciencia'],
  [
    'Ullmann, as cited by Haz-Map: acid destroys ultramarine; fairly resistant to alkali',
    'Ullmann, citado por Haz-Map: el ácido destruye el ultramar; bastante resistente al álcali',
  ],
  [
    'Encyclopaedia Britannica 1911, pigments: carbon is not liable to change',
    'Encyclopaedia Britannica 1911, pigments: el carbón no cambia',
  ],
  [
    'pigment handbooks on daylight-fluorescent resins: most shades hold at first, pinks and blues may drift',
    'manuales de pigmentos sobre resinas fluorescentes: casi todos los tonos aguantan al principio, rosas y azules pueden virar',
  ],
  [
    'pigment handbooks (Kirk-Othmer, Buxbaum): oxidised grades are weaker than the blue',
    'manuales de pigmentos (Kirk-Othmer, Buxbaum): los grados oxidados son más débiles que el azul',
  ],
  [
    'Field and Salter, Chromatography; Terry, Pigments, Paint and Painting: alkali turns iron blue brown',
    'Field y Salter, Chromatography; Terry, Pigments, Paint and Painting: el álcali vuelve marrón el azul de hierro',
  ],
  [
    'general chemistry: 2 Al + 2 OH- + 6 H2O gives 2 Al(OH)4- + 3 H2',
    'química general: 2 Al + 2 OH- + 6 H2O da 2 Al(OH)4- + 3 H2',
  ],
  [
    'general chemistry: copper and its alloys corrode in alkali and colour the soap',
    'química general: el cobre y sus aleaciones se corroen en álcali y tiñen el jabón',
  ],
  [
    'organic pigment handbooks: only a reducing agent with alkali dissolves thioindigo',
    'manuales de pigmentos orgánicos: solo un reductor con álcali disuelve el tioíndigo',
  ],
  ['organic pigment handbooks', 'manuales de pigmentos orgánicos'],
  ['oil first: zinc oxide clumps in water', 'primero aceite: el óxido de zinc se apelmaza en agua'],
  [
    'makers use one to two teaspoons of charcoal a pound of oils',
    'se usan de una a dos cucharaditas de carbón por libra de aceites',
  ],
  [
    'Gettens and Stout, Painting Materials, p. 107: unaffected by heat, strong acids and alkalis',
    'Gettens y Stout, Painting Materials, p. 107: no le afectan el calor, los ácidos fuertes ni los álcalis',
  ],
  [
    '21 CFR 73.1326 limits chromium extracted by 2 % sodium hydroxide to 0.1 %',
    '21 CFR 73.1326 limita al 0,1 % el cromo que extrae la sosa al 2 %',
  ],
  [
    'pigment handbooks (Buxbaum): strong acids and alkalis destroy manganese violet',
    'manuales de pigmentos (Buxbaum): ácidos y álcalis fuertes destruyen el violeta de manganeso',
  ],
  ['general inorganic chemistry', 'química inorgánica general'],
  ['general inorganic chemistry: amphoteric', 'química inorgánica general: anfótero'],
  [
    'general inorganic chemistry: hydrolyses toward the oxide',
    'química inorgánica general: se hidroliza hacia el óxido',
  ],
  [
    'general inorganic chemistry: uncoated grades lose their glow in water',
    'química inorgánica general: sin recubrir pierde su brillo en agua',
  ],
  [
    'general chemistry: zinc metal gives hydrogen with alkali',
    'química general: el zinc metálico da hidrógeno con álcali',
  ],
  [
    'general chemistry: gold does not react with alkali; sold leaf is often brass',
    'química general: el oro no reacciona con álcali; el pan de oro que se vende suele ser latón',
  ],
  [
    'general chemistry: silver does not react with alkali but tarnishes',
    'química general: la plata no reacciona con álcali, pero se oscurece',
  ],
  [
    'JECFA specification of carmines, FNP 52 Add 8 (2000): violet once alkaline, and soluble',
    'JECFA, especificación de los carmines, FNP 52 Add 8 (2000): violeta en álcali, y soluble',
  ],
  ['food chemistry', 'química de los alimentos'],
  [
    'food chemistry: no group that alkali attacks',
    'química de los alimentos: ningún grupo que el álcali ataque',
  ],
  ['food chemistry: copper chelate', 'química de los alimentos: quelato de cobre'],
  [
    'a clay mineral: no change in cold-process time',
    'un mineral de arcilla: sin cambio en lo que tarda el proceso en frío',
  ],
]);

/** A source in Spanish; as it stands where it is nothing but a title. */
export const sourceInSpanish = (source: string): string => SOURCES.get(source) ?? source;
