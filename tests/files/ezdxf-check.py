"""Reads DXF files strictly with ezdxf, audits them, and prints what it saw as a JSON array.

Usage: ezdxf-check.py FILE...   One object a file, in order; a file that can't be read has "failure" alone.
"""
import json
import sys

import ezdxf

# ezdxf adds this layer to every document by itself.
OWN_LAYER = "Defpoints"


def describe(entity):
    kind = entity.dxftype()
    seen = {"type": kind, "layer": entity.dxf.layer, "closed": False, "vertices": [], "circle": None}
    if kind == "CIRCLE":
        seen["closed"] = True
        seen["circle"] = [entity.dxf.center.x, entity.dxf.center.y, entity.dxf.radius]
    elif kind == "LWPOLYLINE":
        seen["closed"] = bool(entity.closed)
        seen["vertices"] = [[x, y, bulge] for x, y, bulge in entity.get_points("xyb")]
    elif kind == "POLYLINE":
        seen["closed"] = bool(entity.is_closed)
        seen["vertices"] = [
            [v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0)] for v in entity.vertices
        ]
    return seen


def read(path):
    doc = ezdxf.readfile(path)
    auditor = doc.audit()
    low, high = doc.header["$EXTMIN"], doc.header["$EXTMAX"]
    return {
        "failure": None,
        "version": doc.dxfversion,
        "errors": [error.message for error in auditor.errors],
        "fixes": [fix.message for fix in auditor.fixes],
        "insunits": doc.header["$INSUNITS"],
        "measurement": doc.header["$MEASUREMENT"],
        "extents": [low[0], low[1], high[0], high[1]],
        "layers": {layer.dxf.name: layer.dxf.color for layer in doc.layers if layer.dxf.name != OWN_LAYER},
        "entities": [describe(entity) for entity in doc.modelspace()],
    }


def attempt(path):
    try:
        return read(path)
    except Exception as failure:  # whatever it is, the caller must see it
        return {"failure": f"{type(failure).__name__}: {failure}"}


# json.dumps would write NaN, which is no JSON: allow_nan=False makes it a failure of the whole run.
print(json.dumps([attempt(path) for path in sys.argv[1:]], allow_nan=False))
