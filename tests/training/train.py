"""
Trains the nets and writes them as ONNX.

    python train.py sheet OUT.onnx --near --weights sheet.pt --minutes 22.7 --seed 91 --size 640 --batch 16 --shots 4 --again 2 \
        --pool 6000 --rate 1.5e-3 --rooms rooms.npy --traced TRACED --share 0.6 --compile
    torchrun --nproc_per_node=2 train.py base OUT.onnx --weights base.onnx --minutes 4.5 --seed 62 --size 512 --batch 32 --shots 2 \
        --again 3 --pool 8000 --rate 2e-3 --rooms rooms.npy --compile

public/models/sheet.onnx is what the first of these had learned after its 22.7 minutes, about 24,700 steps on one H200, going on from
the sheet.onnx of commit da1d4bb (drawn scenes alone; its train.py says how). TRACED filled while it learned, from 44 photographs at
first to 345: tests/generate/thirdLook from numbers 1000, 1060, ... 1840 on, as far as each of fifteen runs had got. Its normalisations
are the mean of those over drawn scenes alone and of those over 40 batches, two fifths of them path-traced: with the first, sheets of
another renderer are read best, with the second those of this one. base.onnx is what the second had learned in its 4.5 minutes on two
H200s, going on from the base.onnx of commit 0511b7d (2600 steps on one H100, --minutes 4.3 --seed 2); its normalisations were then
taken anew over unseen pictures, the weights at rest. Learning stops by the clock, so another machine gives other weights of the same
kind.

Needs PyTorch 2 and onnx with a CUDA device (a CPU works for a smoke run: --size 128 --batch 2 --steps 3), and Pillow for
--traced. Drawn pictures are made on the fly by scene.py and camera.py from the seed; the only photographs that enter are the
panoramas that foil mirrors (rooms.py, and the rooms of thirdLook). Weights are stored as 8-bit integers, each output map with
its own unit, and made 32-bit floats as the file is loaded. `--weights` goes on from a .pt or an .onnx that this script wrote. `--look FOLDER` writes a contact sheet of what the
net is trained on.
"""

import argparse
import inspect
import math
import os
import time

import torch
import torch.nn as nn
import torch.nn.functional as F

from camera import shoot
from nets import BaseNet, Block, SheetNet
from pool import Pool
from render import photographs, sheets
from traced import Traced
import rooms


def arguments():
    p = argparse.ArgumentParser()
    p.add_argument("what", choices=["sheet", "base"])
    p.add_argument("out")
    p.add_argument("--minutes", type=float, default=8)
    p.add_argument("--steps", type=int, default=10**9)
    p.add_argument("--seed", type=int, default=1)
    p.add_argument("--batch", type=int, default=24, help="scenes drawn at once")
    p.add_argument("--shots", type=int, default=2, help="photographs taken of each scene")
    p.add_argument("--size", type=int, default=512)
    p.add_argument("--rate", type=float, default=2e-3)
    p.add_argument("--weights", help="begin from these: a .pt, or an .onnx that this script wrote")
    p.add_argument("--again", type=int, default=0, help="times that each picture is learned from once more, later")
    p.add_argument("--pool", type=int, default=4000, help="pictures kept for that")
    p.add_argument("--near", action="store_true", help="only sheets near 10 px/mm, mostly in focus: slits weigh more")
    p.add_argument("--rooms", help="panoramas for the foil to mirror, made by rooms.py")
    p.add_argument("--traced", help="a folder of path-traced photographs (tests/generate/thirdLook) to learn from as well")
    p.add_argument("--share", type=float, default=0.6, help="of the pictures learned from again, those that are path-traced")
    p.add_argument("--compile", action="store_true", help="fuse the net's kernels")
    p.add_argument("--look")
    return p.parse_args()


