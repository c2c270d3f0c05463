"""Reads a drawing interchange file from standard input and prints as JSON what is on its layers, by a reader that knows nothing of who wrote it."""
import io
import json
import sys

import ezdxf

drawing = ezdxf.read(io.TextIOWrapper(sys.stdin.buffer, encoding="ascii", newline=None))
auditor = drawing.audit()
entities = []
for entity in drawing.modelspace():
    kind, layer = entity.dxftype(), entity.dxf.layer
    if kind == "POLYLINE":
        corners = [list(vertex.dxf.location)[:2] for vertex in entity.vertices]
        entities.append({"kind": kind, "layer": layer, "closed": entity.is_closed, "corners": corners})
    elif kind == "LINE":
        entities.append({"kind": kind, "layer": layer, "corners": [list(entity.dxf.start)[:2], list(entity.dxf.end)[:2]]})
    elif kind == "TEXT":
        entities.append({"kind": kind, "layer": layer, "text": entity.dxf.text})
    else:
        entities.append({"kind": kind, "layer": layer})
json.dump(
    {
        "version": drawing.dxfversion,
        "layers": sorted(layer.dxf.name for layer in drawing.layers),
        "errors": [error.message for error in auditor.errors],
        "entities": entities,
    },
    sys.stdout,
)
