"""Runs faster-whisper for src/bench/hearing.ts: faster-whisper.py MODEL_FOLDER greedy|batched RECORDING OUT.json"""
import json
import resource
import sys
import time

from faster_whisper import BatchedInferencePipeline, WhisperModel

HOTWORDS = (
    "wye, belly, cleanout, offset joint, cast iron, PVC, ABS, clay, Orangeburg, transite, roots, crack, fracture, collapse, "
    "city main, tee, reducer, backwater valve, scale, channeled, back pitch, liner, manhole, septic tank, no-hub band, "
    "terra cotta, lateral, hub, spigot, invert"
)
folder, way, recording, out = sys.argv[1:5]
model = WhisperModel(folder, device="cpu", compute_type="int8", cpu_threads=2)
started = time.time()
if way == "batched":
    found, _ = BatchedInferencePipeline(model=model).transcribe(
        recording, language="en", beam_size=5, batch_size=8, hotwords=HOTWORDS, word_timestamps=True
    )
else:
    found, _ = model.transcribe(recording, language="en", beam_size=1, word_timestamps=True)
words = [
    dict(text=w.word.strip(), startSeconds=float(w.start), endSeconds=float(w.end), probability=float(w.probability))
    for segment in found
    for w in segment.words
]
used = resource.getrusage(resource.RUSAGE_SELF)
json.dump(
    dict(
        wallSeconds=time.time() - started,
        cpuSeconds=used.ru_utime + used.ru_stime,
        peakMegabytes=used.ru_maxrss / 1024,
        words=words,
    ),
    open(out, "w"),
)
