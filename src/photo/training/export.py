"""
Writes a trained reader as ONNX:  python3 export.py CHECKPOINT.pt ../model/reader.onnx
Weights are kept as 16-bit floats and widened when the model is opened; sums are done in 32 bits.
"""
import sys
import warnings

import numpy as np
import onnx
import torch
import torch.nn as nn
from onnx import TensorProto, helper, numpy_helper

from network import Reader
from pretrained import PretrainedReader

OPSET = 16


def folded(model):
    """Batch normalisation worked into the convolution before it."""
    for name, child in model.named_children():
        if isinstance(child, nn.Sequential) and len(child) == 2 and isinstance(child[0], nn.Conv2d) and isinstance(child[1], nn.BatchNorm2d):
            setattr(model, name, torch.nn.utils.fusion.fuse_conv_bn_eval(child[0], child[1]))
        elif isinstance(child, nn.ModuleList):
            for i, one in enumerate(child):
                if isinstance(one, nn.Sequential) and len(one) == 2 and isinstance(one[1], nn.BatchNorm2d):
                    child[i] = torch.nn.utils.fusion.fuse_conv_bn_eval(one[0], one[1])
                else:
                    folded(one)
        else:
            folded(child)
    return model


def halved(model):
    """Each large weight as 16-bit floats and a widening node in front of whatever reads it."""
    graph = model.graph
    kept, casts = [], []
    for weight in graph.initializer:
        if weight.data_type != TensorProto.FLOAT or np.prod(weight.dims) < 64:
            kept.append(weight)
            continue
        small = numpy_helper.from_array(numpy_helper.to_array(weight).astype(np.float16), weight.name + "_16")
        kept.append(small)
        casts.append(helper.make_node("Cast", [small.name], [weight.name], to=TensorProto.FLOAT))
    del graph.initializer[:]
    graph.initializer.extend(kept)
    nodes = list(graph.node)
    del graph.node[:]
    graph.node.extend(casts + nodes)
    return model


def main(checkpoint, target):
    warnings.filterwarnings("ignore")
    state = torch.load(checkpoint, map_location="cpu")["mean"]
    reader = PretrainedReader() if "deepest.0.weight" in state else Reader()
    reader.load_state_dict({k: v.float() if v.dtype == torch.float16 else v for k, v in state.items()})
    reader = folded(reader.eval())
    axes = {"image": {2: "height", 3: "width"}, "maps": {2: "rows", 3: "columns"}}
    torch.onnx.export(reader, torch.rand(1, 3, 448, 448), "/tmp/reader-32.onnx", opset_version=OPSET,
                      input_names=["image"], output_names=["maps", "answers"], dynamic_axes=axes)
    model = halved(onnx.load("/tmp/reader-32.onnx"))
    onnx.checker.check_model(model)
    onnx.save(model, target)


if __name__ == "__main__":
    main(*sys.argv[1:3])
