"""Writes decoder_grouped.onnx beside the int8 decoder: the same network, the same weights (it points into the decoder's
file instead of holding them again), with two changes in the branch that
runs one step, two in the other, and two in both:

- Rows that listen to the same window share its encoder keys and values: `past_key_values.N.encoder.*` has one entry a
  window, and input row i belongs to window i // (rows / windows). The published graph wants a copy for every row.
- `source_rows` names for each row the row of the step before it goes on from, so that a beam search need not copy
  keys and values about.

In the branch that reads the whole prompt, logits are made from `first_position` on only: those of the prompt's own tokens
are of no use and make up most of its work. Keys and values of the sound that are given as `past_key_values.N.encoder.*` stand
before those computed here, of which only the positions from `first_state` on count: who has them already gives one state of
no matter and passes it over, instead of having all computed again for each reading of a text.

In both branches the weights are shifted from signed to unsigned bytes when the session is made. Processors without VNNI
add products of unsigned and signed bytes in 16 bits, which overflow: the published graph computes something else there,
and hears twice as many words wrong. Unsigned by unsigned is summed in 32 bits everywhere, so all processors agree.

In both branches the second matrix of each feed-forward part is multiplied in floats. Its input is rounded to 256 steps for
all rows together, and the first token's is so large that little of the others' is left: this one rounding makes nine
tenths of what the rounded decoder is off (mean divergence from unrounded input 0.034 and 0.079 nats on two windows,
0.004 and 0.006 without it).

python3 grouped-decoder.py whisper-base-trade/onnx     (needs the package onnx)
"""
import sys, os
import onnx
from onnx import helper, numpy_helper, TensorProto
import numpy as np

LAYERS, HEADS, WIDTH = 6, 8, 64
folder = sys.argv[1]
out_folder = sys.argv[2] if len(sys.argv) > 2 else folder
weights_name = 'decoder_model_merged_quantized.onnx'
model = onnx.load(os.path.join(folder, weights_name))
graph = model.graph
branch = next(a.g for n in graph.node if n.op_type == 'If' for a in n.attribute if a.name == 'then_branch')
producers = {o: n for n in branch.node for o in n.output}
consumers = {}
for n in branch.node:
    for i in n.input: consumers.setdefault(i, []).append(n)

def const(name, values):
    return numpy_helper.from_array(np.array(values, dtype=np.int64), name)
graph.initializer.extend([
    const('grouped/first', [0]), const('grouped/tail', [-1, HEADS, WIDTH]), const('grouped/merged', [-1, 1, HEADS * WIDTH]),
])
gone, added_before = set(), {}
for layer in range(LAYERS):
    at = f'/model/decoder/layers.{layer}/encoder_attn'
    q = f'{at}/Mul_output_0'                       # scaled queries [rows, 1, 512]
    key, value = f'past_key_values.{layer}.encoder.key', f'past_key_values.{layer}.encoder.value'
    out_q = next(n for n in branch.node if n.op_type == 'DynamicQuantizeLinear' and n.name.startswith(at) and 'out_proj' not in n.name and any('Reshape_7_output_0' in i for i in n.input))
    merged = out_q.input[0]
    first = next(i for i, n in enumerate(branch.node) if q in n.output)
    new = [
        helper.make_node('Shape', [key], [f'{at}/g_shape'], name=f'{at}/g_shape'),
        helper.make_node('Gather', [f'{at}/g_shape', 'grouped/first'], [f'{at}/g_windows'], name=f'{at}/g_windows', axis=0),
        helper.make_node('Concat', [f'{at}/g_windows', 'grouped/tail'], [f'{at}/g_split'], name=f'{at}/g_split', axis=0),
        helper.make_node('Reshape', [q, f'{at}/g_split'], [f'{at}/g_q0'], name=f'{at}/g_q0'),
        helper.make_node('Transpose', [f'{at}/g_q0'], [f'{at}/g_q'], name=f'{at}/g_q', perm=[0, 2, 1, 3]),
        helper.make_node('Transpose', [key], [f'{at}/g_k'], name=f'{at}/g_k', perm=[0, 1, 3, 2]),
        helper.make_node('MatMul', [f'{at}/g_q', f'{at}/g_k'], [f'{at}/g_scores'], name=f'{at}/g_scores'),
        helper.make_node('Softmax', [f'{at}/g_scores'], [f'cross_attentions.{layer}'], name=f'{at}/g_softmax', axis=-1),
        helper.make_node('MatMul', [f'cross_attentions.{layer}', value], [f'{at}/g_mix'], name=f'{at}/g_mix'),
        helper.make_node('Transpose', [f'{at}/g_mix'], [f'{at}/g_mix_t'], name=f'{at}/g_mix_t', perm=[0, 2, 1, 3]),
        helper.make_node('Reshape', [f'{at}/g_mix_t', 'grouped/merged'], [merged], name=f'{at}/g_merged'),
    ]
    for n in branch.node:
        if merged in n.output or f'cross_attentions.{layer}' in n.output: gone.add(n.name)
    added_before[first] = new
    for part in ('key', 'value'):
        past = f'past_key_values.{layer}.decoder.{part}'
        use = [n for n in branch.node if past in n.input]
        gathered = f'{past}/from_rows'
        node = helper.make_node('Gather', [past, 'source_rows'], [gathered], name=gathered, axis=0)
        for n in use:
            if n.op_type == 'Shape': continue
            for i, name in enumerate(n.input):
                if name == past: n.input[i] = gathered
        added_before.setdefault(-1, []).append(node)
