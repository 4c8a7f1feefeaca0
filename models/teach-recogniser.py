"""Teaches the recogniser further, from the published weights, on speech that speak-lessons.py made.

    python3 models/teach-recogniser.py SPOKEN PUBLISHED MINUTES OUT

PUBLISHED is the folder of the recogniser as it was before (encoder in float16, decoder in signed bytes); to the folder OUT go
the same files with other weights, and the two graphs that point into them (grouped-decoder.py, fused-encoder.py). Needs numpy,
scipy, torch 2.5, transformers 4.46, tokenizers and onnx. Encoder and decoder are taught, the token table and the first two
layers of sound are left as they are.
"""
import glob
import os
import pickle
import re
import shutil
import subprocess
import sys
import time

import numpy as np
import onnx
import torch
import torch.nn.functional as F
from onnx import numpy_helper
from tokenizers import Tokenizer
from transformers import WhisperConfig, WhisperForConditionalGeneration

from printed_form import print_as_heard
from spoil_sound import RATE, log_mel, spoil

BATCH, ENCODER_RATE, DECODER_RATE, WARM_UP = 8, 1.5e-5, 3e-5, 40
# How far the written weights lie from the published towards the taught: all the way hears real human speech worse.
SHARE = 0.7
START, END = [50258, 50259, 50359, 50363], 50257
# Sound is followed by so much silence, as it is when it is listened to.
TAIL, LONGEST = 3 * RATE, 30 * RATE
ENCODER, DECODER = "onnx/encoder_model.onnx", "onnx/decoder_model_merged_quantized.onnx"


def places_of(folder):
    """Where each weight of the network stands in the two files: its own name, the stored name, whether it is transposed."""
    encoder, decoder = onnx.load(f"{folder}/{ENCODER}"), onnx.load(f"{folder}/{DECODER}")
    stored = {i.name: i for graph in (encoder.graph, decoder.graph) for i in graph.initializer}
    places = {}
    for name in stored:
        if name.startswith("model.decoder."):
            places[name.replace("_merged_0", "")] = (name, False)
        elif name.startswith(("layers.", "layer_norm.")) or name.endswith(".bias") and name.startswith("conv"):
            places[f"model.encoder.{name}"] = (name, False)
    makers = {o: node for node in encoder.graph.node for o in node.output}
    for node in encoder.graph.node:
        conv = node.op_type == "Conv"
        found = re.search(r"(conv\d)" if conv else r"layers\.(\d)/(.*?)/MatMul", node.output[0])
        if node.op_type not in ("Conv", "MatMul") or not found or found[0].endswith("self_attn/MatMul"):
            continue
        name, turned = node.input[1], not conv
        while name not in stored:
            turned ^= makers[name].op_type == "Transpose"
            name = makers[name].input[0]
        layer = found[1] if conv else f"layers.{found[1]}.{found[2].replace('/', '.')}"
        places[f"model.encoder.{layer}.weight"] = (name, turned)
    branch = next(a.g for node in decoder.graph.node if node.op_type == "If" for a in node.attribute if a.name == "else_branch")
    for node in branch.node:
        found = re.match(r"/model/decoder/layers\.(\d)/(.*?)/MatMul", node.output[0])
        if node.op_type == "MatMulInteger":
            name = f"model.decoder.layers.{found[1]}.{found[2].replace('/', '.')}.weight" if found else "model.decoder.embed_tokens.weight"
            places[name] = (node.input[1], True)
    places["model.encoder.embed_positions.weight"] = (next(name for name, i in stored.items() if list(i.dims) == [1500, 512]), False)
    return encoder, decoder, stored, places


def read_network(folder):
    _, _, stored, places = places_of(folder)
    weights = {}
    for name, (place, turned) in places.items():
        values = numpy_helper.to_array(stored[place]).astype(np.float32)
        if place.endswith("_quantized"):
            values = values * numpy_helper.to_array(stored[place.replace("_quantized", "_scale")])
        weights[name] = torch.tensor(np.ascontiguousarray(values.T if turned else values))
    weights["proj_out.weight"] = weights["model.decoder.embed_tokens.weight"]
    # A tenth faster to teach than the attention that torch itself brings.
    network = WhisperForConditionalGeneration(WhisperConfig.from_pretrained(folder, attn_implementation="eager"))
    network.load_state_dict(weights)
    return network


def write_network(network, folder, out):
    encoder, decoder, stored, places = places_of(folder)
    weights = network.state_dict()
    for name, (place, turned) in places.items():
        if "layer" not in name:
            continue
        values = weights[name].numpy()
        values = np.ascontiguousarray(values.T if turned else values)
        if place.endswith("_quantized"):
            scale = stored[place.replace("_quantized", "_scale")]
            steps = (np.abs(values).max(0) / 127).astype(np.float32)
            scale.CopyFrom(numpy_helper.from_array(steps, scale.name))
            values = np.clip(np.round(values / steps), -127, 127)
        kept = values.astype(numpy_helper.to_array(stored[place]).dtype)
        stored[place].CopyFrom(numpy_helper.from_array(kept, place))
    shutil.copytree(folder, out, dirs_exist_ok=True)
    onnx.save(encoder, f"{out}/{ENCODER}")
    onnx.save(decoder, f"{out}/{DECODER}")
    for graph in ("grouped-decoder.py", "fused-encoder.py"):
        subprocess.run([sys.executable, os.path.join(os.path.dirname(__file__), graph), f"{out}/onnx"], check=True)


