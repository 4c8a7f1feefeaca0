"""Speech as it comes from the field: with pauses, other pitches, echo, water, wind, hum, hiss and narrow bands."""
import numpy as np
import torch
from scipy.signal import butter, fftconvolve, lfilter, resample_poly
from transformers.audio_utils import mel_filter_bank

RATE = 16000
BANDS = torch.tensor(mel_filter_bank(num_frequency_bins=201, num_mel_filters=80, min_frequency=0.0, max_frequency=8000.0,
                                     sampling_rate=RATE, norm="slaney", mel_scale="slaney").T.astype(np.float32))


def log_mel(samples):
    """What the recogniser is given: [80, one column a hundredth of a second]."""
    power = torch.stft(torch.as_tensor(samples, dtype=torch.float32), 400, 160, window=torch.hann_window(400), return_complex=True)[:, :-1].abs() ** 2
    bands = torch.clamp(BANDS @ power, min=1e-10).log10()
    return (torch.maximum(bands, bands.max() - 8) + 4) / 4


def noise(kind, length, dice):
    white, seconds = dice.standard_normal(length), np.arange(length) / RATE
    if kind == "water":
        low, high = dice.uniform(100, 400), dice.uniform(2500, 6500)
        swells = np.sin(2 * np.pi * dice.uniform(0.1, 1.5) * seconds + dice.uniform(0, 6)) * np.sin(2 * np.pi * dice.uniform(0.05, 4) * seconds)
        sound = lfilter(*butter(2, [2 * low / RATE, 2 * high / RATE], "band"), white) * (1 + dice.uniform(0.1, 0.5) * swells)
        return gurgle(sound, dice) if dice.random() < 0.4 else sound
    if kind == "wind":
        gusts = np.abs(lfilter([1], [1, -0.9998], dice.standard_normal(length)))
        return lfilter(*butter(2, 2 * dice.uniform(150, 600) / RATE, "low"), white) * (0.3 + gusts / gusts.max())
    if kind == "hum":
        tone = 2 * np.pi * dice.choice([50, 60, 100, 120, 180]) * seconds
        return dice.uniform(0.1, 0.5) * white + np.sin(tone) + 0.4 * np.sin(2 * tone) + 0.2 * np.sin(3 * tone)
    if kind == "pink":
        lines = np.fft.rfft(white)
        return np.fft.irfft(lines / np.sqrt(np.arange(len(lines)) + 1), length)
    return white


def gurgle(sound, dice):
    loud = sound.std()
    for _ in range(int(len(sound) / RATE * dice.uniform(2, 12))):
        length = dice.integers(400, 2400)
        at = dice.integers(0, max(1, len(sound) - length))
        seconds = np.arange(min(length, len(sound) - at)) / RATE
        bubble = np.sin(2 * np.pi * dice.uniform(200, 1500) * seconds * (1 + seconds * dice.uniform(0, 4)))
        sound[at : at + len(seconds)] += dice.uniform(0.5, 2) * loud * bubble * np.hanning(len(seconds))
    return sound


def echo(sound, dice):
    length = int(dice.uniform(0.1, 0.6) * RATE)
    room = dice.standard_normal(length) * np.exp(-6.9 * np.arange(length) / length)
    room[0] = dice.uniform(3, 10)
    return fftconvolve(sound, room)[: len(sound)]


def spoil(lines, dice):
    """One stretch of sound from lines of speech (16 bit): what is done to it is chance."""
    parts = [np.zeros(int(dice.uniform(0.05, 0.3) * RATE))]
    for line in lines:
        parts += [line * dice.uniform(0.8, 1.15), np.zeros(int(dice.uniform(0.15, 1.0) * RATE))]
    sound = np.concatenate(parts) / 32768
    if dice.random() < 0.65:
        up, down = dice.choice([(7, 8), (9, 10), (14, 15), (15, 16), (16, 15), (15, 14), (10, 9), (8, 7)])
        sound = resample_poly(sound, up, down)
    if dice.random() < 0.45:
        sound = echo(sound, dice)
    if dice.random() < 0.86:
        added = noise(dice.choice(["water", "water", "water", "wind", "hum", "pink", "white"]), len(sound), dice)
        speech = np.mean(sound[np.abs(sound) > 0.02 * np.abs(sound).max()] ** 2)
        decibels = dice.choice([dice.uniform(2, 12), dice.uniform(10, 30)])
        sound = sound + added * np.sqrt(speech / np.mean(added**2) / 10 ** (decibels / 10))
    if dice.random() < 0.12:
        sound = lfilter(*butter(4, [2 * dice.uniform(150, 300) / RATE, 2 * dice.uniform(3200, 4500) / RATE], "band"), sound)
    return (sound / np.abs(sound).max() * dice.uniform(0.2, 0.9)).astype(np.float32)
