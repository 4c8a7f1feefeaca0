/** Sounds made up for the tests: 16-bit mono wav, the same on every run. */

const rate = 16000;

export function wav(seconds: number, sampleAt: (index: number) => number): Buffer {
  const count = Math.round(seconds * rate);
  const bytes = Buffer.alloc(44 + 2 * count);
  bytes.write('RIFF', 0);
  bytes.writeUInt32LE(36 + 2 * count, 4);
  bytes.write('WAVEfmt ', 8);
  bytes.writeUInt32LE(16, 16);
  bytes.writeUInt16LE(1, 20);
  bytes.writeUInt16LE(1, 22);
  bytes.writeUInt32LE(rate, 24);
  bytes.writeUInt32LE(2 * rate, 28);
  bytes.writeUInt16LE(2, 32);
  bytes.writeUInt16LE(16, 34);
  bytes.write('data', 36);
  bytes.writeUInt32LE(2 * count, 40);
  for (let i = 0; i < count; i++)
    bytes.writeInt16LE(Math.round(32767 * Math.max(-1, Math.min(1, sampleAt(i)))), 44 + 2 * i);
  return bytes;
}

export const silence = () => 0;

/** Running water: noise from a fixed seed, smoothed, swelling slowly. */
export function water(): (index: number) => number {
  let state = 12345;
  let smooth = 0;
  return (index) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    smooth += 0.4 * (state / 2 ** 31 - 1 - smooth);
    return 0.25 * smooth * (1 + 0.3 * Math.sin(index / 9000));
  };
}

/** A tune of four chords, each note with overtones, as from a radio in the truck. */
export function music(index: number): number {
  const seconds = index / rate;
  const chords = [
    [220, 277.2, 329.6],
    [174.6, 220, 261.6],
    [196, 246.9, 293.7],
    [146.8, 220, 293.7],
  ];
  const notes = chords[Math.floor(seconds) % chords.length]!;
  const fade = Math.exp(-1.5 * (seconds % 1));
  return notes.reduce((sum, note) => {
    const turn = 2 * Math.PI * note * seconds;
    return sum + 0.12 * fade * (Math.sin(turn) + 0.4 * Math.sin(2 * turn) + 0.2 * Math.sin(3 * turn));
  }, 0);
}