def sheet_loss(logits, truth, weight):
    scale = torch.tensor([1.0, 0.8, 0.5], device=logits.device)[None, :, None, None]
    entropy = (F.binary_cross_entropy_with_logits(logits, truth, reduction="none") * weight * scale).mean()
    p = torch.sigmoid(logits)
    both = (p * truth * weight.clamp(max=1)).sum((2, 3))
    either = ((p + truth - p * truth) * weight.clamp(max=1)).sum((2, 3))
    overlap = 1 - ((both + 20) / (either + 20)).mean()
    return entropy + 0.3 * overlap


def base_loss(logits, truth):
    p = torch.sigmoid(logits)
    both, either = (p * truth).sum((1, 2, 3)), (p + truth - p * truth).sum((1, 2, 3))
    return F.binary_cross_entropy_with_logits(logits, truth) + 0.5 * (1 - (both / either.clamp(min=1)).mean())


def main():
    a = arguments()
    rank, ranks = join_others()
    device = "cuda" if torch.cuda.is_available() else "cpu"
    torch.manual_seed(a.seed)
    if a.rooms:
        rooms.read(a.rooms, device)
    net = (BaseNet() if a.what == "base" else SheetNet()).to(device, memory_format=torch.channels_last)
    torch.backends.cudnn.benchmark = True
    if a.weights and a.weights.endswith(".onnx"):
        resume(net, a.weights, [make(a, device)[0] for _ in range(4)])
    elif a.weights:
        net.load_state_dict(torch.load(a.weights, map_location=device))
    torch.manual_seed(a.seed + 1000 * rank)
    print("parameters", sum(p.numel() for p in net.parameters()), flush=True)
    best = torch.optim.swa_utils.AveragedModel(net, avg_fn=lambda avg, now, n: avg * 0.995 + now * 0.005)
    fused = {"fused": True} if device == "cuda" else {}
    optimiser = torch.optim.AdamW(net.parameters(), lr=a.rate, weight_decay=1e-4, **fused)
    learner = torch.compile(net) if a.compile else net
    pool = Pool(a.pool) if a.again else None
    traced = Traced(a.traced, device) if a.traced else None
    start, step, mean = time.time(), 0, None

    def learn(batch):
        nonlocal step, mean
        with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
            logits = learner(batch[0].contiguous(memory_format=torch.channels_last))
        loss = base_loss(logits.float(), batch[1]) if a.what == "base" else sheet_loss(logits.float(), *batch[1:])
        optimiser.zero_grad(set_to_none=True)
        loss.backward()
        share(net, ranks)
        for p in net.parameters():
            torch.nan_to_num_(p.grad, 0, 0, 0)
        torch.nn.utils.clip_grad_norm_(net.parameters(), 1.0)
        optimiser.step()
        step += 1
        if step % 5 == 0:
            best.update_parameters(net)
        if step % 20 == 0:
            mean = loss.item() if mean is None else 0.9 * mean + 0.1 * loss.item()
        if step % 500 == 0 and not rank:
            torch.save(best.module.state_dict(), a.out.replace(".onnx", ".pt"))
        if (step % 400 == 0 or step == 20) and not rank:
            seen = f"  traced {len(traced.sheets)}" if traced else ""
            print(f"{time.time() - start:6.0f} s  step {step}  loss {mean:.4f}{seen}", flush=True)

    while step < a.steps and (done := together((time.time() - start) / 60 / a.minutes, ranks, device)) < 1:
        warm = min(1.0, (step + 1) / 200)
        for group in optimiser.param_groups:
            group["lr"] = a.rate * warm * (0.01 + 0.99 * 0.5 * (1 + math.cos(done * math.pi)))
        if traced and step % 400 < a.shots * (1 + a.again):
            traced.refresh()
        with torch.no_grad():
            scene, *maps = draw(a, device)
        for _ in range(a.shots):
            with torch.no_grad():
                batch = photograph(a, scene, turned(maps, int(torch.randint(8, (1,)))))
            if a.look and step == 0:
                look(batch, a.look)
            learn(batch)
            if pool:
                pool.put(batch)
                for _ in range(a.again):
                    learn(once_more(a, pool, traced))
    if rank:
        return
    final = best.module if step > 1500 else net
    settle(final, a, device, traced)
    torch.save(final.state_dict(), a.out.replace(".onnx", ".pt"))
    report(final.eval(), a, device)
    write(final.cpu(), a)


