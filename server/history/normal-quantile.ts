// Wichura, M. J. (1988), "Algorithm AS 241: The Percentage Points of the Normal Distribution", Applied Statistics
// 37(3), 477–484, routine PPND16: three rational functions, about 16 figures. Coefficients from the highest power down,
// to the figures that a double holds.

const CENTRE = {
  numerator: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946, 1971.5909503065513,
    133.14166789178438, 3.3871328727963665,
  ],
  denominator: [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751, 687.1870074920579,
    42.31333070160091, 1,
  ],
};
const SHOULDER = {
  numerator: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  denominator: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
};
const TAIL = {
  numerator: [
    2.0103343992922881e-7, 0.000027115555687434876, 0.0012426609473880784, 0.026532189526576124, 0.29656057182850487,
    1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  denominator: [
    2.0442631033899397e-15, 1.421511758316446e-7, 0.000018463183175100548, 0.0007868691311456133, 0.014875361290850615,
    0.1369298809227358, 0.599832206555888, 1,
  ],
};

/** The value that a standard normal variable stays below with this probability, 0 < p < 1. At 0 and 1: infinite. */
export function normalQuantile(probability: number): number {
  const fromHalf = probability - 0.5;
  if (Math.abs(fromHalf) <= 0.425) return fromHalf * ratio(CENTRE, 0.180625 - fromHalf * fromHalf);
  const depth = Math.sqrt(-Math.log(Math.min(probability, 1 - probability)));
  if (depth === Number.POSITIVE_INFINITY) return Math.sign(fromHalf) * depth;
  return Math.sign(fromHalf) * (depth <= 5 ? ratio(SHOULDER, depth - 1.6) : ratio(TAIL, depth - 5));
}

function ratio(fraction: { numerator: readonly number[]; denominator: readonly number[] }, at: number): number {
  return polynomial(fraction.numerator, at) / polynomial(fraction.denominator, at);
}

function polynomial(coefficients: readonly number[], at: number): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * at + coefficient;
  return sum;
}
