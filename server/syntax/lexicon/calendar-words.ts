import { joined } from "./joined.ts";

/**
 * What months and weekdays are called in dates, in the languages of names and with their usual short forms: common
 * practice, no source. The first of each list is January, or Monday. `set` for September is set work more often.
 */

export const MONTH_WORDS: readonly string[] = [
  "jan | january | januar | janner | jänner | janv | janvier | januari | gen | gennaio | ene | enero",
  "feb | february | februar | fev | fevr | fevrier | fév | févr | février | februari | febr | febbraio | febrero",
  "mar | march | marz | märz | mrz | mars | maart | mrt | marzo",
  "apr | april | avr | avril | aprile | abr | abril",
  "may | mai | mei | mag | maggio | mayo",
  "jun | june | juni | juin | giu | giugno | junio",
  "jul | july | juli | juil | juillet | lug | luglio | julio",
  "aug | august | aout | août | augustus | ago | agosto",
  "sep | sept | september | septembre | settembre | septiembre | setiembre",
  "oct | october | okt | oktober | octobre | ott | ottobre | octubre",
  "nov | november | novembre | noviembre",
  "dec | déc | december | dez | dezember | decembre | décembre | dic | dicembre | diciembre",
];

export const WEEKDAY_WORDS: readonly string[] = [
  joined("mon | monday | mo | montag | lun | lundi | ma | maandag | lunedi | lunedì | lunes"),
  joined("tue | tues | tuesday | di | dienstag | mar | mardi | dinsdag | martedi | martedì | martes"),
  joined(
    "wed | weds | wednesday | mi | mittwoch | mer | mercredi | wo | woensdag | mercoledi | mercoledì | mie | mié | miercoles | miércoles",
  ),
  joined(
    "thu | thur | thurs | thursday | do | donnerstag | jeu | jeudi | donderdag | gio | giovedi | giovedì | jue | jueves",
  ),
  joined("fri | friday | fr | freitag | ven | vendredi | vr | vrijdag | venerdi | venerdì | vie | viernes"),
  joined(
    "sat | saturday | sa | samstag | sonnabend | sam | samedi | za | zaterdag | sab | sáb | sabato | sabado | sábado",
  ),
  joined("sun | sunday | so | sonntag | dim | dimanche | zo | zondag | dom | domenica | domingo"),
];