@torch.no_grad()
def resume(net, path, pictures):
    """
    Takes up the weights of an .onnx that `write` made. There each convolution has swallowed the normalisation after it;
    that is given back its spread on `pictures`, so that learning goes on from the very same function.
    """
    import onnx
    from onnx import numpy_helper

    graph = onnx.load(path).graph
    stored = {t.name: torch.tensor(numpy_helper.to_array(t).astype("float32")) for t in graph.initializer}
    for name in [n for n in stored if n.endswith("_8")]:
        stored[name[:-2]] = stored[name] * stored[name[:-2] + "_unit"]
    stored.update({name[:-3]: t for name, t in stored.items() if name.endswith("_16")})
    nodes = iter([n for n in graph.node if n.op_type == "Conv"])
    after = {}
    for block in net.modules():
        if isinstance(block, Block):
            after.update({id(block[k]): block[k + 1] for k in range(0, len(block), 3)})
    order = []
    hooks = [m.register_forward_hook(lambda m, *_: order.append(m)) for m in net.modules() if isinstance(m, nn.Conv2d)]
    net.eval()(pictures[0])
    for hook in hooks:
        hook.remove()
    for conv in order:
        node = next(nodes)
        conv.weight.copy_(stored[node.input[1]])
        bias, norm = stored[node.input[2]].to(conv.weight.device), after.get(id(conv))
        if norm is None:
            conv.bias.copy_(bias)
            continue
        seen = []
        hook = conv.register_forward_hook(lambda _m, _in, out: seen.append(out.float()))
        for picture in pictures:
            net(picture)
        hook.remove()
        out = torch.cat(seen)
        mean, spread = out.mean((0, 2, 3)), out.var((0, 2, 3), unbiased=False)
        norm.running_mean.copy_(mean)
        norm.running_var.copy_(spread)
        norm.weight.copy_((spread + norm.eps).sqrt())
        norm.bias.copy_(bias + mean)
    assert next(nodes, None) is None
    net.train()


def join_others():
    """This process's number and how many there are; several GPUs each draw their own scenes and share what they learn."""
    ranks = int(os.environ.get("WORLD_SIZE", 1))
    if ranks > 1:
        torch.cuda.set_device(int(os.environ["LOCAL_RANK"]))
        torch.distributed.init_process_group("nccl")
    return int(os.environ.get("RANK", 0)), ranks


def share(net, ranks):
    if ranks == 1:
        return
    slopes = [p.grad for p in net.parameters()]
    flat = torch.cat([g.flatten() for g in slopes])
    torch.distributed.all_reduce(flat)
    for g, part in zip(slopes, flat.split([g.numel() for g in slopes])):
        g.copy_(part.view_as(g) / ranks)


def together(done, ranks, device):
    """The clock of the first process, so that all stop at the same step."""
    if ranks == 1:
        return done
    clock = torch.tensor(done, device=device)
    torch.distributed.broadcast(clock, 0)
    return clock.item()


