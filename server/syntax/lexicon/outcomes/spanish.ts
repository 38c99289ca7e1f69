import { joined } from "../joined.ts";
import { combined } from "./combined.ts";
import type { OutcomeWords } from "./outcome-words.ts";

/** What is said with a word before it: `casi limpio`, `todavía no a tempo`. */
const GOOD = joined(
  "a tempo | afinada | afinado | bien | estable | fluido | limpia | limpio | pareja | parejo | perfecto | preciso",
  "segura | seguro",
);

const FAULT = "desliz | error | fallo | gallo | tropiezo";
const FAULT_FEMININE = "duda | nota falsa | parada | pifia";
const FAULTS = "deslices | errores | fallos | gallos | tropiezos";
const FAULTS_FEMININE = "dudas | notas falsas | paradas | pifias";

/**
 * How it went, in Spanish: from memory. A single word that also stands in what is said of a pain is none: `constante`.
 */
export const SPANISH_OUTCOMES: OutcomeWords = {
  reached: `
    a gusto | a la perfección | a la primera | a tempo | a tiempo | aceptado | acertado | afinada | afinado |
    al tempo | bastante bien | bastante limpio | bien | bien afinado | bien hecho | bonita | bonito | bordado |
    bravo | brillante | buen ritmo | buen sonido | buen tempo | buena | buena afinación | bueno | chupado |
    claro y limpio | clarísimo | clavada | clavado | como la seda | conseguida | conseguido | convincente | correcta |
    correcto | cómoda | cómodo | de diez | de maravilla | de memoria y limpio | de un tirón | dominada | dominado |
    en los dedos | en su sitio | en tiempo | estupenda | estupendamente | estupendo | exacto | excelente |
    fantástica | fantástico | fenomenal | fluida | fluido | fluye | fluye bien | fluyó | funciona bien | fácil |
    genial | impecable | limpia | limpio | limpio y parejo | limpísimo | listo | lo tengo | lograda | logrado |
    magnífico | maravillosa | maravilloso | memorizada | memorizado | mucho mejor | muchísimo mejor | muy bien |
    muy buen sonido | muy logrado | nada mal | nada mal hoy | ni un error | ni un fallo | ningún error |
    ningún fallo | ningún problema | no estuvo mal | no está mal | no está nada mal | ok | olé | ordenado | pareja |
    parejo | perfecta | perfectamente | perfecto | por fin | por fin limpio | por fin sale | precisa | preciso |
    prueba superada | regular y limpio | regular y parejo | relajado y limpio | sale | sale bien | sale fácil |
    sale limpio | sale solo | salió | salió bien | salió fácil | salió limpio | salió muy bien | salió perfecto |
    se sostiene | segura | seguro | sin dificultad | sin dudar | sin errores | sin esfuerzo | sin fallar |
    sin fallos | sin paradas | sin parar | sin problema | sin problemas | sin tropezar | sin tropiezos |
    sin un fallo | solvente | sonó bien | suelto y limpio | suena bien | suena bonito | suena genial | superado | sí |
    sólida | sólido | todo bien | todo correcto | todo en orden | todo limpio | todo ok | tranquilo y limpio |
    uniforme | va bien | va genial | va muy bien | va solo | vale | viento en popa | yes |
    ${combined("ni un | ningún | sin un", FAULT)} |
    ${combined("ni una | ninguna | sin una", FAULT_FEMININE)} |
    ${combined("0 | cero | sin", joined(FAULTS, FAULTS_FEMININE))}
  `,
  nearly: `
    a medias | a mitad | a ratos | a veces | aceptable | algo mejor | algunos errores | algunos fallos |
    algún desliz | algún error | algún fallo | algún tropiezo | así así | avanza | avanzando | bien pero lento |
    cada vez mejor | casi | casi a tiempo | casi bien | casi casi | casi conseguido | casi limpio | casi lo tengo |
    casi perfecta | casi perfecto | casi sale | casi siempre | casi sin errores | casi sin fallos | casi todo |
    con algún fallo | con errores | con fallos | de momento vale | decente | dudosa | dudoso | en camino |
    en proceso | en progreso | errores | fallos | falta poco | insegura | inseguro | justito | lento pero bien |
    lento pero limpio | lento pero seguro | limpio pero lento | lo voy pillando | medianamente | medio bien |
    medio medio | mediocre | meh | mejor | mejor pero lento | mejor que antes | mejor que ayer |
    mejor que la semana pasada | mejora | mejorable | mejorando | mejoró | más limpio | más o menos | más segura |
    más seguro | no del todo | no perfecto | no siempre | pasable | pequeños errores | pequeños fallos | poco a poco |
    pocos errores | pocos fallos | por los pelos | progresa | progresando | pse | regular | regularcillo | regulín |
    se puede mejorar | tambaleante | todavía inseguro | todavía no del todo | un error | un pelín mejor |
    un poco inseguro | un poco mejor | una de cada dos | unos fallos | va mejor | va mejorando | va saliendo |
    va tirando | vacilante | ya casi |
    ${combined("a veces | casi | medio | no del todo | no siempre | todavía no del todo", GOOD)} |
    ${combined("1 | algún | solo un | sólo un | un | un pequeño", FAULT)} |
    ${combined("1 | alguna | solo una | sólo una | una | una pequeña", FAULT_FEMININE)} |
    ${combined("2 | algunos | dos | pocos | un par de | unos", FAULTS)} |
    ${combined("2 | algunas | dos | pocas | un par de | unas", FAULTS_FEMININE)}
  `,
  not: `
    a golpes | a tirones | a trompicones | acelerada | acelerado | apresurada | apresurado | atascada | atascado |
    atrancado | atropellada | atropellado | aún no | bajo de afinación | caos | catástrofe | caótico | chapucero |
    chapuza | chirriante | chirrido | chirría | confusa | confuso | corriendo | cuesta mucho | de pena |
    demasiado alto | demasiado bajo | demasiado difícil | demasiado fuerte | demasiado lento | demasiado pronto |
    demasiado rápido | demasiado suave | demasiado tarde | demasiados errores | demasiados fallos | desafinada |
    desafinado | desafinadísimo | desastre | desastroso | descontrolado | descoordinado | descuadrado | desigual |
    desordenado | difícil | en blanco | errores por todos lados | estancado | fallida | fallido | fatal | fea | feo |
    fracaso | fuera de tempo | fuera de tiempo | gallos | horrible | horroroso | imposible | imprecisa | impreciso |
    inestable | insoportable | irregular | lentísimo | lioso | lío | mal | mal sonido | malísimo | me atasco |
    me lío | me perdí | me pierdo | me trabo | me tropiezo | muchos errores | muchos fallos | muy difícil |
    muy lento | muy mal | muy rápido | muy sucio | nada bien | nada limpio | ni de broma | ni de lejos | no |
    no bien | no funciona | no limpio | no llega | no llego | no me sale | no me salió | no puedo | no sale |
    no salió | no seguro | no va | no va bien | notas falsas | nulo | para nada | pasado de tempo | pastoso | patoso |
    penoso | peor | peor que ayer | perdida | perdido | precipitada | precipitado | pésima | pésimo | rasposo |
    roto a mitad | se atasca | se cae | se desmorona | se me cae | se me va | se rompe | se traba | sigue mal |
    sigue sin salir | sin control | sin ritmo | sucia | sucio | sucísimo | tensa | tenso | terrible | todavía mal |
    todavía no | todo mal | torpe | trabada | trabado | trastabillando | tropiezo | tropiezos | un desastre |
    un horror | un lío |
    ${combined("nada | no | nunca | poco", GOOD)} |
    ${combined("3 | 4 | 5 | tres | demasiados | muchos | varios", FAULTS)} |
    ${combined("3 | 4 | 5 | tres | demasiadas | muchas | varias", FAULTS_FEMININE)}
  `,
  intensifiers: joined(
    "ahora | ahora sí | al final | aún | bastante | completamente | hoy | muy | más bien | por fin | realmente",
    "tan | todavía | totalmente | un poco | ya",
  ),
  negations: "no | ningún | nunca | sin | pero | excepto | salvo",
};
