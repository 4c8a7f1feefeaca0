"""Writes our own tuned model in CTranslate2's form, so that faster-whisper can hear with the very same weights beside us in
`npm run bench -- hearing`: what differs then is the way of hearing alone. The decoder's int8 weights are widened by their scales,
the encoder's are floats already; CTranslate2 rounds both to int8 its own way when faster-whisper loads them.

make-peer.py models/whisper-base-trade OUT_FOLDER     (needs the packages onnx, ctranslate2 and tokenizers)
"""
import json
import os
import shutil
import sys

import numpy as np
import onnx
from ctranslate2.specs import WhisperSpec
from onnx import numpy_helper
from tokenizers import Tokenizer

LAYERS, HEADS = 6, 8
MERGED = "_merged_0"
source, out = sys.argv[1:3]


def load(name):
    """Gives by their own name the initializers of a graph, and by the module's name the matrices that nodes multiply with."""
    graph = onnx.load(os.path.join(source, "onnx", name)).graph
    held = {t.name: numpy_helper.to_array(t) for t in graph.initializer}
    nodes = list(graph.node)
    for node in graph.node:
        for attribute in node.attribute:
            # The branch for the first step has every matrix, the one for later steps lacks those of the sound.
            if attribute.name == "else_branch":
                nodes = list(attribute.g.node)
    widened = {n.output[0]: held[n.input[0]] for n in nodes if n.op_type == "Cast" and n.input[0] in held}
    weights = {key.removesuffix(MERGED): value for key, value in {**held, **widened}.items()}
    for node in nodes:
        module = node.name.split("/MatMul")[0].lstrip("/").replace("/", ".")
        if node.op_type == "MatMul" and node.input[1] in widened:
            weights[f"{module}.weight"] = widened[node.input[1]].T
        if node.op_type == "MatMulInteger":
            weights[f"{module}.weight"] = widen(held, node.input[1].removesuffix("_quantized")).T
    return {key: np.ascontiguousarray(value, dtype=np.float32) for key, value in weights.items() if value.dtype.kind in "fi"}


def widen(held, name):
    return (held[f"{name}_quantized"].astype(np.float32) - held[f"{name}_zero_point"]) * held[f"{name}_scale"]


def set_norm(spec, weights, name):
    spec.gamma, spec.beta = weights[f"{name}.weight"], weights[f"{name}.bias"]


def set_linear(spec, weights, *names):
    """Several matrices become one; the keys have no bias."""
    spec.weight = np.concatenate([weights[f"{name}.weight"] for name in names])
    width = weights[f"{names[0]}.weight"].shape[0]
    spec.bias = np.concatenate([weights.get(f"{name}.bias", np.zeros(width, np.float32)) for name in names])


def set_layer(spec, weights, at, is_decoder):
    own = f"{at}.self_attn"
    set_norm(spec.self_attention.layer_norm, weights, f"{own}_layer_norm")
    set_linear(spec.self_attention.linear[0], weights, f"{own}.q_proj", f"{own}.k_proj", f"{own}.v_proj")
    set_linear(spec.self_attention.linear[1], weights, f"{own}.out_proj")
    if is_decoder:
        sound = f"{at}.encoder_attn"
        set_norm(spec.attention.layer_norm, weights, f"{sound}_layer_norm")
        set_linear(spec.attention.linear[0], weights, f"{sound}.q_proj")
        set_linear(spec.attention.linear[1], weights, f"{sound}.k_proj", f"{sound}.v_proj")
        set_linear(spec.attention.linear[2], weights, f"{sound}.out_proj")
    set_norm(spec.ffn.layer_norm, weights, f"{at}.final_layer_norm")
    set_linear(spec.ffn.linear_0, weights, f"{at}.fc1")
    set_linear(spec.ffn.linear_1, weights, f"{at}.fc2")


encoder = load("encoder_model.onnx")
decoder = load("decoder_model_merged_quantized.onnx")
decoder = {key.removeprefix("model.decoder."): value for key, value in decoder.items()}
spec = WhisperSpec(LAYERS, HEADS, LAYERS, HEADS)
for number, conv in ((1, spec.encoder.conv1), (2, spec.encoder.conv2)):
    conv.weight, conv.bias = encoder[f"conv{number}.weight"], encoder[f"conv{number}.bias"]
spec.encoder.position_encodings.encodings = encoder["embed_positions.weight"]
spec.decoder.position_encodings.encodings = decoder["embed_positions.weight"]
# One table serves for reading a token and for choosing the next.
table = decoder["proj_out.weight"]
spec.decoder.embeddings.weight = table
spec.decoder.projection.weight = table
for part, weights, is_decoder in ((spec.encoder, encoder, False), (spec.decoder, decoder, True)):
    set_norm(part.layer_norm, weights, "layer_norm")
    for index, layer in enumerate(part.layer):
        set_layer(layer, weights, f"layers.{index}", is_decoder)

with open(os.path.join(source, "generation_config.json")) as file:
    generation = json.load(file)
tokenizer = Tokenizer.from_file(os.path.join(source, "tokenizer.json"))
tokens = [tokenizer.id_to_token(index) for index in range(tokenizer.get_vocab_size())]
tokens += [f"<|{index * 0.02:.2f}|>" for index in range(table.shape[0] - len(tokens))]
spec.register_vocabulary(tokens)
spec.config.suppress_ids = generation["suppress_tokens"]
spec.config.suppress_ids_begin = generation["begin_suppress_tokens"]
spec.config.alignment_heads = generation["alignment_heads"]
spec.config.lang_ids = sorted(generation["lang_to_id"].values())
spec.validate()
spec.optimize()
os.makedirs(out, exist_ok=True)
spec.save(out)
for name in ("tokenizer.json", "preprocessor_config.json"):
    shutil.copy(os.path.join(source, name), out)
