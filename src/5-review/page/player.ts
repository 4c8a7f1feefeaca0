/** The sound: one audio element, played from the moment an item asks for and, on demand, in a loop. */
import { effect, signal } from '@preact/signals';
import { problem } from './notices.ts';

/** `none`: the draft has no recording. `failed`: it has one, and it cannot be read. */
export const soundState = signal<'none' | 'failed' | 'preparing' | 'ready'>('preparing');
export const isPlaying = signal(false);
export const isLooping = signal(false);
export const rate = signal(1);
/** True until a first key or click: browsers keep a page silent before. */
export const isWaitingForHand = signal(false);
export const peaks = signal<Float32Array | null>(null);
/** The stretch at hand, in seconds. */
export const stretch = signal<{ start: number; end: number } | null>(null);

/** The words of the stretch at hand have been played at least to their middle. */
export const isHeard = signal(false);

const leadSeconds = 1.5;
const tailSeconds = 0.6;
export const rates = [0.5, 0.75, 1, 1.25, 1.5, 2] as const;

export const audio = new Audio();
audio.preload = 'auto';
audio.addEventListener('play', () => {
  if (isOpening) return;
  isPlaying.value = true;
  watchEnd();
});
audio.addEventListener('pause', () => {
  isPlaying.value = false;
});
audio.addEventListener('error', () => {
  // A recording this browser cannot play after all: the decoded sound is on its way.
  if (audio.src.endsWith(original)) soundState.value = isDecodedReady ? 'ready' : 'preparing';
  else if (audio.src) problem.value = 'The sound cannot be played: run "lineword review" again.';
});
effect(() => {
  audio.playbackRate = rate.value;
  audio.defaultPlaybackRate = rate.value;
});
audio.preservesPitch = true;

let stopAt: number | null = null;

/** The decoded sound: exact to the sample, in every format. Until it is there the recording itself may serve. */
const decoded = '/api/sound.wav';
const original = '/api/recording/1';
let isDecodedReady = false;

/** Plays the recording itself for now, when this browser can. */
export function playOriginal(type: string): void {
  if (isDecodedReady || audio.canPlayType(type) === '') return;
  audio.src = original;
  soundState.value = 'ready';
  playAgain();
}

/** Takes the decoded sound once the server has it, and the peaks for the waveform. */
export async function loadSound(): Promise<void> {
  if (isDecodedReady || soundState.value === 'none' || soundState.value === 'failed') return;
  isDecodedReady = true;
  // Not in the middle of a word: what plays goes on, and the next stretch comes from the decoded sound.
  const wasPreparing = soundState.value === 'preparing';
  if (audio.paused) takeDecoded();
  soundState.value = 'ready';
  if (wasPreparing) playAgain();
  const answer = await fetch('/api/peaks').catch(() => null);
  if (answer?.ok) peaks.value = Float32Array.from(new Int8Array(await answer.arrayBuffer()), (size) => size / 127);
}

function takeDecoded(): void {
  if (!isDecodedReady || audio.src.endsWith(decoded)) return;
  const at = audio.currentTime;
  audio.src = decoded;
  audio.playbackRate = rate.value;
  audio.currentTime = at;
}

/** Plays a stretch of the talk from a little before it, and stops after it, or begins again when looping. */
export function playStretch(start: number, end: number): void {
  if (stretch.value?.start !== start || stretch.value.end !== end) isHeard.value = false;
  stretch.value = { start, end };
  stopAt = end + tailSeconds;
  takeDecoded();
  seek(start - leadSeconds);
  play();
}

/** Plays on from a moment without stopping. */
export function playFrom(seconds: number): void {
  stopAt = null;
  takeDecoded();
  seek(seconds);
  play();
}

export function playAgain(): void {
  if (stretch.value) playStretch(stretch.value.start, stretch.value.end);
}

export function pauseOrPlay(): void {
  // While the device is being opened the element runs, and nothing is to be heard yet.
  if (!audio.paused && !isOpening) {
    audio.pause();
    return;
  }
  // After the end of its stretch the sound goes on, so that one can hear what follows.
  if (stopAt !== null && audio.currentTime >= stopAt - 0.05) stopAt = null;
  play();
}

export function pause(): void {
  audio.pause();
}

export function move(seconds: number): void {
  if (stopAt !== null && audio.currentTime + seconds > stopAt) stopAt = null;
  seek(audio.currentTime + seconds);
  play();
}

export function changeRate(step: 1 | -1): void {
  const at = rates.indexOf(rate.value as (typeof rates)[number]);
  rate.value = rates[Math.max(0, Math.min(rates.length - 1, at + step))]!;
}

export function toggleLoop(): void {
  isLooping.value = !isLooping.value;
  if (isLooping.value && audio.paused) playAgain();
}

function seek(seconds: number): void {
  audio.currentTime = Math.max(0, seconds);
}

function play(): void {
  if (soundState.value !== 'ready') return;
  stopOpening();
  audio.play().then(
    () => {
      isWaitingForHand.value = false;
    },
    (error: DOMException) => {
      if (error.name !== 'NotAllowedError') return;
      isWaitingForHand.value = true;
      void openDevice();
    },
  );
}

let isOpening = false;

/** Opening the sound device takes a quarter of a second. A silenced element may do it before the first key, so that key finds it open. */
async function openDevice(): Promise<void> {
  const at = audio.currentTime;
  isOpening = true;
  audio.muted = true;
  await audio.play().catch(() => {});
  if (!isOpening) return;
  audio.pause();
  seek(at);
  stopOpening();
}

function stopOpening(): void {
  if (!isOpening) return;
  isOpening = false;
  audio.muted = false;
}

/** Whether the sound is, or has just come to the end of, the stretch at hand; without sound it always is. */
export function isWithinStretch(): boolean {
  const at = stretch.value;
  if (soundState.value !== 'ready') return true;
  return (
    at !== null && audio.currentTime >= at.start - leadSeconds - 0.1 && audio.currentTime <= at.end + tailSeconds + 0.5
  );
}

/** Looks at each frame, because `timeupdate` comes four times a second only. */
function watchEnd(): void {
  const look = () => {
    if (audio.paused) return;
    const at = stretch.value;
    if (at && audio.currentTime >= (at.start + at.end) / 2 && audio.currentTime < at.end + 5) isHeard.value = true;
    if (stopAt !== null && audio.currentTime >= stopAt) {
      if (isLooping.value && stretch.value) seek(stretch.value.start - leadSeconds);
      else audio.pause();
    }
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}
