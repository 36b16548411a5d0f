#!/usr/bin/python3
"""What general libraries read in a file for cutting, in millimetres, a line each: read-cutting.py FILE

  sheet WIDTH HEIGHT
  words TITLE                              and DESCRIPTION, blanks for line ends
  layer NAME COLOUR
  line LAYER KIND CLOSED X,Y X,Y ...       dense where it is round
  text LAYER X Y HEIGHT TURN WORDS
"""
import sys

FINE = 0.0005      # mm, of a curve made straight
STEPS = 256        # of a curve


def tell(*words):
    print(*(f'{word:.3f}' if isinstance(word, float) else word for word in words))


def tell_line(layer, kind, closed, places):
    tell('line', layer, kind, int(closed), *(f'{x:.6f},{y:.6f}' for x, y in places))


def read_dxf(path):
    import ezdxf
    from ezdxf import path as lines
    from ezdxf.lldxf.encoding import decode_dxf_unicode, has_dxf_unicode
    doc = ezdxf.readfile(path)
    problems = doc.audit()
    if problems.errors or problems.fixes:
        sys.exit('; '.join(error.message for error in problems.errors + problems.fixes))
    if (doc.dxfversion, doc.units, doc.header['$MEASUREMENT']) != ('AC1009', 4, 1):
        sys.exit(f'{doc.dxfversion} in unit {doc.units} is no release 12 in millimetres')
    low, high = doc.header['$EXTMIN'], doc.header['$EXTMAX']
    if tuple(low) != (0, 0, 0):
        sys.exit(f'the sheet begins at {low}')
    tell('sheet', float(high[0]), float(high[1]))
    for layer in doc.layers:
        tell('layer', layer.dxf.name, layer.dxf.color)
    for entity in doc.modelspace():
        if entity.dxf.layer not in doc.layers:
            sys.exit(f'{entity} is on a layer that is not in the table')
        if entity.dxftype() == 'TEXT':
            words = entity.dxf.text
            words = decode_dxf_unicode(words) if has_dxf_unicode(words) else words
            tell('text', entity.dxf.layer, entity.dxf.insert.x, entity.dxf.insert.y, float(entity.dxf.height),
                 float(entity.dxf.rotation), words)
        else:
            closed = entity.dxftype() == 'CIRCLE' or (entity.dxftype() == 'POLYLINE' and entity.is_closed)
            places = lines.make_path(entity).flattening(FINE)
            tell_line(entity.dxf.layer, entity.dxftype(), closed, [(place.x, place.y) for place in places])


def places_of(path):
    import svgelements
    places = []
    for segment in path:
        if isinstance(segment, svgelements.Move):
            places.append(segment.end)
        elif isinstance(segment, (svgelements.Line, svgelements.Close)):
            places.append(segment.end)
        else:
            places.extend(segment.point(i / STEPS) for i in range(1, STEPS + 1))
    return [(place.x, place.y) for place in places]


def read_svg(path):
    import svgelements
    import xml.etree.ElementTree
    # 25.4 dots an inch: then its units are millimetres, within 0.0003 across a sheet.
    svg = svgelements.SVG.parse(path, ppi=25.4, reify=True)
    root = xml.etree.ElementTree.parse(path).getroot()
    if not (root.get('width').endswith('mm') and root.get('height').endswith('mm')) or root.get('version') != '1.1':
        sys.exit('the size is not in millimetres')
    tell('sheet', float(svg.width), float(svg.height))
    for element in root[:2]:
        tell('words', ' '.join(element.text.split()))
    for group in svg:
        if not isinstance(group, svgelements.Group):
            continue
        tell('layer', group.id, group.values['fill' if group.id in ('words', 'names') else 'stroke'])
        for element in group:
            if isinstance(element, svgelements.Path):
                if element.fill.value is not None or abs(element.stroke_width - 0.01) > 1e-6:
                    sys.exit('a path is no hairline')
                closed = isinstance(element[-1], svgelements.Close)
                tell_line(group.id, '/'.join(sorted({type(segment).__name__ for segment in element[1:]})), closed, places_of(element))
            elif isinstance(element, svgelements.Text):
                place = element.transform.point_in_matrix_space((element.x, element.y))
                tell('text', group.id, float(place.x), float(place.y), float(element.values['font-size']),
                     float(element.rotation.as_degrees), element.text)


(read_dxf if sys.argv[1].endswith('.dxf') else read_svg)(sys.argv[1])
