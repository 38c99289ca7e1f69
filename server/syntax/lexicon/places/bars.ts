// Words in and around the numbers of bars, for expressions. Common practice, no source.

/** Before the last of a list: `bars 3, 5 and 9`. */
export const JOINTS_OF_BARS = "&|\\+|and|und|et|en|e|y";

/** Of a list of single bars: `bars 12, 30, 44`. */
export const PLURALS_OF_BARS = "bars|measures|meas|bb|mm|bs|ms|takte|takten|mesures|mes|maten|misure|battute|compases";

/** What a range may end in: `17 - end`. */
export const END_OF_PIECE = "end|fin|ende|einde|fine";

/** Behind a number with a point, which is an ordinal then: `2. Zeile`. */
export const PLACES_BY_ORDINAL = "takt|zeile|seite|satz|bar|bars|line|page|mvt|movement|regel|maat|mesure";
