"""The close reader's files: its network in unsigned bytes, its heads in floats, the kinds and fields by name, its tokenizer."""
import json
import os
import re
import shutil

import numpy as np
import onnx
import torch
from onnx import numpy_helper
from onnxruntime.quantization import QuantType, quantize_dynamic

from close_reader import Exported

# What the last column of the kinds stands for: not a thing in the pipe, but that a run begins.
START = "run"


def parts_of(model):
    """The heads that are worked out outside the network, as the file has them in order."""
    return {"kindEmbedding": model.kind_embedding.weight, "query": model.query.weight, "queryBias": model.query.bias,
            "choices": model.choices.weight, "choicesBias": model.choices.bias, "pointers": model.pointers.weight,
            "pointersBias": model.pointers.bias, "nothing": model.nothing.weight, "nothingBias": model.nothing.bias}


def write_close_reader(model, lessons, base, out):
    os.makedirs(out, exist_ok=True)
    wide, network = os.path.join(out, "wide.onnx"), os.path.join(out, "model.onnx")
    torch.onnx.export(Exported(model), (torch.randint(1000, 2000, (1, 50)),), wide, input_names=["ids"],
                      output_names=["states", "kinds", "keys"], opset_version=17, dynamo=False,
                      dynamic_axes={"ids": {1: "pieces"}, "states": {0: "pieces"}, "kinds": {0: "pieces"}, "keys": {0: "pieces"}})
    # What is read off the states stays in floats. It is renamed on the way.
    heads = [name for node in onnx.load(wide).graph.node if node.op_type == "Gemm" for name in (node.name, f"{node.name}_MatMul")]
    # Unsigned bytes: signed ones overflow on processors without VNNI.
    quantize_dynamic(wide, network, weight_type=QuantType.QUInt8, per_channel=True,
                     op_types_to_quantize=["MatMul", "Gather"], nodes_to_exclude=heads)
    os.remove(wide)
    index, offset, choice_offset, choices = [], 0, 0, []
    with open(os.path.join(out, "heads.bin"), "wb") as file:
        for name, weight in parts_of(model).items():
            values = weight.detach().numpy().astype("<f4")
            index.append({"name": name, "shape": list(values.shape), "offset": offset})
            offset += values.size
            file.write(values.tobytes())
    for field, values in lessons["choices"].items():
        choices.append({"field": field, "values": values, "offset": choice_offset})
        choice_offset += len(values) + 1
    with open(os.path.join(out, "heads.json"), "w") as file:
        json.dump({"kinds": [*(kind["name"] for kind in lessons["kinds"]), START], "choices": choices,
                   "numbers": lessons["numbers"], "parts": index}, file, indent=1)
    for name in ("tokenizer.json", "tokenizer_config.json"):
        shutil.copy(os.path.join(base, name), out)


def read_close_reader(model, folder):
    """Puts the weights of a written close reader into `model`, as exactly as its bytes hold them."""
    graph = onnx.load(os.path.join(folder, "model.onnx")).graph
    stored = {each.name: numpy_helper.to_array(each) for each in graph.initializer}

    def wide(name):
        scale, zero = stored[name.replace("_quantized", "_scale")], stored[name.replace("_quantized", "_zero_point")]
        return (stored[name].astype(np.float32) - zero.astype(np.float32)) * scale

    weights = {"encoder.types.weight": model.encoder.types.weight.detach().numpy().copy()}
    weights["encoder.types.weight"][0] = next(value for name, value in stored.items() if name.startswith("onnx::Add"))
    for name in stored:
        if name.startswith("model.") and not re.search("words|_(scale|zero_point)$", name):
            plain = re.sub("(_Transposed)?_quantized$", "", name).removeprefix("model.")
            weights[plain] = stored[name] if "_quantized" not in name else wide(name).T if "_Transposed" in name else wide(name)
    for node in graph.node:
        layer = re.match(r"/encoder/layers\.(\d)/(\w+)/MatMul", node.name)
        if layer and node.op_type == "MatMulInteger":
            weights[f"encoder.layers.{layer[1]}.{layer[2]}.weight"] = wide(node.input[1]).T
    with open(os.path.join(folder, "heads.json")) as file:
        parts = {part["name"]: part for part in json.load(file)["parts"]}
    heads = np.fromfile(os.path.join(folder, "heads.bin"), dtype="<f4")
    with torch.no_grad():
        for name, weight in parts_of(model).items():
            offset, shape = parts[name]["offset"], parts[name]["shape"]
            weight.copy_(torch.tensor(heads[offset : offset + int(np.prod(shape))].reshape(shape)))
    model.load_state_dict({**model.state_dict(), **{name: torch.tensor(np.ascontiguousarray(value)) for name, value in weights.items()}})
