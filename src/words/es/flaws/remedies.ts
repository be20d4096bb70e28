import { spaced } from '../../../engine/over-lines.ts';
import type { flawRemedies as en } from '../../en/flaws/remedies.ts';

export const flawRemedies: typeof en = {
  'only-looks': 'Es solo estético: lava como cualquier otra barra.',
  'use-as-it-is': 'Cúralo y úsalo como está.',
  'do-not-use': 'No uses, regales ni vendas este jabón. Tampoco lo cortes a mano.',
  'discard-safely':
    'Guárdalo en un bote de plástico cerrado y pregunta en tu punto limpio cómo entregar algo cáustico.',
  'keep-gloves-on': 'Guantes y gafas siempre que lo toques.',
  'no-guessed-repair': 'No añadas aceite ni sosa ni lo refundas a ojo: nadie sabe cuánta sosa tiene.',
  'plane-or-steam-ash':
    'Quita la capa con vapor, un paño o un cepillo, o déjala: se va con el primer lavado.',
  'wait-and-see-colour': 'Espera unas semanas antes de juzgar: el color aún puede moverse.',
  'wait-longer-to-cure': 'Dale unas semanas más de curado.',
  'cut-warm-or-thin-wire': 'Templa el bloque con cuidado y corta con un alambre fino.',
  'confetti-or-rebatch': 'Ralla las barras rotas para refundir o hacer un jabón confeti.',
  'hot-process-now':
    'Si los aceites y la sosa se pesaron bien: cuécelo como proceso en caliente, con guantes y gafas.',
  'stick-blend-back-together':
    '¿Sigue líquido en la olla? Bate con la batidora hasta que se una y vierte enseguida.',
  'reabsorb-then-test-strip':
    'Déjalo un día. Si el aceite vuelve a entrar, prueba varios puntos con una tira; si no, deséchalo.',
  'test-white-specks': spaced`
    Las motas blancas pueden ser sosa sin disolver. Con guantes, aprieta una: blanda y cerosa es grasa o
    polvo; dura, cortante o húmeda: no lo uses. Papel de pH sobre una mojada que marque 11 o más: no se usa.
  `,
  'spoon-into-mould': 'Ponlo a cucharadas, presiona y golpea el molde en la mesa.',
  'keep-dry-and-airy': 'Guarda las barras secas y con aire por todos lados.',
  'wipe-and-dry': 'Sécalas con un paño; se pueden usar.',
  'use-soon-and-apart': 'Apártalas de las buenas. Úsalas pronto si no te molesta el olor y nunca las vendas.',
  'discard-mouldy': 'Tíralo, no recortes la mancha, y lava lo que tocó.',
  'clean-cut-face': 'Cepilla una lámina fina de la cara: el dibujo de debajo está limpio.',
  'scrape-stained-face':
    'Con guantes, corta la cara manchada; desecha el jabón si el metal burbujeó en la masa.',
  'keep-in-dark': 'Guarda el resto en una caja, sin luz.',
  'mark-as-staining': 'Aléjalo de toallas claras y avisa a quien lo use.',
  'tell-bleeding-bars-apart':
    'Déjalo: no hace daño, solo se extiende. Pruébalo en un paño claro antes de vender.',
  'level-and-cap-crack': 'Mientras está tibio, junta la grieta con la mano enguantada.',
  'cool-loaf-now': 'Si sigue caliente: destápalo y ponlo donde corra aire fresco.',
  'insulate-now-for-full-gel': 'Si sigue tibio en el molde: tápalo para que el gel llegue al borde.',
  'pour-plain-and-fast': 'Olvida el remolino: ponlo en el molde mientras se mueve.',
  'dab-oil-off': 'Seca lo húmedo con papel y deja que el resto se absorba.',
  'wet-pigment-first':
    'Moja 1 cdta de color en 1 cda de aceite, glicerina o agua hasta que no quede grumo, y luego añádelo.',
  'strain-or-mill-colour': 'Pasa la pasta por un colador fino o espúmala antes de añadirla.',
  'stick-blend-carrier-in': 'Integra el color en su parte con la batidora; con glicerina no basta remover.',
  'less-carrier': 'Usa menos vehículo: como 1 cda por 1 cdta de color.',
  'hold-water-back': 'Resta del agua de la sosa el agua del color, nunca por debajo de 1:1.',
  'less-heat': 'Trabaja más fresco: empieza más frío, sin forzar gel, sin manta.',
  'less-water': 'Usa menos agua (sosa al 33 % más o menos).',
  'less-white-pigment': 'Usa el mínimo de blanco que sirva: 1/2 cdta por taza ya es pleno.',
  'keep-white-under-ceiling': 'No pases de 1 cdta de todos los blancos por taza.',
  'cooler-fragrance': 'Elige una fragancia que no caliente.',
  'check-lye-calculation': 'Calcula otra vez la sosa con cada aceite pesado.',
  'check-scale-and-measures':
    'Revisa la balanza con un peso conocido; pesa la sosa, nunca la midas a cucharas.',
  'dissolve-lye-fully-and-strain': 'Espera a que la sosa esté clara y pásala por un colador fino.',
  'stir-lye-in-evenly': 'Bate hasta una masa pareja y raspa lados y fondo.',
  'softer-recipe': 'Sube los aceites líquidos y baja las grasas duras.',
  'cut-sooner': 'Corta antes, cuando esté firme como queso curado.',
  'cover-and-gel': 'Tapa la superficie y mantenla tibia el primer día.',
  'steam-or-alcohol-on-top': 'Rocía alcohol fuerte encima justo tras verter, lejos del fuego.',
  'steeper-water-discount': 'Usa un poco menos de agua.',
  'all-gel-or-no-gel': 'Decide del todo: abriga bien para gel completo o enfría enseguida para ninguno.',
  'vanillin-free-or-portion': 'Usa un aroma sin vainillina, o aromatiza solo la parte que puede oscurecer.',
  'plan-for-brown': 'Diseña contando con el café; el pigmento blanco no lo evita.',
  'swap-to-alkali-stable': 'Usa un óxido, un ultramar o una mica coloreada con ellos.',
  'test-in-small-cup': 'Pruébalo antes en media taza de masa y mira a la semana.',
  'swap-dye-for-pigment': 'Usa pigmento en vez de tinte o laca donde la línea deba quedar nítida.',
  'dose-down-to-ceiling': 'No pases del tope: 1/2 cdta por taza en óxidos y ultramares, 1 cdta en micas.',
  'dose-up-stepwise': 'Sube por pasos hasta la dosis plena: 1/4 cdta por taza en óxidos, 1 cdta en micas.',
  'white-under-bright-colour': 'Un poco de blanco bajo el color tapa la base.',
  'paler-base-oils': 'Usa aceites más claros en la parte que deba tener color limpio.',
  'counter-tint': 'Un toque de ultramar violeta quita amarillo al blanco.',
  'no-insulation-for-hot-recipe': 'Déjalo sin tapar y fresco, o en la nevera.',
  'less-sugar-milk-honey': 'Menos azúcar, miel y leche, y empieza en frío con ellos.',
  'slower-fragrance': 'Elige una fragancia que se porte bien en proceso en frío.',
  'fragrance-last-hand-stir':
    'Mezcla la fragancia con un poco de aceite tibio, ponla al final y remueve a mano.',
  'thinner-trace-and-cooler': 'Para en una traza más fina y empieza más fresco.',
  'reach-true-emulsion': 'Bate hasta que al parar no se vea aceite, y tibio para que ninguna grasa cuaje.',
  'warm-enough-to-stay-melted':
    'Mantén aceites y sosa tibios para que ninguna grasa se enturbie, 38-43 °C (100-109 °F).',
  'melt-and-stir-butters': 'Derrite del todo las grasas duras y remueve el bote antes de sacar.',
  'fresh-oils-lower-superfat': 'Usa aceites frescos y un 5 % de sobreengrasado.',
  'fewer-unsaturated-oils': 'Usa menos aceites que se enrancian rápido (girasol, pepita de uva, cáñamo).',
  'antioxidant-and-chelator': 'Usa agua destilada; ayudan un antioxidante en el aceite y un quelante.',
  'burp-blender-tap-mould': 'Saca el aire de la batidora bajo la masa y golpea el molde.',
  'cure-dry-moving-air': 'Cura en aire seco que se mueva, sin rejillas de metal.',
  'light-stable-colour': 'Elige un color que aguante la luz: óxido o ultramar mejor que neón o planta.',
  'store-out-of-light': 'Guárdalo y muéstralo lejos del sol y las lámparas.',
  'ask-seller-about-discolouring': 'Pregunta al vendedor qué le hace la fragancia al color del jabón.',
  'steel-or-plastic-only':
    'Usa solo acero inoxidable, plástico resistente o silicona; nunca aluminio ni cobre.',
  'less-oil-in-mica-top': 'Usa solo unas gotas de aceite, o pinta la mica con alcohol.',
  'turn-bar-and-clean-wire': 'Corta el bloque de lado y limpia el alambre tras cada corte.',
  'cut-when-firm-wipe-wire': 'Corta cuando esté firme, con el alambre limpio.',
  'no-fresh-food': 'No pongas alimento fresco, o sécalo del todo, y deja los pétalos fuera.',
  'finer-additives': 'Muele más fino los granos.',
  'use-halves-apart': 'Usa las mitades así, o júntalas con un poco de agua mientras están frescas.',
  'press-flat-while-pliable': 'Mientras cedan: ponlas planas bajo un peso ligero uno o dos días.',
  'turn-bars-often': 'Voltea las barras cada uno o dos días.',
  'brush-loose-mica-off':
    'Quita la mica suelta con una brocha seca, al aire libre o con mascarilla: no respires el polvo.',
  'not-for-skin-unless-permitted':
    'No lo uses en la piel salvo que la etiqueta diga que el color se permite en jabón; no lo vendas.',
  'leave-to-firm-gloved': 'Con guantes: déjalo en el molde, o aparte, uno o dos días más.',
  'trim-when-firm': 'Recorta lo roto cuando esté firme.',
  'plane-sides-smooth': 'Cepilla o alisa los lados cuando esté firme.',
  'plane-top-smooth': 'Cepilla la superficie, o déjala: se va al lavar.',
  'pour-layer-while-soft':
    'Vierte la siguiente capa cuando la anterior apenas la sostenga: blanda, sin cuajar.',
  'roughen-and-spray-layer':
    '¿Esperaste mucho? Raya la capa con un tenedor y rocíala con alcohol, lejos del fuego.',
  'less-between-layers': 'Que no quede mica, aceite ni ceniza entre capas: de mica, apenas un soplo.',
  'stop-swirling-sooner': 'Para antes: una o dos pasadas con la herramienta, pocos vertidos en la olla.',
  'swirl-a-little-thicker': 'Haz el remolino en traza ligera, cuando una gota se queda arriba un segundo.',
  'colours-that-mix-clean': 'Elige colores vecinos: los opuestos dan café donde se tocan.',
  'pour-low-over-spatula': 'Vierte cerca de la superficie, sobre una espátula.',
  'pour-high-for-depth':
    'Para remolino de gota cambia la altura al verter: alto baja hondo, bajo queda arriba.',
  'dry-evenly-on-all-sides':
    'Seca las barras de canto, con aire por todos lados, lejos del ventilador o el sol.',
  'cut-even-and-thicker': 'Corta barras parejas, de unos 2,5 cm.',
  'spray-mica-onto-wet-top': 'Pon la mica con la superficie húmeda y una bruma de alcohol, lejos del fuego.',
  'less-dry-mica-on-top': 'Usa menos: un velo fino agarra, un montón no.',
  'colour-made-for-soap':
    'Usa un color permitido en cosmética que aguante la sosa: óxido, ultramar o mica para proceso en frío.',
  'wait-before-unmoulding':
    'Espera a que esté firme y fresco al tacto del guante: 1 a 3 días, más en recetas blandas.',
  'firm-up-recipe':
    'Un poco menos de agua, o 1 cdta de lactato de sodio por libra de aceites, lo endurece antes.',
  'chill-before-unmoulding': '¿Se pega a la silicona? Una hora en el congelador antes de sacarlo.',
  'smooth-taut-liner':
    'Forra tenso y liso, con el lado brillante hacia el jabón, y golpea el molde tras verter.',
};
