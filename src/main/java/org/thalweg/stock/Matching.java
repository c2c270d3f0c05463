package org.thalweg.stock;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.List;

/**
 * The heaviest pairing of any graph, by primal and dual together with blossoms, O(n³). [published: Edmonds 1965; Galil 1986,
 * Efficient algorithms for finding maximum matching in graphs]
 *
 * <p>Nodes are counted from 1; 0 is nobody. Numbers above the nodes are blossoms: odd rings shrunk to one node. A node is
 * outer (even) or inner (odd) in the tree of the search, or free of it. Weights are doubled in the slack, so all is whole.
 */
final class Matching {

    private static final int FREE = -1;
    private static final int OUTER = 0;
    private static final int INNER = 1;

    private final int nodes;
    private int used;

    /** For nodes and blossoms a, b: the edge between them, as its two nodes; its weight is that of the nodes. */
    private final int[][] from;

    private final int[][] to;
    private final long[][] weight;
    private final long[] label;
    private final int[] mate;
    private final int[] slack;
    private final int[] top;
    private final int[] parent;
    private final int[] state;
    private final int[] visited;
    private int visit;

    /** Which part of a blossom a node lies in. */
    private final int[][] part;

    private final List<List<Integer>> ring = new ArrayList<>();
    private final Deque<Integer> queue = new ArrayDeque<>();

    private Matching(long[][] weights) {
        this.nodes = weights.length;
        this.used = nodes;
        int size = nodes + nodes / 2 + 2;
        this.from = new int[size][size];
        this.to = new int[size][size];
        this.weight = new long[size][size];
        this.label = new long[size];
        this.mate = new int[size];
        this.slack = new int[size];
        this.top = new int[size];
        this.parent = new int[size];
        this.state = new int[size];
        this.visited = new int[size];
        this.part = new int[size][nodes + 1];
        long heaviest = 0;
        for (int a = 0; a < size; a++) {
            ring.add(new ArrayList<>());
            top[a] = a <= nodes ? a : 0;
            for (int b = 1; b <= nodes && 1 <= a && a <= nodes; b++) {
                from[a][b] = a;
                to[a][b] = b;
                weight[a][b] = a == b ? 0 : weights[a - 1][b - 1];
                heaviest = Math.max(heaviest, weight[a][b]);
            }
            if (1 <= a && a <= nodes) {
                part[a][a] = a;
            }
        }
        Arrays.fill(label, 1, nodes + 1, heaviest);
    }

    /**
     * Who goes with whom.
     *
     * @param weights of every pair, symmetric, 0 or more; pairs of weight 0 are never made
     * @return for each the number of its mate, or -1
     */
    static int[] heaviest(long[][] weights) {
        Matching matching = new Matching(weights);
        while (matching.grow()) {
            continue;
        }
        int[] mates = new int[weights.length];
        Arrays.setAll(mates, i -> matching.mate[i + 1] - 1);
        return mates;
    }

    /** How much an edge is from being tight. */
    private long loose(int a, int b) {
        int u = from[a][b];
        int v = to[a][b];
        return label[u] + label[v] - 2 * weight[u][v];
    }

    private void offerSlack(int u, int x) {
        if (slack[x] == 0 || loose(u, x) < loose(slack[x], x)) {
            slack[x] = u;
        }
    }

    private void findSlack(int x) {
        slack[x] = 0;
        for (int u = 1; u <= nodes; u++) {
            if (weight[u][x] > 0 && top[u] != x && state[top[u]] == OUTER) {
                offerSlack(u, x);
            }
        }
    }

    private void enqueue(int x) {
        if (x <= nodes) {
            queue.add(x);
        } else {
            ring.get(x).forEach(this::enqueue);
        }
    }

    private void setTop(int x, int blossom) {
        top[x] = blossom;
        if (x > nodes) {
            ring.get(x).forEach(inner -> setTop(inner, blossom));
        }
    }

    /** How far round the ring a part is, by an even number of steps; turns the ring if it has to. */
    private int evenWay(int blossom, int inner) {
        List<Integer> parts = ring.get(blossom);
        int at = parts.indexOf(inner);
        if (at % 2 == 0) {
            return at;
        }
        Collections.reverse(parts.subList(1, parts.size()));
        return parts.size() - at;
    }

    private void match(int a, int b) {
        mate[a] = to[a][b];
        if (a <= nodes) {
            return;
        }
        int inner = part[a][from[a][b]];
        int way = evenWay(a, inner);
        List<Integer> parts = ring.get(a);
        for (int i = 0; i < way; i++) {
            match(parts.get(i), parts.get(i ^ 1));
        }
        match(inner, b);
        Collections.rotate(parts, -way);
    }

    private void augment(int first, int second) {
        int u = first;
        int v = second;
        while (true) {
            int next = top[mate[u]];
            match(u, v);
            if (next == 0) {
                return;
            }
            match(next, top[parent[next]]);
            u = top[parent[next]];
            v = next;
        }
    }

    /** Where two branches of the tree meet; 0 when they are of two trees. */
    private int meeting(int first, int second) {
        visit++;
        int u = first;
        int v = second;
        while (u != 0 || v != 0) {
            if (u != 0) {
                if (visited[u] == visit) {
                    return u;
                }
                visited[u] = visit;
                u = top[mate[u]];
                u = u == 0 ? 0 : top[parent[u]];
            }
            int kept = u;
            u = v;
            v = kept;
        }
        return 0;
    }

