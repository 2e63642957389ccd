/** Binary digits after the point in the numbers below. */
const DIGITS = 1300n;
/** 1 as a fixed-point number. */
export const ONE: bigint = 1n << DIGITS;

/** A finite number as a whole multiple of 2^-1300: exact for sizes of 2^-1074 and more. */
export function fixed(x: number): bigint {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, x);
  const bits = view.getBigUint64(0);
  const exponent = (bits >> 52n) & 0x7ffn;
  const fraction = bits & 0xfffffffffffffn;
  const digits = exponent === 0n ? fraction : fraction | 0x10000000000000n;
  const size = digits << (DIGITS - 1075n + (exponent === 0n ? 1n : exponent));
  return x < 0 ? -size : size;
}

/** e^x of a fixed-point number by its series after halving the argument 64 times; digits beyond the 1000th binary one are noise. */
export function expFixed(x: bigint): bigint {
  const small = x >> 64n;
  let term = ONE;
  let sum = ONE;
  for (let n = 1n; term !== 0n && term !== -1n; n++) {
    term = ((term * small) >> DIGITS) / n;
    sum += term;
  }
  for (let i = 0; i < 64; i++) sum = (sum * sum) >> DIGITS;
  return sum;
}

/** How far `got` lies from a fixed-point number, in units of got's last place. */
export function unitsOff(got: number, due: bigint): number {
  const size = Math.abs(got);
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, size);
  view.setBigUint64(0, view.getBigUint64(0) + 1n);
  const unit = fixed(view.getFloat64(0)) - fixed(size);
  const off = fixed(got) - due;
  return Number(((off < 0n ? -off : off) * 1_000_000n) / unit) / 1e6;
}

/** The natural logarithm of a positive fixed-point number from a guess right to some ten digits, by Halley's method: each step triples them. */
export function logFixed(y: bigint, guess: number): bigint {
  let log = fixed(guess);
  for (let step = 0; step < 2; step++) {
    const e = expFixed(log);
    log += (2n * (y - e) * ONE) / (y + e);
  }
  return log;
}
