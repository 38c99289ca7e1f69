/**
 * Short forms of four letters and more that are written with a point, in the six languages: the point ends no sentence.
 * Common practice, no source.
 */
export const ABBREVIATIONS: ReadonlySet<string> = new Set(
  (
    "harm | chrom | arps | pent | stacc | artic | exer | exerc | stud | etud | fing | vars | meas | syst | reps | cresc | decresc | " +
    "incl | resp | evtl | slurr | tong | mixol | phryg | crotch | quav | semi | semiq | metr | metro | approx | ungef | artif | " +
    "desc | asc | alt | symm | concl | expos | recap | prep | perf | perform | accomp | acc | orch | chor | tutti | bass | clar | " +
    "Takt | Satz | Seite | Zeile | Teil | Buchst | Oktav | gest | geb | legg | spicc | détaché | port | tempo | circa | Nummer"
  )
    .toLowerCase()
    .split(" | "),
);