nodes = list(added_before.get(-1, []))
for i, n in enumerate(branch.node):
    if n.name not in gone: nodes.append(n)
    nodes += added_before.get(i, [])
# What only fed the removed nodes goes too.
outputs = {o.name for o in branch.output}
while True:
    used = outputs | {i for n in nodes for i in n.input}
    kept = [n for n in nodes if any(o in used for o in n.output)]
    if len(kept) == len(nodes): break
    nodes = kept
del branch.node[:]
branch.node.extend(nodes)
graph.input.append(helper.make_tensor_value_info('source_rows', TensorProto.INT64, ['batch_size']))
whole = next(a.g for n in graph.node if n.op_type == 'If' for a in n.attribute if a.name == 'else_branch')
last = next(i for i, n in enumerate(whole.node) if n.name == '/model/decoder/layer_norm/LayerNormalization_output_0_QuantizeLinear')
hidden = whole.node[last].input[0]
whole.node[last].input[0] = 'grouped/from_first_position'
whole.node.insert(last, helper.make_node('Slice', [hidden, 'first_position', 'grouped/far', 'grouped/position_axis'],
                                         ['grouped/from_first_position'], name='grouped/from_first_position'))
graph.initializer.extend([const('grouped/far', [2**31 - 1]), const('grouped/position_axis', [1])])
graph.input.append(helper.make_tensor_value_info('first_position', TensorProto.INT64, [1]))
stated = [f'past_key_values.{layer}.encoder.{part}' for layer in range(LAYERS) for part in ('key', 'value')]
for past in stated:
    present = past.replace('past_key_values', 'present')
    at, node = next((i, n) for i, n in enumerate(whole.node) if present in n.output)
    node.output[0] = f'{present}/computed'
    whole.node.insert(at + 1, helper.make_node('Slice', [f'{present}/computed', 'first_state', 'grouped/far', 'grouped/state_axis'],
                                               [f'{present}/new'], name=f'{present}/new'))
    whole.node.insert(at + 2, helper.make_node('Concat', [past, f'{present}/new'], [present], name=f'{present}/joined', axis=2))
graph.initializer.append(const('grouped/state_axis', [2]))
graph.input.append(helper.make_tensor_value_info('first_state', TensorProto.INT64, [1]))
# Feed-forward outputs in floats.
branches = [a.g for n in graph.node if n.op_type == 'If' for a in n.attribute]
widened = []
for g in branches:
    for n in [n for n in g.node if n.op_type == 'MatMulInteger' and '/fc2/' in n.output[0]]:
        cast = next(m for m in g.node if n.output[0] in m.input)
        scaled = next(m for m in g.node if cast.output[0] in m.input)
        rounded = next(m for m in g.node if n.input[0] in m.output)
        weight = n.input[1]
        if weight not in widened: widened.append(weight)
        at = list(g.node).index(scaled)
        for old in (scaled, cast, n): g.node.remove(old)
        g.node.insert(at - 2, helper.make_node('MatMul', [rounded.input[0], f'{weight}/wide'], list(scaled.output), name=n.name))
    # The rounding and the scales that only fed these go too.
    outputs = {o.name for o in g.output}
    while True:
        used = outputs | {i for n in g.node for i in n.input}
        kept = [n for n in g.node if any(o in used for o in n.output)]
        if len(kept) == len(g.node): break
        del g.node[:]
        g.node.extend(kept)
