import { spaced } from '../../../over-lines.ts';

/** Words of hair, health and what is put on skin; as `topics.ts` says of all of these lists. From memory. */
export const OF_BODY = {
  hair: spaced`
    beard* barba* bigote* mustache moustache haircut* hair hairdress* pelo pelos pelito cabello* cabellera
    peluca* eyebrow* ceja* lash lashes eyelash* pestana* barber* peluquer* afeitad* afeitar* shave shaved
    corte fade flequillo bangs fringe scalp tattoo* tatuaje* tatuar* makeup maquillaje canas dandruff caspa
    decolor* bleached highlights mechitas balayage rulos rizos curls curly frizz frizzy encrespa* trenza*
    braid* dreadlock* rastas waxing depil* laser bald calv* alopecia keratin* queratina* peroxide peroxido
    wig* dreads perm perms permed relaxer* alisar alisado alisante peinado* hairspray hairline updo tresses
    extensions nape cowlick stubble sideburns patillas navaja mousse gomina pomade shampooing ringlets
    perming coloracion mechas canosa canoso morena pelirroj* blonde brunette redhead
  `,
  health: spaced`
    vaccin* vacuna* covid aspirin* paracetamol ibuprofen* amoxicil* tableta* jarabe constipat*
    estrenimiento diarr* vomit* nausea* nauseous ulcer* cholesterol colesterol insulin* migraine* migrana*
    jaqueca flu gripe resfriado resfrio arthritis artritis worms lombri* lice piojo* thinners parto anemia
    thyroid tiroides colic colico* patient* paciente* medicamento* nurse* enfermer* antibiotic* fever
    fiebre headache* dolor* duele duelen cough coughing tos pregnan* embaraz* lactancia breastfeed* diabet*
    tooth teeth toothache diente* muela* rodilla* hospital* vitamin* sprain* esguince* asthma asma surgery
    cirugia operaron operation operar physio* fisioterap* chiropract* quiropract* stretches estiramiento*
    backache lumbar lumbago espalda sciatica ciatica shoulder* hombro* ankle* tobillo* elbow* muneca
    fractur* stitches bandage* venda vendas eczema* psoriasis dermatit* acne pimple* espinilla* rosacea
    rash rashes sarpullido* roncha* urticaria ringworm athlete* fungus infec* pus wart warts verruga*
    wrinkle* arruga* sunburn* insolacion cancer tumor tumour biopsy allerg* alerg* detox* insomni*
    sleepless ansiedad anxiety depress* stress* estres menopaus* menstru* periodo hormon* cramp* calambre*
    heartburn reflujo stomach* estomago* panza barriga tummy belly kidney* rinon rinones liver higado
    bladder vejiga gut intestin* colitis gastritis hemorroid* piles glucosa glucose pediatr* dentist*
    optician oftalmolog* dermatolog* farmacia pharmacist farmaceutico homeopath* homeopatic* remedio
    remedios supplement* suplemento* capsule capsules capsula* tincture* axila* armpit* hydrocortisone
    cortisona ointment* pomada* unguento* tablet tablets doctor* medic* pill* pressure heel* talon* knee*
    bloodpressure garganta throat swollen hinchad* grano granos zit zits blackhead* breakout* medication*
    meds jarabes teta lactante nursing hangover guayabo chuchaqui resaca cruda therapy therapist terapia
    psicolog* ache aches aching achy sneez* estornud* mocos catarro sinus sinusitis nosebleed bruise*
    moreton* chichon swelling varice* circulacion circulation vertigo mareo mareos dizzy ear ears oido
    oidos earache veterinary gout gota reuma rheumat* bulto quiste cyst eyesight lentes sordo deaf hearing
    dentures dentadura caries brackets nutritionist nutriolog* adelgazar dieta diet diets metabolism*
    thyroxine statin* omeprazol* ansioso anxious insomne sleep dormir snoring ronc* probiotic* probiotico*
    melatonin* magnesium magnesio tisana* gargle gargaras inhaler inhalador eyedrops gotas ampoule
    injection* inyeccion* jab jabs xray radiografia scan ultrasound ecografia ovulat* fertility fertilidad
    condom* contracept* anticoncept*
  `,
  cosmetics: spaced`
    lipstick* lipgloss gloss labial* eyeshadow* sombras rubor mascara rimel eyeliner* delineador*
    maquillaj* foundation concealer corrector nail nails manicur* pedicur* moisturi* lotion* locion*
    balm* balsamo* deodorant* desodorante* antiperspirant* antitranspirante* toothpaste dentifric*
    mouthwash enjuague shampoo* champu* conditioner* acondicionador* sunscreen* protector bronceador*
    bronzer exfoliant* mascarilla* perfume* colonia cologne aftershave* sanitiser* sanitizer* diffuser*
    difusor* toner tonico hyaluron* hialuron* retinol* niacinamid* emulsif* emulsionante emulsificant*
    preservative* conservante* preservant* salicyl* glicolico glycolic collagen colageno facial facials
    hydrosol* hidrolato* massage masaje* sprayable micellar micelar unguent* petrolatum spf fps syndet*
    surfactant* tensioactiv* betaine betaina serum* scrub* sombra kohl khol colorete rouge cuticle*
    cuticula* gelish acrylics eyebrow* fakelash* peeling exfoli* bodyspray talc talco powderpuff mascarill*
    facemask* sunblock
  `,
} as const;
