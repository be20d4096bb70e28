"""
The layers of a network that has learned from photographs, MobileNetV2 (Sandler et al., CVPR 2018), to begin from:
    python3 backbone.py object_detection_ssd_mobilenetv2_oidv4_fp16.tflite backbone.pt
The file lies in `objectron_solution_packed_assets.data` of the npm package @mediapipe/objectron 0.4.1675468480
(Apache-2.0), from byte 184 on. Batch normalisation is folded into its convolutions already.
"""
import struct
import sys

import numpy as np
import torch
import torch.nn as nn
import torch.nn.functional as F

# How many times wider inside, channels, repeats, stride: table 2 of the paper, without its last layer.
STAGES = ((1, 16, 1, 1), (6, 24, 2, 2), (6, 32, 3, 2), (6, 64, 4, 2), (6, 96, 3, 1), (6, 160, 3, 2), (6, 320, 1, 1))
# The blocks whose output is handed on: the last at each size, from half the side to a thirty-second.
HANDED = (0, 2, 5, 12, 16)
HANDED_WIDTHS = (16, 24, 32, 96, 320)


class Shifted(nn.Conv2d):
    """A convolution that, when it halves the side, adds its border on the right and below, as the file's does."""

    def forward(self, x):
        if self.stride[0] == 1:
            return super().forward(x)
        return F.conv2d(F.pad(x, (0, 1, 0, 1)), self.weight, self.bias, self.stride, 0, 1, self.groups)


def conv(i, o, size=3, stride=1, groups=1):
    return Shifted(i, o, size, stride, size // 2, groups=groups)


class Block(nn.Module):
    def __init__(self, i, o, wider, stride):
        super().__init__()
        inside = i * wider
        self.expand = conv(i, inside, 1) if wider > 1 else None
        self.depth = conv(inside, inside, 3, stride, inside)
        self.project = conv(inside, o, 1)
        self.adds = stride == 1 and i == o

    def forward(self, x):
        y = F.relu6(self.expand(x)) if self.expand else x
        y = self.project(F.relu6(self.depth(y)))
        return x + y if self.adds else y


class Backbone(nn.Module):
    """image [n,3,H,W] 0..1, sides multiples of 32: a list of features at a half, a quarter, ... a thirty-second of
    the side. `changed`: what the two finest are put through first."""

    def __init__(self):
        super().__init__()
        self.stem = conv(3, 32, 3, 2)
        self.blocks = nn.ModuleList()
        width = 32
        for wider, out, repeats, stride in STAGES:
            for i in range(repeats):
                self.blocks.append(Block(width, out, wider, stride if i == 0 else 1))
                width = out

    def forward(self, image, changed=None):
        x, handed = F.relu6(self.stem(image * 2 - 1)), []
        for i, block in enumerate(self.blocks):
            x = block(x)
            if changed and i in HANDED[:2]:
                x = changed(x)
            if i in HANDED:
                handed.append(x)
        return handed


class Table:
    """A table of a flatbuffer: a position, and offsets of its fields."""

    def __init__(self, data, at):
        self.data, self.at = data, at
        self.fields = at - struct.unpack_from("<i", data, at)[0]
        self.size = struct.unpack_from("<H", data, self.fields)[0]

    def where(self, field):
        at = 4 + 2 * field
        offset = struct.unpack_from("<H", self.data, self.fields + at)[0] if at < self.size else 0
        return self.at + offset if offset else None

    def number(self, field, kind, otherwise=0):
        at = self.where(field)
        return otherwise if at is None else struct.unpack_from("<" + kind, self.data, at)[0]

    def items(self, field):
        """How many items a vector has, and where they begin."""
        at = self.where(field)
        if at is None:
            return 0, 0
        at += struct.unpack_from("<I", self.data, at)[0]
        return struct.unpack_from("<I", self.data, at)[0], at + 4

    def integers(self, field):
        count, at = self.items(field)
        return struct.unpack_from(f"<{count}i", self.data, at)

    def raw(self, field):
        count, at = self.items(field)
        return self.data[at : at + count]

    def tables(self, field):
        count, at = self.items(field)
        return [Table(self.data, at + 4 * i + struct.unpack_from("<I", self.data, at + 4 * i)[0]) for i in range(count)]


# Of TensorFlow Lite's schema, version 3: operators, and how tensors are stored.
CONV, DEPTHWISE, WIDENED = 3, 4, 6
STORED = {0: np.float32, 1: np.float16, 2: np.int32}


def convolutions(path):
    """Weight and bias of each convolution of the file, in its order, as torch lays them out."""
    data = open(path, "rb").read()
    model = Table(data, struct.unpack_from("<I", data, 0)[0])
    codes = [max(one.number(0, "b"), one.number(3, "i")) for one in model.tables(1)]
    graph, buffers = model.tables(2)[0], model.tables(4)
    tensors, operators = graph.tables(0), [(codes[one.number(0, "I")], one) for one in graph.tables(3)]
    narrow = {one.integers(2)[0]: one.integers(1)[0] for code, one in operators if code == WIDENED}

    def held(index):
        tensor = tensors[narrow.get(index, index)]
        flat = np.frombuffer(buffers[tensor.number(2, "I")].raw(0), STORED[tensor.number(1, "b")])
        return flat.reshape(tensor.integers(0)).astype(np.float32)

    for code, one in operators:
        if code in (CONV, DEPTHWISE):
            _, weight, bias = one.integers(1)
            # Stored as out, rows, columns, in; by depth as 1, rows, columns, out.
            order = (0, 3, 1, 2) if code == CONV else (3, 0, 1, 2)
            yield torch.from_numpy(held(weight).transpose(order).copy()), torch.from_numpy(held(bias).copy())


def opened(path):
    """The backbone with the file's weights."""
    backbone, given = Backbone(), convolutions(path)
    own = [one for one in backbone.modules() if isinstance(one, nn.Conv2d)]
    done = 0
    with torch.no_grad():
        for weight, bias in given:
            # Between them come the detector's own heads, which are left out.
            if done < len(own) and own[done].weight.shape == weight.shape:
                own[done].weight.copy_(weight)
                own[done].bias.copy_(bias)
                done += 1
    if done < len(own):
        raise ValueError(f"only {done} of {len(own)} convolutions found in {path}")
    return backbone


if __name__ == "__main__":
    torch.save({name: value.half() for name, value in opened(sys.argv[1]).state_dict().items()}, sys.argv[2])
