"""The close reader's network: all-MiniLM-L6-v2's encoder, and what is asked of its states. Taught by teach-close-reader.py."""
import os

import torch
import torch.nn.functional as F
from safetensors.torch import load_file
from torch import nn

WIDTH, LAYERS, ATTENTIONS, INNER, VOCABULARY, DROPOUT = 384, 6, 12, 1536, 30522, 0.1
# By how many values a field that is a number finds it.
SPAN = 64


class Layer(nn.Module):
    def __init__(self):
        super().__init__()
        self.query, self.key, self.value, self.out = (nn.Linear(WIDTH, WIDTH) for _ in range(4))
        self.inner, self.outer = nn.Linear(WIDTH, INNER), nn.Linear(INNER, WIDTH)
        self.norm_attention, self.norm_out = (nn.LayerNorm(WIDTH, eps=1e-12) for _ in range(2))

    def forward(self, states, mask):
        batch, length, _ = states.shape

        def heads(x):
            return x.view(batch, length, ATTENTIONS, WIDTH // ATTENTIONS).transpose(1, 2)

        weights = heads(self.query(states)) @ heads(self.key(states)).transpose(2, 3) / (WIDTH // ATTENTIONS) ** 0.5
        if mask is not None:
            weights = weights + mask
        weights = F.dropout(torch.softmax(weights, -1), DROPOUT, self.training)
        mixed = (weights @ heads(self.value(states))).transpose(1, 2).reshape(batch, length, WIDTH)
        states = self.norm_attention(states + F.dropout(self.out(mixed), DROPOUT, self.training))
        changed = self.outer(F.gelu(self.inner(states)))
        return self.norm_out(states + F.dropout(changed, DROPOUT, self.training))


class Encoder(nn.Module):
    """BERT as all-MiniLM-L6-v2 has it. The words' own table stays as it was."""

    def __init__(self, base):
        super().__init__()
        self.words, self.places, self.types = nn.Embedding(VOCABULARY, WIDTH), nn.Embedding(512, WIDTH), nn.Embedding(2, WIDTH)
        self.norm = nn.LayerNorm(WIDTH, eps=1e-12)
        self.layers = nn.ModuleList(Layer() for _ in range(LAYERS))
        weights = load_file(os.path.join(base, "model.safetensors"))
        names = {"words": "embeddings.word_embeddings", "places": "embeddings.position_embeddings",
                 "types": "embeddings.token_type_embeddings", "norm": "embeddings.LayerNorm"}
        parts = {"query": "attention.self.query", "key": "attention.self.key", "value": "attention.self.value",
                 "out": "attention.output.dense", "norm_attention": "attention.output.LayerNorm",
                 "inner": "intermediate.dense", "outer": "output.dense", "norm_out": "output.LayerNorm"}
        for at in range(LAYERS):
            names |= {f"layers.{at}.{ours}": f"encoder.layer.{at}.{theirs}" for ours, theirs in parts.items()}
        self.load_state_dict({f"{ours}.{sort}": weights[f"{theirs}.{sort}"] for ours, theirs in names.items()
                              for sort in ("weight", "bias") if f"{theirs}.{sort}" in weights})
        self.words.weight.requires_grad = False

    def forward(self, ids, mask=None):
        states = self.norm(self.words(ids) + self.places(torch.arange(ids.shape[1]))[None] + self.types.weight[0])
        gaps = None if mask is None else torch.where(mask[:, None, None, :], 0.0, -1e4)
        for layer in self.layers:
            states = layer(states, gaps)
        return states


class CloseReader(nn.Module):
    def __init__(self, base, kinds, choices, numbers):
        super().__init__()
        self.choice_sizes = {field: len(values) + 1 for field, values in choices.items()}
        self.number_fields = numbers
        self.encoder = Encoder(base)
        self.kinds = nn.Linear(WIDTH, kinds)
        nn.init.constant_(self.kinds.bias, -4.0)
        self.kind_embedding = nn.Embedding(kinds, WIDTH)
        nn.init.normal_(self.kind_embedding.weight, std=0.02)
        self.query = nn.Linear(WIDTH, WIDTH)
        self.choices = nn.Linear(WIDTH, sum(self.choice_sizes.values()))
        self.pointers, self.keys = (nn.Linear(WIDTH, SPAN * len(numbers)) for _ in range(2))
        self.nothing = nn.Linear(WIDTH, 2 * len(numbers))

    def fields(self, states, number_rows, anchors, kinds):
        """For each anchor: logits of all choices, and of none, elsewhere and each number for each field that is a number."""
        asked = torch.tanh(self.query(anchors + self.kind_embedding(kinds)))
        fields = len(self.number_fields)
        pointing = self.pointers(asked).view(-1, fields, SPAN)
        keys = self.keys(states[number_rows]).view(-1, fields, SPAN)
        pointed = torch.einsum("mfd,nfd->mfn", pointing, keys) / SPAN**0.5
        return self.choices(asked), torch.cat([self.nothing(asked).view(-1, fields, 2), pointed], -1)


class Exported(nn.Module):
    def __init__(self, model):
        super().__init__()
        self.model = model

    def forward(self, ids):
        states = self.model.encoder(ids)[0]
        return states, self.model.kinds(states), self.model.keys(states)
