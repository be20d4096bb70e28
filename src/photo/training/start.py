"""A reader to go on from: the kept ONNX file, whose batch normalisation is folded into its convolutions, or a checkpoint."""
import numpy as np
import torch
import torch.nn as nn


def started(model, path, views):
    """
    Fills `model` with what `path` holds, answers that it lacks left as they are. From a folded file each batch
    normalisation is set, by what `views` bring to it, so that it changes nothing yet: its mean and spread are the batch's
    own, and scale and offset undo them.
    """
    if path.endswith(".pt"):
        held = torch.load(path, map_location="cpu")
        # A checkpoint of a reader, or what backbone.py wrote.
        model, held = (model, held["mean"]) if "mean" in held else (model.backbone, held)
        fill(model, {k: v.float() if v.dtype == torch.float16 else v for k, v in held.items()})
        return
    import onnx
    from onnx import numpy_helper
    weights = {i.name.removesuffix("_16"): torch.from_numpy(numpy_helper.to_array(i).astype(np.float32)) for i in onnx.load(path).graph.initializer}
    offsets = {}
    for name, child in model.named_modules():
        if isinstance(child, nn.Sequential) and len(child) == 2 and isinstance(child[1], nn.BatchNorm2d):
            weights[f"{name}.0.weight"] = weights.pop(f"{name}.weight")
            offsets[child[1]] = weights.pop(f"{name}.bias")
    fill(model, weights)

    def set_by(norm, given):
        x = given[0].float()
        mean, spread = x.mean((0, 2, 3)), x.var((0, 2, 3), unbiased=False)
        norm.running_mean.copy_(mean)
        norm.running_var.copy_(spread)
        norm.weight.copy_((spread + norm.eps).sqrt())
        norm.bias.copy_(offsets[norm].to(x.device) + mean)

    hooks = [norm.register_forward_pre_hook(set_by) for norm in offsets]
    model.eval()
    with torch.no_grad():
        model(views)
    for hook in hooks:
        hook.remove()


def fill(model, weights):
    own = model.state_dict()
    for name, value in weights.items():
        # What earlier files keep beside the rest.
        name = name if name in own else f"answers.{name}"
        if own[name].shape == value.shape:
            own[name].copy_(value)
        else:
            # One answer more than the file knows: those it knows come first.
            own[name][: len(value)].copy_(value)
            own[name][len(value) :].zero_()