def draw(a, device):
    if a.what == "base":
        return photographs(a.batch, a.size // 2, device)
    return sheets(a.batch, a.size, device, a.near)


@torch.no_grad()
def once_more(a, pool, traced):
    """A batch of pictures seen before, or of path-traced ones as soon as there are some."""
    if traced and traced.ready() and torch.rand(1) < a.share:
        return traced.take(a.batch, a.size)
    return pool.take(a.batch)


def turned(maps, k):
    """One of the eight ways to lay a square."""
    maps = [torch.rot90(t, k % 4, (2, 3)) for t in maps]
    return [t.flip(3) for t in maps] if (k // 4) % 2 else maps


def photograph(a, scene, maps):
    """Takes a picture of what was drawn; one sheet gives several, each under its own light and by its own camera."""
    if a.what != "base":
        batch = (shoot(scene.lit(maps[0]), (0.3, 1.0), 0.8 if a.near else 0.5), *maps[1:])
    else:
        shrink = torch.nn.functional.avg_pool2d
        batch = shrink(shoot(maps[0], (0.6, 1.0)), 2), shrink(maps[1], 2)
    # A number that is none, once in thousands of scenes, would spoil the net for good.
    return [torch.nan_to_num(t, 0.5, 1, 0).clamp(0, 12) for t in batch]


def make(a, device):
    scene, *maps = draw(a, device)
    return photograph(a, scene, maps)


@torch.no_grad()
def settle(net, a, device, traced=None):
    """Takes the normalisations' means and spreads anew: those kept while learning belong to weights that moved."""
    norms = [m for m in net.modules() if isinstance(m, nn.BatchNorm2d)]
    for norm in norms:
        norm.reset_running_stats()
        norm.momentum = None
    net.train()
    for _ in range(min(60, a.steps)):
        known = traced and traced.ready() and torch.rand(1) < a.share / 3
        net(traced.take(a.batch, a.size)[0] if known else make(a, device)[0])


@torch.no_grad()
def report(net, a, device):
    """Overlap on pictures of a seed that was never trained on."""
    torch.manual_seed(10_000_019)
    both, either = 0, 0
    for _ in range(8):
        batch = make(a, device)
        p = net(batch[0]) > 0
        t = batch[1] > 0.5
        both, either = both + (p & t).sum((0, 2, 3)), either + (p | t).sum((0, 2, 3))
    print("unseen pictures: IoU by mask over all", (both / either).tolist(), flush=True)


def write(net, a):
    import onnx
    from onnx import TensorProto, helper, numpy_helper

    sample = torch.zeros(1, 3, 128, 128)
    names = dict(input_names=["picture"], output_names=["logits"])
    axes = {"picture": {2: "h", 3: "w"}, "logits": {2: "h", 3: "w"}}
    # The tracing exporter keeps the plain operators that every runtime has; newer PyTorch asks for it by name.
    tracing = {"dynamo": False} if "dynamo" in inspect.signature(torch.onnx.export).parameters else {}
    torch.onnx.export(net, sample, a.out, opset_version=17, dynamic_axes=axes, **names, **tracing)
    model = onnx.load(a.out)
    kept, casts = [], []
    for tensor in model.graph.initializer:
        values = numpy_helper.to_array(tensor)
        if tensor.data_type != TensorProto.FLOAT or values.ndim < 4 or values.size < 64:
            kept.append(tensor)
            continue
        unit = abs(values).max((1, 2, 3), keepdims=True).clip(1e-12) / 127
        name = tensor.name
        kept.append(numpy_helper.from_array((values / unit).round().astype("int8"), name + "_8"))
        kept.append(numpy_helper.from_array(unit.astype("float32"), name + "_unit"))
        casts.append(helper.make_node("Cast", [name + "_8"], [name + "_float"], to=TensorProto.FLOAT))
        casts.append(helper.make_node("Mul", [name + "_float", name + "_unit"], [name]))
    del model.graph.initializer[:]
    model.graph.initializer.extend(kept)
    nodes = casts + list(model.graph.node)
    del model.graph.node[:]
    model.graph.node.extend(nodes)
    onnx.checker.check_model(model)
    onnx.save(model, a.out)


def look(batch, folder):
    os.makedirs(folder, exist_ok=True)
    rows = []
    for k in range(min(6, batch[0].shape[0])):
        truth = batch[1][k].float()
        truth = torch.cat([truth, truth.new_zeros(max(0, 3 - truth.shape[0]), *truth.shape[1:])])[:3]
        rows.append(torch.cat([batch[0][k].float(), truth], 2))
    picture = (torch.cat(rows, 1).clamp(0, 1) * 255).byte().permute(1, 2, 0).cpu().numpy()
    with open(os.path.join(folder, "look.ppm"), "wb") as f:
        f.write(b"P6 %d %d 255\n" % (picture.shape[1], picture.shape[0]) + picture.tobytes())


if __name__ == "__main__":
    main()
