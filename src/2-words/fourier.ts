/** The fast Fourier transform (Cooley and Tukey 1965), in place; the length is a power of two. */
export function transform(real: Float64Array, imaginary: Float64Array): void {
  const size = real.length;
  for (let index = 1, mirrored = 0; index < size; index++) {
    let bit = size >> 1;
    for (; mirrored & bit; bit >>= 1) mirrored ^= bit;
    mirrored ^= bit;
    if (index < mirrored) {
      [real[index], real[mirrored]] = [real[mirrored]!, real[index]!];
      [imaginary[index], imaginary[mirrored]] = [imaginary[mirrored]!, imaginary[index]!];
    }
  }
  for (let span = 2; span <= size; span <<= 1) {
    const half = span >> 1;
    const { cosines, sines } = turns(span);
    for (let start = 0; start < size; start += span) {
      for (let step = 0; step < half; step++) {
        const a = start + step;
        const b = a + half;
        const re = real[b]! * cosines[step]! - imaginary[b]! * sines[step]!;
        const im = real[b]! * sines[step]! + imaginary[b]! * cosines[step]!;
        real[b] = real[a]! - re;
        imaginary[b] = imaginary[a]! - im;
        real[a]! += re;
        imaginary[a]! += im;
      }
    }
  }
}

const known = new Map<number, { cosines: Float64Array; sines: Float64Array }>();

function turns(span: number) {
  let found = known.get(span);
  if (!found) {
    const half = span >> 1;
    found = {
      cosines: Float64Array.from({ length: half }, (_, step) => Math.cos((-2 * Math.PI * step) / span)),
      sines: Float64Array.from({ length: half }, (_, step) => Math.sin((-2 * Math.PI * step) / span)),
    };
    known.set(span, found);
  }
  return found;
}