    private void shrink(int u, int meeting, int v) {
        int blossom = nodes + 1;
        while (blossom <= used && top[blossom] != 0) {
            blossom++;
        }
        used = Math.max(used, blossom);
        label[blossom] = 0;
        state[blossom] = OUTER;
        mate[blossom] = mate[meeting];
        List<Integer> parts = ring.get(blossom);
        parts.clear();
        parts.add(meeting);
        addBranch(parts, u, meeting);
        Collections.reverse(parts.subList(1, parts.size()));
        addBranch(parts, v, meeting);
        setTop(blossom, blossom);
        takeEdges(blossom);
        findSlack(blossom);
    }

    private void addBranch(List<Integer> parts, int end, int meeting) {
        int x = end;
        while (x != meeting) {
            int inner = top[mate[x]];
            parts.add(x);
            parts.add(inner);
            enqueue(inner);
            x = top[parent[inner]];
        }
    }

    /** The blossom has the tightest edge of any of its parts. */
    private void takeEdges(int blossom) {
        for (int x = 1; x <= used; x++) {
            weight[blossom][x] = 0;
            weight[x][blossom] = 0;
        }
        Arrays.fill(part[blossom], 0);
        for (int inner : ring.get(blossom)) {
            for (int x = 1; x <= used; x++) {
                if (weight[inner][x] > 0 && (weight[blossom][x] == 0 || loose(inner, x) < loose(blossom, x))) {
                    copyEdge(inner, x, blossom);
                }
            }
            for (int x = 1; x <= nodes; x++) {
                if (part[inner][x] != 0) {
                    part[blossom][x] = inner;
                }
            }
        }
    }

    private void copyEdge(int inner, int x, int blossom) {
        from[blossom][x] = from[inner][x];
        to[blossom][x] = to[inner][x];
        weight[blossom][x] = weight[inner][x];
        from[x][blossom] = from[x][inner];
        to[x][blossom] = to[x][inner];
        weight[x][blossom] = weight[x][inner];
    }

    private void expand(int blossom) {
        List<Integer> parts = ring.get(blossom);
        parts.forEach(inner -> setTop(inner, inner));
        int entry = part[blossom][from[blossom][parent[blossom]]];
        int way = evenWay(blossom, entry);
        for (int i = 0; i < way; i += 2) {
            int inner = parts.get(i);
            int outer = parts.get(i + 1);
            parent[inner] = from[outer][inner];
            state[inner] = INNER;
            state[outer] = OUTER;
            slack[inner] = 0;
            findSlack(outer);
            enqueue(outer);
        }
        state[entry] = INNER;
        parent[entry] = parent[blossom];
        for (int i = way + 1; i < parts.size(); i++) {
            state[parts.get(i)] = FREE;
            findSlack(parts.get(i));
        }
        top[blossom] = 0;
    }

    /** A tight edge: grows the tree, shrinks a ring, or (true) makes one pair more. */
    private boolean tight(int a, int b) {
        int outer = from[a][b];
        int u = top[outer];
        int v = top[to[a][b]];
        if (state[v] == FREE) {
            parent[v] = outer;
            state[v] = INNER;
            int next = top[mate[v]];
            slack[v] = 0;
            slack[next] = 0;
            state[next] = OUTER;
            enqueue(next);
        } else if (state[v] == OUTER) {
            int meeting = meeting(u, v);
            if (meeting == 0) {
                augment(u, v);
                augment(v, u);
                return true;
            }
            shrink(u, meeting, v);
        }
        return false;
    }

    /** One search from all who have no mate; false when no further pair makes it heavier. */
    private boolean grow() {
        Arrays.fill(state, FREE);
        Arrays.fill(slack, 0);
        queue.clear();
        for (int x = 1; x <= used; x++) {
            if (top[x] == x && mate[x] == 0) {
                parent[x] = 0;
                state[x] = OUTER;
                enqueue(x);
            }
        }
        boolean any = !queue.isEmpty();
        while (any) {
            if (walk()) {
                return true;
            }
            any = relabel();
            if (any && followTight()) {
                return true;
            }
            if (any) {
                expandEmpty();
            }
        }
        return false;
    }

    private boolean walk() {
        while (!queue.isEmpty()) {
            int u = queue.remove();
            for (int v = 1; v <= nodes && state[top[u]] != INNER; v++) {
                if (weight[u][v] > 0 && top[u] != top[v]) {
                    if (loose(u, v) != 0) {
                        offerSlack(u, top[v]);
                    } else if (tight(u, v)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean relabel() {
        long step = step();
        for (int u = 1; u <= nodes; u++) {
            if (state[top[u]] == OUTER) {
                if (label[u] <= step) {
                    return false;
                }
                label[u] -= step;
            } else if (state[top[u]] == INNER) {
                label[u] += step;
            }
        }
        for (int b = nodes + 1; b <= used; b++) {
            if (top[b] == b && state[b] != FREE) {
                label[b] += state[b] == OUTER ? 2 * step : -2 * step;
            }
        }
        return true;
    }

    private long step() {
        long step = Long.MAX_VALUE;
        for (int b = nodes + 1; b <= used; b++) {
            if (top[b] == b && state[b] == INNER) {
                step = Math.min(step, label[b] / 2);
            }
        }
        for (int x = 1; x <= used; x++) {
            if (top[x] == x && slack[x] != 0 && state[x] != INNER) {
                step = Math.min(step, loose(slack[x], x) / (state[x] == FREE ? 1 : 2));
            }
        }
        return step;
    }

    private boolean followTight() {
        queue.clear();
        for (int x = 1; x <= used; x++) {
            if (top[x] == x && slack[x] != 0 && top[slack[x]] != x && loose(slack[x], x) == 0) {
                if (tight(slack[x], x)) {
                    return true;
                }
            }
        }
        return false;
    }

    private void expandEmpty() {
        for (int b = nodes + 1; b <= used; b++) {
            if (top[b] == b && state[b] == INNER && label[b] == 0) {
                expand(b);
            }
        }
    }
}
