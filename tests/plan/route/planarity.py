"""Judges circuits by the left-right planarity test of networkx and writes planarity.json beside this file.

Run: npx tsx tests/plan/route/circuits.ts | python3 tests/plan/route/planarity.py
Input: a JSON list of edge lists, each edge a pair of node names; two nodes may have several edges.
"""

import json
import sys
from pathlib import Path

import networkx as nx


def judged(edges):
    # A graph library's planarity test wants simple graphs: parallel edges get a node in their middle.
    graph = nx.Graph()
    for k, (a, b) in enumerate(edges):
        nx.add_path(graph, [a, f"edge {k}", b])
    return nx.check_planarity(graph)[0]


circuits = json.load(sys.stdin)
found = {
    "by": f"networkx {nx.__version__}, check_planarity",
    "circuits": [{"edges": edges, "planar": judged(edges)} for edges in circuits],
}
Path(__file__).with_name("planarity.json").write_text(json.dumps(found) + "\n")
