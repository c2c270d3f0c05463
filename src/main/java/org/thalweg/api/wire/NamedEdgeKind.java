package org.thalweg.api.wire;

import org.thalweg.roof.EdgeKind;

/** The kinds of edge that can't be seen in the planes, so that the caller names them. */
public enum NamedEdgeKind {
    SIDE_WALL(EdgeKind.SIDE_WALL),
    HEAD_WALL(EdgeKind.HEAD_WALL),
    EXPANSION_JOINT(EdgeKind.EXPANSION_JOINT);

    private final EdgeKind kind;

    NamedEdgeKind(EdgeKind kind) {
        this.kind = kind;
    }

    public EdgeKind kind() {
        return kind;
    }
}