def stretches_of(path, dice):
    """Lines said one after another, mostly short: attention costs the square of the length."""
    with open(path, "rb") as file:
        _, lines = pickle.load(file)
    while lines:
        limit = RATE * (dice.uniform(4, 13) if dice.random() < 0.85 else dice.uniform(14, 25))
        length, taken = 0, []
        while lines and (not taken or length + len(lines[0][1]) + RATE // 2 < limit):
            taken.append(lines.pop(0))
            length += len(taken[-1][1]) + RATE // 2
        if length < 27 * RATE:
            yield [samples for _, samples in taken], print_as_heard(" ".join(text for text, _ in taken))


def batches_of(folder, dice):
    paths = glob.glob(f"{folder}/*.pickle")
    if not paths:
        sys.exit(f"No speech in {folder}: make some with speak-lessons.py first.")
    while True:
        dice.shuffle(paths)
        pool = []
        for path in paths:
            pool += stretches_of(path, dice)
            if len(pool) >= 24 * BATCH or path == paths[-1]:
                pool.sort(key=lambda stretch: sum(map(len, stretch[0])))
                batches = [pool[at : at + BATCH] for at in range(0, len(pool), BATCH)]
                dice.shuffle(batches)
                yield from batches
                pool = []


def encode(encoder, sound):
    states = F.gelu(encoder.conv2(F.gelu(encoder.conv1(sound)))).permute(0, 2, 1)
    states = states + encoder.embed_positions.weight[: states.shape[1]]
    for layer in encoder.layers:
        states = layer(states, None, None)[0]
    return encoder.layer_norm(states)


def loss_of(network, tokenizer, batch, dice):
    sounds = [spoil(parts, dice) for parts, _ in batch]
    length = min(max(map(len, sounds)) + TAIL, LONGEST) // 320 * 320
    sound = torch.stack([log_mel(np.pad(each[:length], (0, max(0, length - len(each))))) for each in sounds])
    texts = [START + tokenizer.encode(f" {text}", add_special_tokens=False).ids[:220] + [END] for _, text in batch]
    longest = max(map(len, texts)) - 1
    given, wanted = torch.full((len(texts), longest), END), torch.full((len(texts), longest), -100)
    for row, text in enumerate(texts):
        given[row, : len(text) - 1] = torch.tensor(text[:-1])
        wanted[row, len(START) - 1 : len(text) - 1] = torch.tensor(text[len(START) :])
    with torch.autocast("cpu", dtype=torch.bfloat16):
        states = network.model.decoder(given, encoder_hidden_states=encode(network.model.encoder, sound), use_cache=False)[0]
        logits = states[wanted >= 0] @ network.proj_out.weight.T
    return F.cross_entropy(logits.float(), wanted[wanted >= 0])


def main(spoken, published, minutes, out):
    torch.manual_seed(0)
    dice = np.random.default_rng(1)
    tokenizer = Tokenizer.from_file(f"{published}/tokenizer.json")
    network = read_network(published)
    before = {name: weight.clone() for name, weight in network.state_dict().items()}
    for name, weight in network.named_parameters():
        weight.requires_grad = "layer" in name
    parts = [(network.model.encoder, ENCODER_RATE), (network.model.decoder, DECODER_RATE)]
    groups = [{"params": [p for p in part.parameters() if p.requires_grad], "lr": rate} for part, rate in parts]
    optimizer = torch.optim.AdamW(groups, weight_decay=0, betas=(0.9, 0.98))
    began, losses = time.time(), []
    for step, batch in enumerate(batches_of(spoken, dice), 1):
        done = (time.time() - began) / 60 / float(minutes)
        if done >= 1:
            break
        for group, (_, rate) in zip(groups, parts):
            group["lr"] = rate * min(1, step / WARM_UP) * max(0.03, 1 - done)
        loss = loss_of(network, tokenizer, batch, dice)
        optimizer.zero_grad()
        loss.backward()
        torch.nn.utils.clip_grad_norm_(network.parameters(), 1.0)
        optimizer.step()
        losses.append(float(loss))
        if step % 20 == 0:
            print(f"step {step}: loss {np.mean(losses[-40:]):.3f}", flush=True)
    network.load_state_dict({name: torch.lerp(before[name], weight, SHARE) for name, weight in network.state_dict().items()})
    write_network(network, published, out)


if __name__ == "__main__":
    main(*sys.argv[1:5])
