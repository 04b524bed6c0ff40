"""Lays tracks on a grid over two layers: every net takes its cheapest way, and what is wanted by two gets dearer each time."""
import heapq
import math

PITCH = 0.635
CLEARANCE = 0.2
WIDE = {"5V", "K+", "0V"}
VIA = 0.8
STEPS = [(1, 0, 10), (-1, 0, 10), (0, 1, 10), (0, -1, 10), (1, 1, 14), (1, -1, 14), (-1, 1, 14), (-1, -1, 14)]


def width(net):
    """Width of a net's tracks, mm."""
    return 0.6 if net in WIDE else 0.4


class Router:
    """pads: (net, x, y, half width, half height, round, layers); free(net, x, y, layer): whether copper may be there at all."""

    def __init__(self, size, pads, free, poured):
        self.nx, self.ny = int(size[0] / PITCH) + 1, int(size[1] / PITCH) + 1
        self.pads = pads
        self.vias = set()
        self.nets = sorted({pad[0] for pad in pads} - {""})
        self.poured = poured
        self.history = [0] * (2 * self.nx * self.ny)
        self.users = [set() for _ in self.history]
        self.blocked = {net: self.block(net, free) for net in self.nets}
        self.paths = {net: [] for net in self.nets}
        self.marks = {net: set() for net in self.nets}

    def node(self, layer, i, j):
        return (layer * self.ny + j) * self.nx + i

    def place(self, node):
        rest, i = divmod(node, self.nx)
        layer, j = divmod(rest, self.ny)
        return layer, i, j

    def block(self, net, free):
        blocked = bytearray(len(self.history))
        for layer in (0, 1):
            for j in range(self.ny):
                for i in range(self.nx):
                    if not free(net, i * PITCH, j * PITCH, layer):
                        blocked[self.node(layer, i, j)] = 1
        reach = CLEARANCE + width(net) / 2
        for other, x, y, hx, hy, is_round, layers in self.pads:
            if other != net:
                for i, j in self.around(x, y, hx + reach, hy + reach):
                    if gap(i * PITCH - x, j * PITCH - y, hx, hy, is_round) < reach - 1e-6:
                        for layer in layers:
                            blocked[self.node(layer, i, j)] = 1
        return blocked

    def around(self, x, y, rx, ry):
        for i in range(max(0, math.ceil((x - rx) / PITCH)), min(self.nx - 1, int((x + rx) / PITCH)) + 1):
            for j in range(max(0, math.ceil((y - ry) / PITCH)), min(self.ny - 1, int((y + ry) / PITCH)) + 1):
                yield i, j

    def access(self, pad):
        net, x, y, hx, hy, is_round, layers = pad
        near = [(math.hypot(i * PITCH - x, j * PITCH - y), i, j) for i, j in self.around(x, y, hx + 0.1, hy + 0.1)]
        nodes = [(d, self.node(layer, i, j)) for d, i, j in sorted(near)[:4] for layer in layers]
        return [node for _, node in nodes if not self.blocked[net][node]]

    def route(self, rounds):
        """Routes all; gives the nets that still want the same place."""
        todo = list(self.nets)
        for turn in range(rounds):
            for net in todo:
                self.take_out(net)
                self.lay(net, 6 + 6 * turn)
            clashes = [n for n, users in enumerate(self.users) if len(users) > 1]
            for n in clashes:
                self.history[n] += 8
            todo = sorted({net for n in clashes for net in self.users[n]})
            print("round", turn, "clashes", len(clashes), "nets", len(todo))
            if not todo:
                break
        for n in clashes:
            print(self.place(n), self.users[n])
        return todo

    def take_out(self, net):
        for node in self.marks[net]:
            self.users[node].discard(net)
        self.marks[net] = set()
        self.paths[net] = []

    def lay(self, net, dear):
        groups = [self.access(pad) for pad in self.pads if pad[0] == net]
        assert all(groups), (net, [pad for pad in self.pads if pad[0] == net and not self.access(pad)])
        if net == self.poured:
            # The ground's fill joins what goes through the board; a pad on one face gets a track to one of those.
            through = {n: 0 for pad in self.pads if pad[0] == net and len(pad[6]) == 2 for n in self.access(pad)}
            groups = [self.access(pad) for pad in self.pads if pad[0] == net and len(pad[6]) == 1]
            self.paths[net] = [self.cheapest(net, set(group), through, dear) for group in groups]
            groups = groups[:1]
        tree = set(groups[0])
        left = groups[1:]
        while left:
            path = self.cheapest(net, tree, {n: k for k, group in enumerate(left) for n in group}, dear)
            if path is None:
                raise RuntimeError(f"{net} cannot reach its next pad")
            self.paths[net].append(path)
            tree.update(path)
            done = [k for k, group in enumerate(left) if path[-1] in group]
            for k in done:
                tree.update(left[k])
            left = [group for k, group in enumerate(left) if k not in done]
        for path in self.paths[net]:
            self.marks[net].update(self.covered(net, path))
        for node in self.marks[net]:
            self.users[node].add(net)

    def covered(self, net, path):
        for a, b in zip(path, path[1:]):
            (la, ia, ja), (lb, ib, jb) = self.place(a), self.place(b)
            yield a
            yield b
            if la != lb:
                for layer in (0, 1):
                    for di in (-1, 0, 1):
                        for dj in (-1, 0, 1):
                            yield self.node(layer, ia + di, ja + dj)
            elif ia != ib and ja != jb:
                yield self.node(la, ia, jb)
                yield self.node(la, ib, ja)
            if net in WIDE:
                for i, j in ((ia, ja), (ib, jb)):
                    for di, dj in ((1, 0), (-1, 0), (0, 1), (0, -1)):
                        if 0 <= i + di < self.nx and 0 <= j + dj < self.ny:
                            yield self.node(la, i + di, j + dj)

    def cheapest(self, net, sources, targets, dear):
        best = {node: 0 for node in sources}
        came = {}
        heap = [(0, node) for node in sources]
        heapq.heapify(heap)
        blocked, users, history = self.blocked[net], self.users, self.history
        while heap:
            cost, node = heapq.heappop(heap)
            if cost > best[node]:
                continue
            if node in targets and node not in sources:
                path = [node]
                while path[-1] in came:
                    path.append(came[path[-1]])
                return path[::-1]
            layer, i, j = self.place(node)
            for di, dj, length in STEPS:
                if not (0 <= i + di < self.nx and 0 <= j + dj < self.ny):
                    continue
                to = node + di + dj * self.nx
                if blocked[to] or (di and dj and (blocked[node + di] or blocked[node + dj * self.nx])):
                    continue
                price = length + (len(users[to] - {net}) * dear) + history[to]
                if di and dj:
                    for side in (node + di, node + dj * self.nx):
                        price += len(users[side] - {net}) * dear + history[side]
                if net in WIDE:
                    for side in (to + 1, to - 1, to + self.nx, to - self.nx):
                        price += len(users[side] - {net}) * dear + history[side]
                self.relax(best, came, heap, node, to, cost + price)
            other = node + (1 - 2 * layer) * self.nx * self.ny
            if not blocked[other] and self.via_fits(net, i, j):
                price = 60
                for l in (0, 1):
                    for di in (-1, 0, 1):
                        for dj in (-1, 0, 1):
                            n = self.node(l, i + di, j + dj)
                            price += len(users[n] - {net}) * dear + history[n] // 2
                self.relax(best, came, heap, node, other, cost + price)
        return None

    @staticmethod
    def relax(best, came, heap, node, to, cost):
        if cost < best.get(to, 1 << 60):
            best[to] = cost
            came[to] = node
            heapq.heappush(heap, (cost, to))

    def via_fits(self, net, i, j):
        if not (1 <= i < self.nx - 1 and 1 <= j < self.ny - 1):
            return False
        return (net, i, j) in self.vias or self.try_via(net, i, j)

    def try_via(self, net, i, j):
        # No via in a pad, its own or another's.
        for other, x, y, hx, hy, is_round, _ in self.pads_near(i, j):
            if gap(i * PITCH - x, j * PITCH - y, hx, hy, is_round) < VIA / 2 + CLEARANCE:
                return False
        for di in (-1, 0, 1):
            for dj in (-1, 0, 1):
                if self.blocked[net][self.node(0, i + di, j + dj)] or self.blocked[net][self.node(1, i + di, j + dj)]:
                    return False
        self.vias.add((net, i, j))
        return True

    def pads_near(self, i, j):
        if not hasattr(self, "_near"):
            self._near = {}
            for pad in self.pads:
                for key in self.around(pad[1], pad[2], pad[3] + 0.7, pad[4] + 0.7):
                    self._near.setdefault(key, []).append(pad)
        return self._near.get((i, j), [])


def gap(dx, dy, hx, hy, is_round):
    """From a point to a pad's edge; 0 or less inside."""
    if is_round:
        return math.hypot(dx, dy) - hx
    return math.hypot(max(abs(dx) - hx, 0), max(abs(dy) - hy, 0))