for weight in widened:
    scale = weight.replace('_quantized', '_scale')
    graph.node.insert(0, helper.make_node('Mul', [f'{weight}/float', scale], [f'{weight}/wide'], name=f'{weight}/wide'))
    graph.node.insert(0, helper.make_node('Cast', [weight], [f'{weight}/float'], name=f'{weight}/float', to=TensorProto.FLOAT))
# Weights to unsigned bytes: -128..127 become 0..255, and zero becomes 128.
stored = {t.name: t for t in graph.initializer}
graph.initializer.extend([numpy_helper.from_array(np.array(128, np.uint8), 'unsigned/zero'),
                          numpy_helper.from_array(np.array(128, np.float32), 'unsigned/offset')])
shifted, zeros = [], set()
for g in branches:
    for n in g.node:
        if n.op_type != 'MatMulInteger': continue
        weight, zero = n.input[1], n.input[3]
        assert not numpy_helper.to_array(stored[zero]).any()
        if weight not in shifted: shifted.append(weight)
        zeros.add(zero)
        n.input[1], n.input[3] = f'{weight}/unsigned', 'unsigned/zero'
    # The table of tokens is shared between input and output.
    for n in g.node:
        if n.op_type == 'Gather' and n.input[0] in shifted: n.input[0] += '/unsigned'
    at, scaled = next((i, n) for i, n in enumerate(g.node) if n.op_type == 'Mul' and 'tied_embed_t' in n.input)
    scaled.input[list(scaled.input).index('tied_embed_t')] = 'tied_embed_centred'
    g.node.insert(at, helper.make_node('Sub', ['tied_embed_t', 'unsigned/offset'], ['tied_embed_centred'], name='tied_embed_centred'))
for i, weight in enumerate(shifted):
    graph.node.insert(2 * i, helper.make_node('Cast', [weight], [f'{weight}/wrapped'], name=f'{weight}/wrapped', to=TensorProto.UINT8))
    graph.node.insert(2 * i + 1, helper.make_node('BitwiseXor', [f'{weight}/wrapped', 'unsigned/zero'], [f'{weight}/unsigned'], name=f'{weight}/unsigned'))
zeros |= {weight.replace('_quantized', '_zero_point') for weight in widened}
needed = [t for t in graph.initializer if t.name not in zeros]
del graph.initializer[:]
graph.initializer.extend(needed)
next(o for o in model.opset_import if o.domain == '').version = 18   # BitwiseXor
for n in graph.node:
    for a in n.attribute:
        for g in ([a.g] if a.g.node else []):
            for i, n2 in enumerate(g.node): n2.doc_string = ''
for g in [graph, *(a.g for n in graph.node if n.op_type == 'If' for a in n.attribute)]:
    for o in g.output:
        if o.name.startswith('cross_attentions'):
            for d in o.type.tensor_type.shape.dim: d.Clear()
    del g.value_info[:]
# Weights stay where they are.
blob = open(os.path.join(folder, weights_name), 'rb').read()
total = 0
for t in graph.initializer:
    if len(t.raw_data) < 4096: continue
    offset = blob.find(t.raw_data); assert offset >= 0
    length = len(t.raw_data); total += length
    t.ClearField('raw_data'); t.data_location = TensorProto.EXTERNAL
    del t.external_data[:]
    for k, v in (('location', weights_name), ('offset', offset), ('length', length)):
        e = t.external_data.add(); e.key, e.value = k, str(v)
onnx.save(model, os.path.join(out_folder, 'decoder_grouped.onnx'))
print(os.path.getsize(os.path.join(out_folder, 'decoder_grouped.onnx')) / 1e3, 'kB, pointing at', total / 1e6, 'MB')
